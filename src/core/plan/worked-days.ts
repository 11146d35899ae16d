import type { Clocks } from "../clock";

/** Days on which a calendar works after the day of `from`, up to and with the day of `to`; negative the other way round. */
export function workedDays(clocks: Clocks, calendar: string, from: number, to: number): number {
  if (to < from) return -workedDays(clocks, calendar, to, from);
  const { time } = clocks;
  const clock = clocks.work(calendar);
  const last = time.dayOf(to);
  let count = 0;
  for (let day = time.dayOf(from) + 1; day <= last; ) {
    const next = clock.begin(time.startOf(day));
    const worked = time.dayOf(next);
    if (worked > last) break;
    count++;
    day = worked + 1;
  }
  return count;
}
