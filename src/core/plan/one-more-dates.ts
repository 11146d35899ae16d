import type { ElapsedMinute } from "../base";
import type { Build } from "../build";
import { clocksOf } from "../clock";
import { fromMoment } from "./moments";

/** More dates than this are thinned evenly; two years of Saturdays stay whole. */
const mostDates = 120;

/** Local dates on which the usual calendar works, from where the build goes on until its finish. @param from earliest local date; empty: any */
export const datesOnSite = (build: Build, finish: ElapsedMinute, from: string): string[] => dates(build, finish, from, true);

/** Local dates on which it does not, and works the day before or after. */
export const datesBeside = (build: Build, finish: ElapsedMinute, from: string): string[] => dates(build, finish, from, false);

function dates(build: Build, finish: ElapsedMinute, from: string, onSite: boolean): string[] {
  const clocks = clocksOf(build);
  const { time } = clocks;
  const usual = clocks.work(build.usual);
  const begun = build.resumes === null ? 0 : Math.max(0, fromMoment(clocks, build.resumes));
  const first = Math.max(time.dayOf(begun), from === "" ? 0 : (time.dayOfDate(from) ?? 0));
  const last = time.dayOf(finish);
  const works = (day: number): boolean => day >= 0 && usual.reading(time.startOf(day + 1)) > usual.reading(time.startOf(day));
  const found: string[] = [];
  for (let day = first; day <= last; day++)
    if (works(day) ? onSite : !onSite && (works(day - 1) || works(day + 1))) found.push(time.dateOf(day));
  if (found.length <= mostDates) return found;
  return Array.from({ length: mostDates }, (_, k) => found[Math.floor((k * found.length) / mostDates)]!);
}
