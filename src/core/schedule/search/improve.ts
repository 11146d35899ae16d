import { lastOf } from "../last-of";
import type { Problem, Solution } from "../problem";
import { Passes } from "./passes";

/** What a few passes came to, and how many there were. */
export interface Improved {
  readonly solution: Solution;
  readonly passes: number;
}

/**
 * A better schedule where lengths, waits and capacities never change: passes of one population until one finishes by `bound` or `most` were made. Gives back
 * `from` itself where the problem is of another kind.
 */
export function improved(p: Problem, from: Solution, bound: number, most: number): Improved {
  const population = Passes.of(p, most, 1);
  let solution = from;
  let passes = 0;
  while (population !== null && passes < most && lastOf(solution.finish) > bound) {
    const next = population.next(solution);
    passes += next.passes;
    solution = next.better ?? solution;
  }
  return { solution, passes };
}
