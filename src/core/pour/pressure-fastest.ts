import type { Build, FormSpec, Pour } from "../build";
import type { Upright } from "./element";
import type { FormAsk, FormJudged } from "./form-ask";
import { type Head, headAt } from "./form-head";
import { judgeSound, mostOf } from "./form-judge";
import { atRise } from "./pressure";

/** Rises looked at, m/h: what is slower nobody keeps, what is faster is full head in every document. */
const slowest_m_h = 0.05;
const quickest_m_h = 300;

/** Halvings that settle a figure to far under a hundredth. */
const halvings = 40;

/** The greatest figure of a range for which a rising test still holds; null where it does not at the least. */
function greatest(least: number, most: number, holds: (value: number) => boolean): number | null {
  if (!holds(least)) return null;
  let [low, high] = [least, most];
  for (let i = 0; i < halvings; i += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** The most that anything the concrete presses on carries, of 100: braces that only stand against wind feel nothing of it. */
export function mostPressed(judged: FormJudged): number {
  const isPushed = judged.oneSided && !judged.members.some(({ sheet }) => sheet.part === "ties");
  const feel = isPushed ? judged.members : judged.members.filter(({ sheet: { part } }) => part !== "braces" && part !== "brace feet");
  return mostOf({ members: feel });
}

/**
 * The pressure at which the weakest member carries exactly what it may, kPa; null where something is over 100 without any. Secant steps inside a bracket, as what a
 * member carries grows with the pressure.
 */
function carried_kPa(ask: FormAsk, form: FormSpec, head: Head): number | null {
  const over = (pressure_kPa: number): number => mostPressed(judgeSound({ ...ask, head: headAt(head, pressure_kPa) }, form)) - 100;
  let [low, high] = [head.most_kPa * 1e-6, head.most_kPa];
  let [atLow, atHigh] = [over(low), over(high)];
  if (atLow > 0) return null;
  for (let i = 0; i < halvings && high - low > 1e-6 * head.most_kPa; i += 1) {
    const guess = low + ((high - low) * -atLow) / (atHigh - atLow);
    const middle = i % 3 === 2 || !(guess > low && guess < high) ? (low + high) / 2 : guess;
    const at = over(middle);
    if (Math.abs(at) < 0.01) return middle;
    if (at <= 0) [low, atLow] = [middle, at];
    else [high, atHigh] = [middle, at];
  }
  return low;
}

/**
 * The fastest held rise that the form carries, m/h: the inverse of the document's formula. Null where full head rules: nothing lower is allowed for this placing, or
 * the form carries the whole head anyway; and where even the slowest rise is too much.
 */
export function fastest_m_h(build: Build, pour: Pour, upright: Upright, ask: FormAsk, form: FormSpec, full: Head): number | null {
  const slow = atRise(build, pour, upright, slowest_m_h);
  if (form.kind === "deck" || slow.formula === "full head") return null;
  if (mostPressed(judgeSound({ ...ask, head: full }, form)) <= 100) return null;
  const may_kPa = carried_kPa(ask, form, full);
  if (may_kPa === null) return null;
  return greatest(slowest_m_h, quickest_m_h, (rise) => atRise(build, pour, upright, rise).most_kPa <= may_kPa);
}
