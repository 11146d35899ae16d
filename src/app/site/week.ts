import { idsOf, isObject, type Written } from "../write/written";
import { timeTyped } from "./time-typed";

/** A stretch of a day, in minutes since midnight. */
export interface Stretch {
  readonly from_min: number;
  readonly to_min: number;
}

/** Days of a week as the document names them, and as they are shown. */
export const weekdays = [
  { id: "sun", name: "Sunday", short: "Sun" },
  { id: "mon", name: "Monday", short: "Mon" },
  { id: "tue", name: "Tuesday", short: "Tue" },
  { id: "wed", name: "Wednesday", short: "Wed" },
  { id: "thu", name: "Thursday", short: "Thu" },
  { id: "fri", name: "Friday", short: "Fri" },
  { id: "sat", name: "Saturday", short: "Sat" },
] as const;

/** Windows of each weekday, Sunday first. */
export type Week = readonly (readonly Stretch[])[];

export const clockText = (minute: number): string => `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
export const stretchText = ({ from_min, to_min }: Stretch): string => `${clockText(from_min)}-${clockText(to_min)}`;

/** The stretches of a day that can be read; others are left to the document's own check. */
export function stretchesOf(texts: readonly string[]): readonly Stretch[] {
  return texts
    .flatMap((text): Stretch[] => {
      const [, h1, m1, h2, m2] = (/^(\d{1,2}):(\d{2}) ?[-–] ?(\d{1,2}):(\d{2})$/.exec(text.trim()) ?? []).map(Number);
      if (h1 === undefined || m1 === undefined || h2 === undefined || m2 === undefined) return [];
      const [from_min, to_min] = [h1 * 60 + m1, h2 * 60 + m2];
      return from_min < to_min && to_min <= 1440 ? [{ from_min, to_min }] : [];
    })
    .sort((a, b) => a.from_min - b.from_min);
}

/** Hours as typed in one line, "7:30-12:00, 12:30-17:00", each as the document writes it: "7-12" is "7:00-12:00". What cannot be read stays as typed. */
export function typedHours(typed: string): readonly string[] {
  return typed
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .map((part) => {
      const ends = part.split(/\s*(?:[-–—]|\bto\b)\s*/);
      const read = ends.map(timeTyped);
      return ends.length === 2 && read.every((end) => end !== null) ? read.join("-") : part;
    });
}

const weekOf = (calendar: Written): Written => (isObject(calendar.week) ? calendar.week : {});

/** Hours of each weekday as written, Sunday first. */
export const hoursOf = (calendar: Written): readonly (readonly string[])[] => weekdays.map(({ id }) => idsOf(weekOf(calendar)[id]));

export const weekRead = (calendar: Written): Week => hoursOf(calendar).map(stretchesOf);

/** One day with a stretch drawn in or rubbed out; what touches becomes one. */
export function drawn(day: readonly Stretch[], { from_min, to_min }: Stretch, work: boolean): readonly Stretch[] {
  if (from_min >= to_min) return day;
  if (!work)
    return day.flatMap((one) => [
      ...(one.from_min < from_min ? [{ from_min: one.from_min, to_min: Math.min(one.to_min, from_min) }] : []),
      ...(one.to_min > to_min ? [{ from_min: Math.max(one.from_min, to_min), to_min: one.to_min }] : []),
    ]);
  const touching = day.filter((one) => one.from_min <= to_min && one.to_min >= from_min);
  const whole = {
    from_min: Math.min(from_min, ...touching.map((one) => one.from_min)),
    to_min: Math.max(to_min, ...touching.map((one) => one.to_min)),
  };
  return [...day.filter((one) => !touching.includes(one)), whole].sort((a, b) => a.from_min - b.from_min);
}

/** A corner of what is drawn: a row of the week as shown, and a cell of it. */
export interface Corner {
  readonly row: number;
  readonly cell: number;
}

/** Width of a cell. */
export const cell_min = 30;

/** The week with the block between two corners drawn in or rubbed out. `days`: the weekday of each row; cells count from midnight. */
export function blockDrawn(week: Week, days: readonly number[], a: Corner, b: Corner, work: boolean): Week {
  const stretch = { from_min: Math.min(a.cell, b.cell) * cell_min, to_min: (Math.max(a.cell, b.cell) + 1) * cell_min };
  const rows = new Set(days.slice(Math.min(a.row, b.row), Math.max(a.row, b.row) + 1));
  return week.map((day, weekday) => (rows.has(weekday) ? drawn(day, stretch, work) : day));
}

/** Whether a cell is worked through, half of it at least. */
export function isWorked(day: readonly Stretch[], cell: number): boolean {
  const [from, to] = [cell * cell_min, (cell + 1) * cell_min];
  const worked = day.reduce((sum, one) => sum + Math.max(0, Math.min(to, one.to_min) - Math.max(from, one.from_min)), 0);
  return worked * 2 >= cell_min;
}

/** Whole hours shown: from 5 to 21, and further where something is written there. */
export function hoursShown(week: Week): { readonly from: number; readonly to: number } {
  const all = week.flat();
  return {
    from: Math.min(5, ...all.map(({ from_min }) => Math.floor(from_min / 60))),
    to: Math.max(21, ...all.map(({ to_min }) => Math.ceil(to_min / 60))),
  };
}

/** "Mon to Fri", "Sat, Sun": the days on which a week works, in the order shown. */
export function daysWords(week: Week, order: readonly number[]): string {
  const runs: number[][] = [];
  order.forEach((weekday, row) => {
    if ((week[weekday]?.length ?? 0) === 0) return;
    const last = runs.at(-1);
    if (last && last.at(-1) === row - 1) last.push(row);
    else runs.push([row]);
  });
  const short = (row: number | undefined): string => weekdays[order[row ?? 0] ?? 0]?.short ?? "";
  return runs.map((run) => (run.length > 2 ? `${short(run[0])} to ${short(run.at(-1))}` : run.map(short).join(", "))).join(", ");
}
