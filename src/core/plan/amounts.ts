import { type ElapsedMinute, never } from "../base";
import type { Amount, Build } from "../build";
import type { Clocks } from "../clock";
import type { Solution } from "../schedule";

/** The end an amount is counted from: a strength from the finish of the pour it names, whatever else it is said of; anything else from `end`. */
export function countedFrom(build: Build, s: Solution, { on }: Amount, end: ElapsedMinute): ElapsedMinute {
  return on.kind === "strength" ? (s.finish[build.at.step.get(on.pour)!]! as ElapsedMinute) : end;
}

/** When an amount is there, never before `end` itself; `never` where it will not be. */
export function thereAt(build: Build, clocks: Clocks, s: Solution, amount: Amount, end: ElapsedMinute): ElapsedMinute {
  const from = countedFrom(build, s, amount, end);
  const at = from >= never ? never : clocks.of(amount.on).advance(from, amount.amount);
  return Math.max(end, at) as ElapsedMinute;
}
