import { type Clock, type ElapsedMinute, never } from "../base";
import type { LocalMoment } from "../build";
import type { Clocks } from "../clock";

/** The first minute of a moment; of a date, its midnight. Dates were checked when the document was read. */
export function fromMoment(clocks: Clocks, moment: LocalMoment): ElapsedMinute {
  return clocks.time.minuteOf(moment)!;
}

/** A moment as a limit: of a date, the end of that day. */
export function untilMoment(clocks: Clocks, moment: LocalMoment): ElapsedMinute {
  return isDate(moment) ? clocks.time.startOf(clocks.time.dayOfDate(moment)! + 1) : fromMoment(clocks, moment);
}

export function isDate(moment: LocalMoment): boolean {
  return !moment.includes("T");
}

/**
 * What a start on a date means for a job: it may start at any running minute of that day. Told to the scheduler as an earliest start and the finish it
 * has when started in the last minute; null when the clock does not run that day.
 */
export function startWithin(
  clock: Clock,
  amount: number,
  from: ElapsedMinute,
  to: ElapsedMinute,
): { readonly release: ElapsedMinute; readonly due: ElapsedMinute } | null {
  const first = clock.begin(from);
  if (first >= to) return null;
  const last = clock.begin((to - 1) as ElapsedMinute) === to - 1 ? ((to - 1) as ElapsedMinute) : clock.retreat(to, 1);
  const due = clock.advance(last, amount);
  return due >= never ? null : { release: first, due };
}
