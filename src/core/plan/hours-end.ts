import { type Clock, type ElapsedMinute, lastRunning } from "../base";
import { earliest, type NetworkPart, netOf } from "../schedule";
import { type Bound, furthest } from "./bound";

/** A clock that runs so near the end of time runs for good: weeks repeat, and dates of their own are written for a few years at most. */
const forGood_min = 400 * 1440;

/** A step's hours come to an end: the last minute of them, and whether its calendar goes on without the people it asks for. */
export interface HoursEnd {
  readonly lastAt: ElapsedMinute;
  readonly people: boolean;
}

/** The last minute of a clock that ends; null: it runs for good, or never did. */
export function lastOfClock(clock: Clock): ElapsedMinute | null {
  const last = lastRunning(clock, (furthest - 1) as ElapsedMinute);
  return last < 0 || last > furthest - forGood_min ? null : last;
}

/** Null: they go on for good. */
export function hoursEnd({ build, clocks, crews }: Pick<Bound, "build" | "clocks" | "crews">, s: number): HoursEnd | null {
  const { calendar, done } = build.steps[s]!;
  const lastAt = done === null ? lastOfClock(crews.clock(s)) : null;
  if (lastAt === null) return null;
  const calendarEnds = lastOfClock(clocks.work(calendar));
  return { lastAt, people: calendarEnds === null || calendarEnds > lastAt };
}

/**
 * The step of a witness whose hours end too soon, where that is all that bounds it: nothing in it has to be done by a date, or so long after something. -1: none.
 */
export function outOfHours(bound: Bound, witness: readonly NetworkPart[]): number {
  if (witness.some((part) => part.kind === "due" || part.kind === "fixed" || (part.kind === "link" && part.side === "most"))) return -1;
  const ends = witness.flatMap((part) =>
    part.kind === "job" && part.job < bound.build.steps.length && hoursEnd(bound, part.job) !== null ? [part.job] : [],
  );
  const { broken } = earliest(bound.problem, netOf(bound.problem));
  return ends.includes(broken) ? broken : (ends[0] ?? -1);
}
