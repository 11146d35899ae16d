import { lastOf } from "./last-of";
import { mirrored } from "./mirrored";
import type { Solution } from "./problem";
import { SerialPasses } from "./solve";

/**
 * Serves the jobs again in the order in which they begin when all is as late as it can be with the same finish (forward-backward improvement: Tormos & Lova
 * 2001; Valls, Ballestin & Quintanilla 2005), as long as the finish comes earlier by it and at most so often; each time takes two passes.
 * @param count how many jobs, the first, make the finish
 */
export function justified(passes: SerialPasses, first: Solution, count: number, rounds: number): Solution {
  let best = first;
  for (let round = 0; round < rounds; round++) {
    const end = lastOf(best.finish);
    const back = new SerialPasses(mirrored(passes.problem, end));
    const late = back.schedule(best.finish.map((f) => end - f));
    if (late === null) return best;
    const next = passes.schedule(late.finish.map((f) => end - f));
    if (next === null || lastOf(next.finish, count) >= lastOf(best.finish, count)) return best;
    best = next;
  }
  return best;
}
