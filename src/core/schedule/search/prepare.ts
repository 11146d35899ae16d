import { type ElapsedMinute, never } from "../../base";
import { lastOf } from "../last-of";
import { mirrored } from "../mirrored";
import { type Earliest, earliest, latest, type Net, netOf } from "../network";
import type { Problem, Solution, Stuck } from "../problem";
import { type Model, modelOf } from "../proof/model";
import { solve } from "../solve";
import type { Ground } from "./member";
import { ModelGround } from "./model-ground";
import { TwoWayGround } from "./two-way-ground";

/** What a search of the general kind begins with: a ground, or none where there is nothing to search. */
export interface Prepared {
  readonly ground: Ground | null;
  readonly first: Solution | null;
  readonly passes: number;
  readonly stuck: Stuck | null;
  /** Some job has no start within the horizon by its calendar, its dates and what it needs alone. */
  readonly impossible: boolean;
}

/** `first`: a schedule there is already. Lengths that depend on the day of the start are nothing for the first passes; others tell how far to look. */
export function prepared(p: Problem, net: Net, early: Earliest, bound: number, first: Solution | null): Prepared {
  const made = first === null && p.clock.every((c) => !p.clocks[c]!.fromBeginning) ? solve(p) : null;
  const given = first ?? (made?.solution != null && lastOf(made.solution.finish) <= p.horizon ? made.solution : null);
  const known = { first: given, passes: made?.work ?? 0, stuck: made?.stuck ?? null };
  const end = given === null ? never : lastOf(given.finish);
  // Room for schedules that are a little worse, from which better ones may come.
  const target = Math.min(
    p.horizon,
    end >= never ? p.horizon : end + Math.ceil((end - early.start.reduce((a, b) => Math.min(a, b), end)) / 4),
  );
  const model = modelOf(p, net, early.start, latest(p, net, target as ElapsedMinute).start, bound, target);
  return { ...known, ground: model === null ? null : groundOf(p, net, model, target), impossible: model === null };
}

/** With fewer jobs, passes from the end, which know of no most-waits, mislead more than they help. */
const jobsForTurns = 100;

/** Forwards and backwards by turns where there are clocks and enough jobs for that to tell. */
function groundOf(p: Problem, net: Net, model: Model, target: number): Ground {
  const back = p.jobs < jobsForTurns || p.clocks.length < 2 || target >= never ? null : mirrored(p, target);
  if (back !== null) {
    const netBack = netOf(back);
    const early = earliest(back, netBack);
    const least = lastOf(early.finish);
    if (early.broken < 0 && least <= target) {
      const other = modelOf(back, netBack, early.start, latest(back, netBack, target as ElapsedMinute).start, least, target);
      if (other !== null) return new TwoWayGround(model, net.order, other, netBack.order);
    }
  }
  return new ModelGround(model, net.order);
}
