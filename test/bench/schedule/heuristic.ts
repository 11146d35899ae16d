import { type Problem, type Result, solve, verify } from "../../../src/core/schedule";

/** A search for a good schedule by so many passes of generation, the same for the same seed. */
export type Heuristic = (p: Problem, budget: { readonly schedules: number; readonly seed: number }) => Result;

/**
 * The few passes with which a plan begins, however many are asked for; what they cannot do (a length that depends on the day of the start) they are not
 * credited with.
 */
export const firstPasses: Heuristic = (p) => {
  const r = solve(p);
  if (r.solution === null || verify(p, r.solution).length === 0) return r;
  return { ...r, status: "not-found", solution: null };
};
