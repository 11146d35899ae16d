import { type Problem, type Result, searchOf } from "../../../src/core/schedule";

/** A search for a good schedule by so many passes of generation, the same for the same seed. */
export type Heuristic = (p: Problem, budget: { readonly schedules: number; readonly seed: number }) => Result;

export const populationSearch: Heuristic = (p, { schedules, seed }) => {
  const search = searchOf(p, { seed, schedules });
  search.step(schedules);
  return search.result();
};
