import { type ElapsedMinute, never } from "../base";
import type { Solution } from "../schedule";
import { countedFrom, thereAt } from "./amounts";
import type { Bound } from "./bound";
import type { Visit, WaitDates } from "./plan";

/** Every least amount of the order with when it lets go; a strength from the pour it names on. */
export function waitDates(bound: Bound, s: Solution): WaitDates[] {
  const { access, build, clocks } = bound;
  const { arcs, amounts } = access;
  const out: WaitDates[] = [];
  for (let row = 0; row < arcs.count; row++) {
    if (arcs.least[row]! < 0) continue;
    const amount = amounts[arcs.least[row]!]!;
    const end = (arcs.fromEnd[row] === 0 ? s.start : s.finish)[arcs.from[row]!]! as ElapsedMinute;
    out.push({ row, from: countedFrom(build, s, amount, end), ready: thereAt(build, clocks, s, amount, end) });
  }
  return out;
}

/** More visits than this on one wait are not listed one by one. */
const mostVisits = 1000;

/** The visits that waits need: every so often from the end they count from until their least amount is there, or until what they hold begins. */
export function visitsOf(bound: Bound, s: Solution): Visit[] {
  const { build, clocks } = bound;
  const out: Visit[] = [];
  build.waits.forEach((wait, w) => {
    const { visits, least } = wait;
    if (visits === null || visits.every_min <= 0) return;
    const from = build.at.step.get(wait.from)!;
    const to = build.at.step.get(wait.to)!;
    const begins = (wait.fromEnd === "start" ? s.start : s.finish)[from]! as ElapsedMinute;
    const ends = least === null ? (wait.toEnd === "start" ? s.start : s.finish)[to]! : thereAt(build, clocks, s, least, begins);
    for (let k = 1; k <= mostVisits && begins + k * visits.every_min < Math.min(ends, never); k++) {
      const at = (begins + k * visits.every_min) as ElapsedMinute;
      out.push({ wait: w, from, at, lasts: visits.lasts_min, who: visits.who, for: visits.for });
    }
  });
  return out.sort((a, b) => a.at - b.at || a.wait - b.wait);
}
