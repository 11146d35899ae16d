import { type DayWindows, dayWindows, type WindowSpec, type WorkSpec, windowRuns } from "./calendar";
import { either, type RunSource } from "./runs";
import { type SiteSpec, siteTime } from "./site";
import { inDaylight } from "./sun";

/** What is needed of a person to know when they are there. */
export interface PersonSpec {
  readonly id: string;
  readonly calendar: string;
  readonly daysOffSpent: readonly string[];
  readonly away: readonly string[];
}

/**
 * The site's usual day, for a date on which the usual calendar has no windows of its own: those of its weekday with most hours (Saturday first
 * among equals), as a day off work is spent to have one more day like that.
 */
export function usualDay(usual: WorkSpec): readonly WindowSpec[] {
  const long = (windows: readonly WindowSpec[]) => windows.reduce((sum, { from_min, to_min }) => sum + to_min - from_min, 0);
  let best: readonly WindowSpec[] = [];
  for (const weekday of [6, 0, 1, 2, 3, 4, 5]) {
    const windows = usual.week[weekday] ?? [];
    if (long(windows) > long(best)) best = windows;
  }
  return best;
}

/** The usual day on each of the dates given, in daylight only where the usual calendar says so. */
export function spentDays(dates: readonly string[], usual: WorkSpec, site: SiteSpec, start: string): RunSource {
  const time = siteTime(site.zone, start);
  const spent = new Set(dates.map((date) => time.dayOfDate(date)).filter((day) => day !== null));
  const written = dayWindows(usual, site, start);
  const windows: DayWindows = {
    of: (day) => {
      const own = written.of(day);
      return own.length > 0 ? own : usualDay(usual);
    },
    only: [...spent].sort((a, b) => a - b),
  };
  const runs = windowRuns(windows, site, start);
  return usual.daylightOnly ? inDaylight(runs, site, start) : runs;
}

/** A calendar as one goes by it who is away on these dates. */
export const awayOn = <S extends WorkSpec>(spec: S, dates: readonly string[]): S =>
  dates.length === 0
    ? spec
    : { ...spec, off: [...spec.off, ...dates], extra: new Map([...spec.extra].filter(([date]) => !dates.includes(date))) };

/** A person is there on their own calendar, and all of the usual day on the days off work they spend. */
export function personRuns(person: PersonSpec, own: RunSource, usual: WorkSpec, site: SiteSpec, start: string): RunSource {
  if (person.daysOffSpent.length === 0) return own;
  return either(own, spentDays(person.daysOffSpent, usual, site, start));
}
