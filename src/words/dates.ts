import { never } from "../core/base";
import { readMoment, type SiteTime, siteTime } from "../core/clock";

const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** "Jun" of month 6. */
const monthName = (month: number): string => months[month - 1] ?? "";

/** "15:30" of 930 minutes after midnight. */
export function clockWords(minute: number): string {
  return `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
}

/** "Sat 19 Jun", with the year where it is not that of the build's first day. */
export function dateWords(time: SiteTime, t: number): string {
  if (t >= never) return "never";
  const { date, weekday } = time.local(t);
  const year = date.slice(0, 4);
  const text = `${weekdays[weekday]} ${Number(date.slice(8))} ${monthName(Number(date.slice(5, 7)))}`;
  return year === time.dateOf(0).slice(0, 4) ? text : `${text} ${year}`;
}

/** "Sat 19 Jun, 15:30" */
export function momentWords(time: SiteTime, t: number): string {
  return t >= never ? "never" : `${dateWords(time, t)}, ${clockWords(time.local(t).minute)}`;
}

/** A finish at midnight belongs to the day that ends with it: "Sat 19 Jun, 24:00". */
export function finishWords(time: SiteTime, t: number): string {
  if (t >= never || time.local(t).minute !== 0) return momentWords(time, t);
  return `${dateWords(time, t - 1)}, 24:00`;
}

/** "Sat 19 Jun" or "Sat 19 Jun, 7:30" of a date as written; the text itself when it is no date. */
export function writtenDate(text: string, zone: string, start: string): string {
  const read = readMoment(text);
  if (read === null) return text;
  const time = siteTime(zone, start);
  const t = time.at(read.number - time.first, read.minute);
  return text.includes("T") ? momentWords(time, t) : dateWords(time, t);
}

/** "26 Jun 2027" of "2027-06-26", for what is read without a site. */
export function plainDate(text: string): string {
  const read = readMoment(text);
  return read === null ? text : `${Number(text.slice(8, 10))} ${monthName(Number(text.slice(5, 7)))} ${text.slice(0, 4)}`;
}
