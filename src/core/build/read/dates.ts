import { isWithin, limits } from "../../base";
import { readDate as dateNumber } from "../../clock";
import type { DayWindow } from "../model";
import { shown } from "./notes";
import { inside, type Spot } from "./quantities";

/** Whether "2027-02-29" is a day of the calendar, in a year the planner takes as meant. */
export function isDate(text: string): boolean {
  return dateNumber(text) !== null && isWithin(limits.year, Number(text.slice(0, 4)));
}

/** Minutes since midnight for "7:30" up to "24:00"; null for a time that no day has. */
export function minuteOfDay(text: string): number | null {
  const [, hour, minute] = (/^(\d{1,2}):(\d{2})$/.exec(text.trim()) ?? []).map(Number);
  if (hour === undefined || minute === undefined || minute > 59) return null;
  const at = hour * 60 + minute;
  return at <= 1440 ? at : null;
}

export function readDate(at: Spot, text: string): string {
  if (!isDate(text)) at.notes.say("build.date", at.key, { part: at.part, value: shown(text) });
  return text;
}

/** A date, or a date with a time, brought to "2027-06-26T07:30". */
export function readMoment(at: Spot, text: string): string {
  const [date = "", time] = text.split(/[T ]/);
  const minute = time === undefined ? 0 : minuteOfDay(time);
  if (!isDate(date)) at.notes.say("build.date", at.key, { part: at.part, value: shown(text) });
  else if (minute === null || minute === 1440) at.notes.say("build.moment", at.key, { part: at.part, value: shown(text) });
  return time === undefined ? date : `${date}T${time.padStart(5, "0")}`;
}

export const maybeMoment = (at: Spot, text: string | undefined): string | null => (text === undefined ? null : readMoment(at, text));

export function readTimeOfDay(at: Spot, text: string): number {
  const minute = minuteOfDay(text);
  if (minute === null) at.notes.say("build.time-of-day", at.key, { part: at.part, value: shown(text) });
  return minute ?? 0;
}

/** Windows of one day in order; each ends after it begins, none runs into the next or over midnight. */
export function readWindows(at: Spot, texts: readonly string[]): DayWindow[] {
  const windows: DayWindow[] = [];
  texts.forEach((text, i) => {
    const [from, to] = text.split(/[-–]/).map(minuteOfDay);
    if (from === null || to === null || from === undefined || to === undefined || from >= to) {
      const { key, part } = inside(at, i + 1);
      at.notes.say("build.window", key, { part, value: shown(text) });
    } else windows.push({ from_min: from, to_min: to });
  });
  windows.sort((a, b) => a.from_min - b.from_min);
  const clash = windows.findIndex((window, i) => i > 0 && window.from_min < (windows[i - 1]?.to_min ?? 0));
  if (clash > 0 && windows.length === texts.length) {
    at.notes.say("build.windows-overlap", at.key, { part: at.part, first: spell(windows[clash - 1]), second: spell(windows[clash]) });
  }
  return windows;
}

const clockTime = (minute: number): string => `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
const spell = (window: DayWindow | undefined): string => (window ? `${clockTime(window.from_min)}-${clockTime(window.to_min)}` : "");
