import type { Build } from "../../build";
import type { Clocks } from "../../clock";
import type { Plan } from "../plan";

/** One thing that a plan breaks; ids as in the document, `at` in minutes. */
export interface Fault {
  readonly rule: string;
  readonly step?: string;
  readonly other?: string;
  readonly place?: string;
  readonly piece?: string;
  readonly of?: string;
  readonly at: number;
}

/** What the second look works on: the build and the dates, nothing of how they were found. */
export interface Case {
  readonly build: Build;
  readonly clocks: Clocks;
  readonly start: readonly number[];
  readonly finish: readonly number[];
  readonly arrives: readonly number[];
}

export function caseOf(build: Build, clocks: Clocks, plan: Plan): Case {
  return {
    build,
    clocks,
    start: plan.steps.map((s) => s.start),
    finish: plan.steps.map((s) => s.finish),
    arrives: plan.deliveries.map((d) => d.arrives),
  };
}
