import { type Problem, proofOf, type Result } from "../../../src/core/schedule";
import { populationSearch } from "./heuristic";

/** What was asked for on the command line. */
export interface Asked {
  readonly data: readonly string[];
  readonly mode: "heuristic" | "proof";
  readonly schedules: number;
  readonly seed: number;
  readonly seconds: number;
  /** Seconds are those of the processor, not of the clock on the wall: for a machine that others use too. */
  readonly cpu: boolean;
  readonly every: number;
  readonly offset: number;
  readonly names: readonly string[];
  readonly json: string | null;
}

/** What came of one instance. */
export interface Outcome {
  readonly status: Result["status"];
  readonly start: Int32Array | null;
  readonly bound: number;
  readonly schedules: number;
  readonly conflicts: number;
  readonly seconds: number;
}

/** Clashes between two looks at the wall clock. */
const stride = 100;

export function run(p: Problem, asked: Asked): Outcome {
  const now = (): number => (asked.cpu ? process.cpuUsage().user / 1e6 : performance.now() / 1000);
  const from = now();
  const seconds = (): number => now() - from;
  if (asked.mode === "heuristic") {
    const r = populationSearch(p, { schedules: asked.schedules, seed: asked.seed });
    return { status: r.status, start: r.solution?.start ?? null, bound: r.bound, schedules: r.work, conflicts: 0, seconds: seconds() };
  }
  const search = proofOf(p);
  while (!search.done && seconds() < asked.seconds) search.step(stride);
  const { status, solution, bound } = search.result();
  return { status, start: solution?.start ?? null, bound, schedules: search.schedules, conflicts: search.clashes, seconds: seconds() };
}
