import type { DocumentEdit } from "../../core/base";
import { holidayName } from "../../core/clock";
import { idsOf, isObject, textOf, type Written } from "../write/written";
import { hoursOf } from "./week";

const two = (value: number): string => String(value).padStart(2, "0");
const utc = (date: string): Date => new Date(`${date}T00:00:00Z`);
const dateText = (at: Date): string => `${at.getUTCFullYear()}-${two(at.getUTCMonth() + 1)}-${two(at.getUTCDate())}`;

export const monthNames = [
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

/** "2027-06-26" so many days on. */
export function daysOn(date: string, days: number): string {
  const at = utc(date);
  at.setUTCDate(at.getUTCDate() + days);
  return dateText(at);
}

/** The same day so many months on, or the last of a shorter month. */
export function monthsOn(date: string, months: number): string {
  const at = utc(date);
  const last = new Date(Date.UTC(at.getUTCFullYear(), at.getUTCMonth() + months + 1, 0));
  last.setUTCDate(Math.min(at.getUTCDate(), last.getUTCDate()));
  return dateText(last);
}

/** "13 February 2027"; what is no date stays as it is. */
export const dayWords = (date: string): string =>
  isDay(date) ? `${Number(date.slice(8))} ${monthNames[Number(date.slice(5, 7)) - 1]} ${date.slice(0, 4)}` : date;

/** 0 is Sunday. */
export const weekdayOf = (date: string): number => utc(date).getUTCDay();
export const isDay = (date: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(date) && dateText(utc(date)) === date;

export interface Month {
  /** "2027-06" */
  readonly id: string;
  /** "June 2027" */
  readonly name: string;
  /** Dates week by week; null before the first and after the last. */
  readonly weeks: readonly (readonly (string | null)[])[];
}

/** The month of a date, weeks beginning with the weekday given. */
export function monthOf(date: string, firstWeekday: number): Month {
  const first = `${date.slice(0, 7)}-01`;
  const before = (weekdayOf(first) - firstWeekday + 7) % 7;
  const length = Number(daysOn(monthsOn(first, 1), -1).slice(8));
  const cells = Array.from({ length: Math.ceil((before + length) / 7) * 7 }, (_, i) =>
    i < before || i >= before + length ? null : daysOn(first, i - before),
  );
  return {
    id: first.slice(0, 7),
    name: `${monthNames[Number(date.slice(5, 7)) - 1] ?? ""} ${date.slice(0, 4)}`,
    weeks: Array.from({ length: cells.length / 7 }, (_, row) => cells.slice(row * 7, row * 7 + 7)),
  };
}

/** What a calendar says of a day: as the week says, off, or hours of its own. */
export type DaySort = "week" | "off" | "extra";

export interface DayState {
  readonly sort: DaySort;
  /** Hours worked on that day; empty on a day off. */
  readonly hours: readonly string[];
  /** Name of the holiday that it is by the calendar's table; empty for none. */
  readonly holiday: string;
}

/** As the planner reads it: hours of its own, then days off, go before the holidays, and these before the week. */
export function dayState(calendar: Written, date: string): DayState {
  const extra = isObject(calendar.extra) && Object.hasOwn(calendar.extra, date) ? idsOf(calendar.extra[date]) : null;
  const holiday = holidayName(textOf(calendar.holidays), date) ?? "";
  if (extra !== null) return { sort: extra.length > 0 ? "extra" : "off", hours: extra, holiday };
  if (idsOf(calendar.off).includes(date)) return { sort: "off", hours: [], holiday };
  return { sort: "week", hours: holiday === "" ? (hoursOf(calendar)[weekdayOf(date)] ?? []) : [], holiday };
}

/** Hours offered for a day of its own: those of its weekday, else of the first weekday that has any. */
export function hoursOffered(calendar: Written, date: string): readonly string[] {
  const week = hoursOf(calendar);
  const own = week[weekdayOf(date)] ?? [];
  return own.length > 0 ? own : (week.find((hours) => hours.length > 0) ?? ["8:00-17:00"]);
}

/** What a click makes of a day: the first step is what one most likely wants. */
export function nextSort(calendar: Written, date: string): DaySort {
  const { sort } = dayState(calendar, date);
  const works = dayState({ ...calendar, off: [], extra: {} }, date).hours.length > 0;
  const round: readonly DaySort[] = works ? ["week", "off", "extra"] : ["week", "extra", "off"];
  return round[(round.indexOf(sort) + 1) % 3] ?? "week";
}

/** The edits that make it so. Days stay in order; lists that come out empty go. */
export function dayEdits(calendar: Written, date: string, sort: DaySort, hours: readonly string[]): readonly DocumentEdit[] {
  const path = ["calendars", `id=${textOf(calendar.id)}`];
  const off = idsOf(calendar.off);
  const extra = isObject(calendar.extra) ? calendar.extra : {};
  const { [date]: _, ...others } = extra;
  const days = sort === "off" ? [...new Set([...off, date])].sort() : off.filter((one) => one !== date);
  const own = sort === "extra" ? { ...others, [date]: hours } : others;
  const ordered = Object.fromEntries(Object.entries(own).sort(([a], [b]) => (a < b ? -1 : 1)));
  const put = (key: string, value: unknown, empty: boolean): DocumentEdit =>
    empty ? { path: [...path, key] } : { path: [...path, key], value };
  return [
    ...(days.length === off.length && days.every((one, i) => one === off[i]) ? [] : [put("off", days, days.length === 0)]),
    ...(sort === "extra" || Object.hasOwn(extra, date) ? [put("extra", ordered, Object.keys(ordered).length === 0)] : []),
  ];
}
