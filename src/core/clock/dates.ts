import { parseISO } from "date-fns";

/** Whole days since 1970-01-01 of the proleptic Gregorian calendar; no zone is involved. */
export function dayNumber(year: number, month: number, date: number): number {
  return Date.UTC(year, month - 1, date) / 86_400_000;
}

const written = new Map<number, string>();
/** Forty years of days. */
const mostWritten = 15_000;

/** "2027-06-26" of a day number. Kept, for a plan and its sheet ask for the same few hundred days thousands of times. */
export function textOf(number: number): string {
  const known = written.get(number);
  if (known !== undefined) return known;
  const fresh = new Date(number * 86_400_000).toISOString().slice(0, 10);
  if (written.size >= mostWritten) written.clear();
  written.set(number, fresh);
  return fresh;
}

/** 0 is Sunday. */
export function weekdayOfNumber(number: number): number {
  return (((number + 4) % 7) + 7) % 7;
}

const datePattern = /^\d{4}-\d{2}-\d{2}$/;
const momentPattern = /^(\d{4}-\d{2}-\d{2})(?:T(\d{2}):(\d{2}))?$/;

/**
 * Day number of "2027-06-26", or null when it is not written so or the date does not exist. Read as an instant of UTC: whatever the library works out from
 * local parts of a date depends on the zone of the machine (where the clocks skipped a day, a month has one fewer).
 */
export function readDate(text: string): number | null {
  if (!datePattern.test(text) || text < "1900") return null;
  const known = readBefore.get(text);
  if (known !== undefined) return known;
  const at_ms = parseISO(`${text}T00:00Z`).getTime();
  const number = Number.isNaN(at_ms) ? null : at_ms / 86_400_000;
  if (readBefore.size >= mostWritten) readBefore.clear();
  readBefore.set(text, number);
  return number;
}

/** As with `textOf`: every plan of a build asks for the same few dates, and the library takes some microseconds for each. */
const readBefore = new Map<string, number | null>();

/** Day number and minute of the day of "2027-06-26" or "2027-06-26T07:30"; null as for `readDate`. 24:00 is not a time of day. */
export function readMoment(text: string): { readonly number: number; readonly minute: number } | null {
  const match = momentPattern.exec(text);
  if (match === null) return null;
  const number = readDate(match[1] as string);
  const hour = Number(match[2] ?? 0);
  const minute = Number(match[3] ?? 0);
  if (number === null || hour > 23 || minute > 59) return null;
  return { number, minute: hour * 60 + minute };
}

let [yearFrom, yearTo] = [0, 365];

/** How much of its year has passed by the noon of a day, 0 to 1. The year asked for last is remembered, as days are asked for in order. */
export function yearShare(number: number): number {
  if (number < yearFrom || number >= yearTo) {
    const year = new Date(number * 86_400_000).getUTCFullYear();
    yearFrom = dayNumber(year, 1, 1);
    yearTo = dayNumber(year + 1, 1, 1);
  }
  return (number + 0.5 - yearFrom) / (yearTo - yearFrom);
}
