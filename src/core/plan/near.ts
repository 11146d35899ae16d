import type { ElapsedMinute } from "../base";
import type { Build, Served } from "../build";
import type { Clocks } from "../clock";
import type { Ordered } from "./order";

/**
 * What one step that starts at another time than in the kept plan counts against an earlier finish: so many minutes of the usual calendar. A plan that moves forty
 * steps more than another has to finish most of a site day earlier. Common practice, no source.
 */
export const perMoved_min = 10;

/** The order in which the kept plan serves its steps; null where none is kept. */
export function keptOrder({ kept, steps }: Build): Served | null {
  if (kept === null) return null;
  const known = steps.flatMap(({ id }) => {
    const dates = kept.steps.get(id);
    return dates === undefined ? [] : [{ id: id as string, ...dates }];
  });
  // Local moments of one form sort as text; those that start together stay in document order.
  known.sort((a, b) => compared(a.start, b.start) || compared(a.finish, b.finish));
  return { engine: kept.engine, rung: kept.rung, steps: known.map(({ id }) => id) };
}

/** Of two ways to plan a build, the second only where what it moves away from the kept plan is worth it. `near`: served as in the kept plan. */
export function nearer(build: Build, clocks: Clocks, near: Ordered, fresh: Ordered): Ordered {
  const [a, b] = [near, fresh].map((ordered) => cost(build, clocks, ordered));
  return b! < a! ? fresh : near;
}

function cost(build: Build, clocks: Clocks, { result }: Ordered): number {
  const solution = result?.solution ?? null;
  if (solution === null) return Number.POSITIVE_INFINITY;
  let finish = 0;
  for (let s = 0; s < build.steps.length; s++) finish = Math.max(finish, solution.finish[s]!);
  return clocks.work(build.usual).reading(finish as ElapsedMinute) + perMoved_min * movedOf(build, clocks, solution.start);
}

/** Steps that start at another time than in the kept plan. */
export function movedOf({ kept, steps }: Build, { time }: Clocks, start: Int32Array): number {
  let moved = 0;
  steps.forEach(({ id }, s) => {
    const before = kept?.steps.get(id)?.start;
    if (before !== undefined && time.minuteOf(before) !== start[s]) moved++;
  });
  return moved;
}

const compared = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
