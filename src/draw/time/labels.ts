import type { SiteTime } from "../../core/clock";

const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
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
  return `${weekdays[weekday]} ${Number(date.slice(8))}`;
}

/** "Sat 19 Jun" */
export function dateLabel(time: SiteTime, t: number): string {
  return `${dayLabel(time, t)} ${monthOf(time.local(t).date).slice(0, 3)}`;
}

/** "15:30"; the end of a day is 24:00 of that day only where the caller says so, else 00:00 of the next. */
export function clockLabel(time: SiteTime, t: number): string {
  const { minute } = time.local(t);
  return `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
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
