import { type SiteTime, saidDay, saidTime, saidWeekdayDate } from "../../core/clock";

export const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** "Sat 19" */
export function dayLabel(time: SiteTime, t: number): string {
  const { date, weekday } = time.local(t);
  return saidDay(weekday, Number(date.slice(8)));
}

/** "Sat 19 Jun", or as dates are said. */
export function dateLabel(time: SiteTime, t: number): string {
  const { date, weekday } = time.local(t);
  return saidWeekdayDate(weekday, Number(date.slice(8)), Number(date.slice(5, 7)));
}

/** "15:30"; the end of a day is 24:00 of that day only where the caller says so, else 00:00 of the next. */
export function clockLabel(time: SiteTime, t: number): string {
  return saidTime(time.local(t).minute);
}

/** "Sat 19, 15:30" */
export function momentLabel(time: SiteTime, t: number): string {
  return `${dayLabel(time, t)}, ${clockLabel(time, t)}`;
}

/** "Sat 19 Jun, 8:00 to 15:30", or with both days where it ends on another. */
export function spanLabel(time: SiteTime, from: number, to: number): string {
  const start = `${dateLabel(time, from)}, ${clockLabel(time, from)}`;
  const same = time.local(from).date === time.local(to).date;
  return same ? `${start} to ${clockLabel(time, to)}` : `${start} to ${dateLabel(time, to)}, ${clockLabel(time, to)}`;
}

/** "June" of "2027-06-19". */
export function monthOf(date: string): (typeof months)[number] {
  return months[Number(date.slice(5, 7)) - 1] as (typeof months)[number];
}
