import type { Build } from "../build";
import { clocksOf } from "../clock";
import type { Plan } from "./plan";

/** The `kept` part of a document: local moments, so that another first day of the build does not shift what was kept. */
export interface KeptPart {
  readonly engine: string;
  readonly rung: number;
  readonly finish: string;
  readonly steps: Readonly<Record<string, readonly [start: string, finish: string]>>;
}

/** @throws nothing; a plan without dates keeps no steps. */
export function keep(build: Build, plan: Plan): KeptPart {
  const { time } = clocksOf(build);
  return {
    engine: plan.engine,
    rung: plan.rung,
    finish: time.momentOf(plan.finish),
    steps: Object.fromEntries(plan.steps.map((s, i) => [plan.ids[i]!, [time.momentOf(s.start), time.momentOf(s.finish)] as const])),
  };
}
