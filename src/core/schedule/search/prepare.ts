import { type ElapsedMinute, never } from "../../base";
import { type Earliest, latest, type Net } from "../network";
import type { Problem, Solution, Stuck } from "../problem";
import { modelOf } from "../proof/model";
import { solve } from "../solve";
import type { Ground } from "./member";
import { ModelGround } from "./model-ground";

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
  return { ...known, ground: model === null ? null : new ModelGround(model, net.order), impossible: model === null };
}

function lastOf(finish: Int32Array): number {
  return finish.reduce((a, b) => Math.max(a, b), 0);
}
