import { never } from "../core/base";
import { readMoment, type SiteTime, saidTime, saidWeekdayDate, saidYearDate, siteTime } from "../core/clock";

/** "15:30" of 930 minutes after midnight, or as times are said. */
export const clockWords = saidTime;

/** "Sat 19 Jun", with the year where it is not that of the build's first day. */
export function dateWords(time: SiteTime, t: number): string {
  if (t >= never) return "never";
  const { date, weekday } = time.local(t);
  const year = date.slice(0, 4);
  const text = saidWeekdayDate(weekday, Number(date.slice(8)), Number(date.slice(5, 7)));
  return year === time.dateOf(0).slice(0, 4) ? text : `${text} ${year}`;
}

/** "Sat 19 Jun, 15:30"; midnight is where a date without a time begins, and is said as the date. */
export function momentWords(time: SiteTime, t: number): string {
  if (t >= never) return "never";
  const { minute } = time.local(t);
  return minute === 0 ? dateWords(time, t) : `${dateWords(time, t)}, ${clockWords(minute)}`;
}

/** A finish at midnight belongs to the day that ends with it: "the end of Sat 19 Jun". */
export function finishWords(time: SiteTime, t: number): string {
  if (t >= never || time.local(t).minute !== 0) return momentWords(time, t);
  return t <= 0 ? "the build's first day" : `the end of ${dateWords(time, t - 1)}`;
}

/** "Sat 19 Jun" or "Sat 19 Jun, 7:30" of a date as written; the text itself when it is no date. */
export function writtenDate(text: string, zone: string, start: string): string {
  const read = readMoment(text);
  if (read === null) return text;
  const time = siteTime(zone, start);
  const t = time.at(read.number - time.first, read.minute);
  return momentWords(time, t);
}

/** What is to be done by a date as written: "by Sat 19 Jun, 7:30", "by the end of Sat 19 Jun", "before the build's first day". */
export function writtenDue(text: string, zone: string, start: string): string {
  const read = readMoment(text);
  if (read === null) return `by ${text}`;
  const time = siteTime(zone, start);
  const t = time.at(read.number - time.first + (text.includes("T") ? 0 : 1), text.includes("T") ? read.minute : 0);
  return t <= 0 ? "before the build's first day" : `by ${finishWords(time, t)}`;
}

/** "26 Jun 2027" of "2027-06-26", for what is read without a site. */
export function plainDate(text: string): string {
  const read = readMoment(text);
  return read === null ? text : saidYearDate(Number(text.slice(8, 10)), Number(text.slice(5, 7)), text.slice(0, 4));
}
