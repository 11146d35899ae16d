import type { TimeBounds } from "../access";
import { type ElapsedMinute, never } from "../base";
import type { Amount } from "../build";
import { fitStart } from "../schedule";
import type { Bound } from "./bound";

/** A day when the clocks go forward. */
const shortestDay_min = 23 * 60;

/** What a plan's clocks say whatever the date: never more than a calendar asks for, so that what these refute no calendar can save. */
export function timeBounds(bound: Bound): TimeBounds {
  const { problem, clocks } = bound;
  return {
    work: (s) => {
      const amount = problem.amount[s]!;
      return { least: amount, most: problem.unbroken[s] === 1 || amount === 0 ? amount : Number.POSITIVE_INFINITY };
    },
    least: ({ on, amount }: Amount) => {
      if (on.kind === "days") return Math.max(0, amount - 1) * shortestDay_min;
      if (on.kind !== "strength" && on.kind !== "warm") return amount;
      const after = clocks.pour(on).shortest(amount);
      return after >= never ? Number.POSITIVE_INFINITY : after;
    },
    most: ({ on, amount }: Amount) => {
      if (on.kind === "elapsed") return amount;
      if (on.kind !== "strength" && on.kind !== "warm") return Number.POSITIVE_INFINITY;
      const until = clocks.pour(on).longest(amount);
      return until >= never ? Number.POSITIVE_INFINITY : until;
    },
    notBefore: (s) => (problem.release[s]! > 0 ? fitStart(problem, s, problem.release[s]! as ElapsedMinute) : null),
    deadline: (s) => (problem.due[s]! < never ? problem.due[s]! : null),
    fixed: (s) => (problem.fixed[s]! >= 0 ? problem.fixed[s]! : null),
  };
}
