import { weekdayOfNumber } from "./dates";
import { holidaysOf } from "./holidays";
import { joined, type RunSource, type Runs } from "./runs";
import { type SiteSpec, siteTime } from "./site";
import { inDaylight } from "./sun";

/** Minutes on the wall since local midnight, end exclusive; `to_min` may pass midnight (1500 is one o'clock the next morning). */
export interface WindowSpec {
  readonly from_min: number;
  readonly to_min: number;
}

/** What a calendar of the build says about working time. */
export interface WorkSpec {
  readonly id: string;
  /** Windows of each weekday, Sunday first. */
  readonly week: readonly (readonly WindowSpec[])[];
  readonly off: readonly string[];
  readonly extra: ReadonlyMap<string, readonly WindowSpec[]>;
  readonly holidays: string | null;
  readonly daylightOnly: boolean;
}

/** The windows of single days. What a date says itself (`extra`, then `off`) goes before the holidays, and these before the week. */
export interface DayWindows {
  of(day: number): readonly WindowSpec[];
  /** The only days that have any, in order; null: every day may. */
  readonly only: readonly number[] | null;
}

const none: readonly WindowSpec[] = [];

/** Daylight is not cut here: see `calendarRuns`. An unknown holiday table counts as none: `checkHolidays` has said so. */
export function dayWindows(spec: WorkSpec, site: SiteSpec, start: string): DayWindows {
  const time = siteTime(site.zone, start);
  const special = new Map<number, readonly WindowSpec[]>();
  for (const date of spec.off) put(special, time.dayOfDate(date), none);
  for (const [date, windows] of spec.extra) put(special, time.dayOfDate(date), windows);
  const holiday = holidaysOf(spec.holidays);
  const weekly = spec.week.some((windows) => windows.length > 0);
  return {
    of: (day) => {
      const own = special.get(day);
      if (own !== undefined) return own;
      const windows = spec.week[weekdayOfNumber(time.first + day)] ?? none;
      return windows.length === 0 || holiday(time.first + day) ? none : windows;
    },
    only: weekly ? null : [...special.keys()].sort((a, b) => a - b),
  };
}

function put(map: Map<number, readonly WindowSpec[]>, day: number | null, windows: readonly WindowSpec[]): void {
  if (day !== null) map.set(day, windows);
}

/** When the wall clock is inside the windows of its day, or of the day before where a window passes midnight. */
export function windowRuns(windows: DayWindows, site: SiteSpec, start: string): RunSource {
  const time = siteTime(site.zone, start);
  return (from, to) => {
    const found: number[] = [];
    let last = Number.NEGATIVE_INFINITY;
    let inOrder = true;
    const on = (day: number, of: readonly WindowSpec[]): void => {
      for (let i = 0; i < of.length; i += 1) {
        const { from_min, to_min } = of[i] as WindowSpec;
        const a = Math.max(from, time.at(day, from_min));
        const b = Math.min(to, time.at(day, to_min));
        if (a >= b) continue;
        const touches = a <= last && a >= (found[found.length - 2] as number);
        if (touches) found[found.length - 1] = Math.max(last, b);
        else {
          inOrder &&= last < a;
          found.push(a, b);
        }
        last = found[found.length - 1] as number;
      }
    };
    if (windows.only !== null) for (const day of windows.only) on(day, windows.of(day));
    else {
      for (let day = time.dayOf(from) - 1, last = time.dayOf(to); day <= last; day += 1) {
        const of = windows.of(day);
        if (of.length > 0) on(day, of);
      }
    }
    return inOrder ? found : joined(sorted(found));
  };
}

/** By their starts. */
function sorted(runs: Runs): Runs {
  const pairs: [number, number][] = [];
  for (let i = 0; i < runs.length; i += 2) pairs.push([runs[i] as number, runs[i + 1] as number]);
  return pairs.sort((a, b) => a[0] - b[0]).flat();
}

/** A calendar's working time: its windows, in daylight only where it says so. */
export function calendarRuns(spec: WorkSpec, site: SiteSpec, start: string): RunSource {
  const runs = windowRuns(dayWindows(spec, site, start), site, start);
  return spec.daylightOnly ? inDaylight(runs, site, start) : runs;
}
