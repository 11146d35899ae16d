import type { Day, ElapsedMinute } from "../base";
import { readDate, readMoment, textOf, weekdayOfNumber } from "./dates";
import { zone } from "./zone";

/** What of a build fixes its time: the zone of its site and its first day. */
export interface SiteSpec {
  readonly zone: string;
  readonly latitude: number;
  readonly longitude: number;
}

interface LocalTime {
  readonly day: Day;
  /** "2027-06-26" */
  readonly date: string;
  /** Minutes on the wall clock since midnight. */
  readonly minute: number;
  /** 0 is Sunday. */
  readonly weekday: number;
}

/**
 * Between the site's wall clock and minutes since the build's epoch (the first minute of the build's first day there). Every conversion in
 * the program goes through here; the rules for the spring gap and the repeated hour stand in zone.ts.
 */
export interface SiteTime {
  readonly zone: string;
  /** Day number (dates.ts) of day 0. */
  readonly first: number;
  /** UTC minute (since 1970) of minute 0. */
  readonly epoch_utc_min: number;
  /** The instant of a wall time; `minute` may be beyond the day (1440 and more: the days after). */
  at(day: number, minute: number): ElapsedMinute;
  local(t: number): LocalTime;
  dayOf(t: number): Day;
  /** The first minute of a day. */
  startOf(day: number): ElapsedMinute;
  dateOf(day: number): string;
  weekdayOf(day: number): number;
  /** Day of a date; null when the text is no date. */
  dayOfDate(date: string): Day | null;
  /** Instant of a local moment; null when the text is none. */
  minuteOf(moment: string): ElapsedMinute | null;
  /** "2027-06-26T07:30" */
  momentOf(t: number): string;
}

const made = new Map<string, SiteTime>();
const mostKept = 64;

/** @throws RangeError for a zone or date that `checkZone` and `readDate` refuse. */
export function siteTime(zoneName: string, start: string): SiteTime {
  const key = `${zoneName} ${start}`;
  const known = made.get(key);
  if (known !== undefined) return known;
  const fresh = makeSiteTime(zoneName, start);
  if (made.size >= mostKept) made.clear();
  made.set(key, fresh);
  return fresh;
}

function makeSiteTime(zoneName: string, start: string): SiteTime {
  const wall = zone(zoneName);
  const first = readDate(start);
  if (first === null) throw new RangeError(`no date ${start}`);
  const epoch = wall.utcOf(first * 1440);
  const at = (day: number, minute: number) => (wall.utcOf((first + day) * 1440 + minute) - epoch) as ElapsedMinute;
  const wallOf = (t: number) => t + epoch + wall.offsetAt(t + epoch);
  const local = (t: number): LocalTime => {
    const shown = wallOf(t);
    const number = Math.floor(shown / 1440);
    return { day: (number - first) as Day, date: textOf(number), minute: shown - number * 1440, weekday: weekdayOfNumber(number) };
  };
  return {
    zone: zoneName,
    first,
    epoch_utc_min: epoch,
    at,
    local,
    dayOf: (t) => (Math.floor(wallOf(t) / 1440) - first) as Day,
    startOf: (day) => at(day, 0),
    dateOf: (day) => textOf(first + day),
    weekdayOf: (day) => weekdayOfNumber(first + day),
    dayOfDate: (date) => {
      const number = readDate(date);
      return number === null ? null : ((number - first) as Day);
    },
    minuteOf: (moment) => {
      const read = readMoment(moment);
      return read === null ? null : at(read.number - first, read.minute);
    },
    momentOf: (t) => {
      const { date, minute } = local(t);
      return `${date}T${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
    },
  };
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}
