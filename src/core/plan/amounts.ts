import { type ElapsedMinute, never } from "../base";
import { type Amount, type Build, pourOf } from "../build";
import type { Clocks } from "../clock";
import type { Solution } from "../schedule";

/** The end an amount is counted from: strength and warm time from the finish of the pour they name, whatever else they are said of; others from `end`. */
export function countedFrom(build: Build, s: Solution, { on }: Amount, end: ElapsedMinute): ElapsedMinute {
  const pour = pourOf(on);
  return pour === null ? end : (s.finish[build.at.step.get(pour)!]! as ElapsedMinute);
}

/** When an amount is there, never before `end` itself; `never` where it will not be. */
export function thereAt(build: Build, clocks: Clocks, s: Solution, amount: Amount, end: ElapsedMinute): ElapsedMinute {
  const from = countedFrom(build, s, amount, end);
  const at = from >= never ? never : clocks.of(amount.on).advance(from, amount.amount);
  return Math.max(end, at) as ElapsedMinute;
}
