import type { Build, FormSpec, HeldRate } from "../build";
import { columnTrials } from "./fix-column";
import { deckTrials } from "./fix-deck";
import { formAt, heldAt, written } from "./fix-edits";
import { braceTrials, holdDownTrials, sheathingTrials } from "./fix-shared";
import { order, type Trial } from "./fix-steps";
import { wallTrials } from "./fix-wall";
import type { FormAsk, FormJudged } from "./form-ask";
import { headOf } from "./form-head";
import { firstOf, judgeSound, mostOf } from "./form-judge";
import { pressureOf } from "./pressure";
import { mostPressed } from "./pressure-fastest";
import type { Fix, FormSheet, MemberPart, Pressure } from "./result";

/** Kinds whose candidates are places, of which the best is taken; of the others the first, cheapest, that does. */
const best = new Set<Fix["kind"]>(["band more", "closer wales"]);

const partOf100 = (judged: FormJudged, part: MemberPart): number =>
  judged.members.reduce((most, { sheet }) => (sheet.part === part ? Math.max(most, sheet.of100) : most), 0);

/** Parts that are over, and what is asked for and not there. */
function wanting(
  sheet: FormSheet,
  form: FormSpec,
): { readonly over: readonly MemberPart[]; readonly hold: boolean; readonly brace: boolean } {
  const over = [...new Set(sheet.members.flatMap(({ part, of100 }) => (of100 > 100 ? [part] : [])))];
  const hold = form.kind !== "deck" && sheet.lift.needed > 0.005 && sheet.lift.needed > sheet.lift.held;
  const isTied = sheet.members.some(({ part }) => part === "ties");
  return { over, hold, brace: form.kind === "wall" && sheet.oneSided && !isTied && form.brace === null };
}

function trialsOf(ask: FormAsk, form: FormSpec, sheet: FormSheet, build: Build): readonly (readonly [MemberPart, Trial[]])[] {
  const at = formAt(ask.pour, ask.element);
  const display = build.site.units;
  const { over, hold, brace } = wanting(sheet, form);
  const high_mm = ask.upright?.high_mm ?? 0;
  const own = (part: MemberPart): Trial[][] => {
    if (form.kind === "column") return columnTrials(form, sheet, part, at, display);
    if (form.kind === "wall") return wallTrials(form, sheet, part, at, display);
    return form.kind === "deck" ? deckTrials(form, sheet, part, at, display) : [];
  };
  const out: (readonly [MemberPart, Trial[]])[] = [];
  for (const part of over) {
    for (const list of [...sheathingTrials(form, part, at, display), ...own(part)]) out.push([part, list]);
    if ((part === "braces" || part === "brace feet") && form.kind !== "edge")
      for (const list of braceTrials(form, high_mm, at, display)) out.push([part, list]);
  }
  if (hold && form.kind !== "deck") out.push(["hold-downs", holdDownTrials(form, sheet, at, display)]);
  if (brace && form.kind !== "edge") for (const list of braceTrials(form, high_mm, at, display)) out.push(["braces", list]);
  return out;
}

function fixOf(trial: Trial, judged: FormJudged): Fix {
  const { kind, part, detail, edits } = trial;
  return { kind, part, detail, of100: mostOf(judged), thenFirst: judged.members[firstOf(judged)]?.sheet.part ?? part, edits };
}

/**
 * The trial of a list that brings its part to 100 or under, with the whole form judged again: of places the best, of a list that goes from little to much the first that
 * does, found by halving.
 */
function working(ask: FormAsk, over: MemberPart, list: readonly Trial[]): Fix | null {
  const tried = (trial: Trial) => {
    const judged = judgeSound(ask, trial.form);
    return { trial, judged, at: judged.members.length === 0 ? Number.MAX_VALUE : partOf100(judged, over) };
  };
  const last = list[list.length - 1];
  if (last === undefined) return null;
  if (best.has(last.kind)) {
    const most = list.map(tried).reduce((a, b) => (b.at < a.at ? b : a));
    return most.at > 100 ? null : fixOf(most.trial, most.judged);
  }
  let found = tried(last);
  if (found.at > 100) return null;
  let [low, high] = [0, list.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    const one = tried(list[middle] as Trial);
    if (one.at > 100) low = middle + 1;
    else [high, found] = [middle, one];
  }
  return fixOf(found.trial, found.judged);
}

/** More than this between passes and the concrete below stiffens under the next; less and nobody keeps to it (common practice, no source). */
const mostBetween_min = 45;
const leastBetween_min = 2;

/** The rate the form carries as an act to be written down, with somebody of the build to keep it. */
function heldRate(build: Build, ask: FormAsk, form: FormSpec, pressure: Pressure): Fix | null {
  const who = build.people[0];
  if (pressure.fastest_m_h === null || pressure.design === "held" || who === undefined || ask.upright === null) return null;
  const pass = written(build.site.units === "us" ? 304.8 : 300, build.site.units);
  const every_min = Math.ceil((pass.mm / 1000 / pressure.fastest_m_h) * 60 - 1e-6);
  if (every_min < leastBetween_min || every_min > mostBetween_min) return null;
  const held: HeldRate = { pass_mm: pass.mm, every_min, who: who.id };
  const element = { ...ask.element, held };
  const then = pressureOf(build, ask.pour, element, ask.upright).pressure;
  if (then.design !== "held" || then.held === null) return null;
  const judged = judgeSound({ ...ask, element, head: headOf(ask.upright.high_mm, then.held, ask.upright.over_mm) }, form);
  const trial: Trial = {
    kind: "held rate",
    part: judged.members[firstOf(judged)]?.sheet.part ?? "bands",
    detail: { pass_mm: pass.mm, every_min, who: who.name },
    form,
    edits: [{ path: heldAt(ask.pour, ask.element), value: { pass: pass.text, every: `${every_min} min`, who: who.id } }],
  };
  return mostPressed(judged) > 100 ? null : fixOf(trial, judged);
}

/** What would make it hold, cheapest first, slower placing last; each judged again on the whole form as the document would then be read. */
export function fixesOf(build: Build, ask: FormAsk, form: FormSpec, sheet: FormSheet, pressure: Pressure | null): Fix[] {
  const seen = new Set<string>();
  const out: Fix[] = [];
  const held = pressure === null ? null : heldRate(build, ask, form, pressure);
  for (const fix of [...trialsOf(ask, form, sheet, build).map(([part, list]) => working(ask, part, list)), held]) {
    if (fix === null) continue;
    const key = JSON.stringify(fix.edits);
    if (seen.has(key)) continue;
    seen.add(key);
    out.push(fix);
  }
  return out.sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind) || a.of100 - b.of100);
}
