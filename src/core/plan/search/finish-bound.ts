import { type ElapsedMinute, never } from "../../base";
import type { Earliest, Problem } from "../../schedule";
import type { Bound, DateOf } from "../bound";
import { lastOf } from "../last-of";

/** Why no plan finishes before `at`, whatever the order. Jobs count steps first, then deliveries. */
export type FinishBound = { readonly at: ElapsedMinute } & (
  | {
      /** One step waits for another from `first` to `last`, however many people there are. */
      readonly by: "waits";
      readonly first: number;
      readonly last: number;
    }
  | {
      /** A date that `job` must keep, and what waits for it up to `last`. */
      readonly by: "date";
      readonly job: number;
      readonly of: DateOf;
      readonly date: ElapsedMinute;
      readonly last: number;
    }
  | {
      /** So many minutes of work for these people, which none of it can start before `from`, of which they can do `there_min` up to `until`. */
      readonly by: "hands";
      readonly people: readonly string[];
      readonly work_min: number;
      readonly there_min: number;
      readonly from: ElapsedMinute;
      readonly until: ElapsedMinute;
      /** The step that all of that work comes before; -1: none. */
      readonly before: number;
    }
  /** Every plan that would finish before has been ruled out by trying; `beside`: the strongest that can be said without. */
  | { readonly by: "tries"; readonly beside: FinishBound | null }
);

/** A bound that trying has raised; what is stronger already stays. */
export function raised(bound: FinishBound, at: number): FinishBound {
  if (at <= bound.at) return bound;
  return { by: "tries", at: at as ElapsedMinute, beside: bound.by === "tries" ? bound.beside : bound };
}

/** The bound that waits and dates give without people, as told from the step that is done last back to where its chain begins. */
export function boundByWaits(bound: Bound, p: Problem, early: Earliest): FinishBound {
  const steps = bound.build.steps.length;
  const at = lastOf(early.finish, steps) as ElapsedMinute;
  let last = 0;
  while (last < steps - 1 && early.finish[last] !== at) last++;
  const { links } = p;
  let job = last;
  // Rings of waits are entered at most once a job.
  for (let k = 0; k < p.jobs; k++) {
    const dated = dateOf(bound, p, early, job);
    if (dated !== null) return { by: "date", at, job, ...dated, last };
    let before = -1;
    let latest = -1;
    for (let l = 0; l < links.count; l++) {
      if (links.to[l] !== job || links.least[l]! < 0) continue;
      const from = links.from[l]!;
      const end = (links.fromEnd[l] === 0 ? early.start : early.finish)[from]! as ElapsedMinute;
      const ready = p.clocks[links.clock[l]!]!.advance(end, links.least[l]!);
      if (ready <= latest || early.start[from]! > early.start[job]!) continue;
      before = from;
      latest = ready;
    }
    if (before < 0 || latest <= 0) break;
    if (p.release[job]! > latest) break;
    job = before;
  }
  return { by: "waits", at, first: job, last };
}

/** The date that sets a job's earliest start; null where something else does. */
function dateOf(bound: Bound, p: Problem, early: Earliest, job: number): { of: DateOf; date: ElapsedMinute } | null {
  if (p.fixed[job]! >= 0 && bound.fixedOf[job] !== null) return { of: bound.fixedOf[job]!, date: p.fixed[job]! as ElapsedMinute };
  const release = p.release[job]!;
  if (release <= 0 || release >= never || bound.releaseOf[job] === null) return null;
  const alone = p.clocks[p.clock[job]!]!.begin(release as ElapsedMinute);
  if (early.start[job]! > alone) return null;
  return { of: bound.releaseOf[job]!, date: release as ElapsedMinute };
}
