import type { SiteTime } from "../../core/clock";
import type { Plan, SiteDay } from "../../core/plan";

/** What is worked on a step on one day. */
export interface DayWork {
  /** Position in the build. */
  readonly step: number;
  /** From when to when, cut at midnight; one after the other. */
  readonly stretches: readonly (readonly [from: number, to: number])[];
  /** It began on a day before. */
  readonly goesOn: boolean;
  /** It is not done on this day. */
  readonly unfinished: boolean;
}

/** The work of a site day in the order in which it begins; a step that goes on over night is there on each of its days. */
export function workOn(plan: Plan, time: SiteTime, day: SiteDay): DayWork[] {
  const number = time.dayOf(day.from);
  const [start, end] = [time.startOf(number), time.startOf(number + 1)];
  return day.steps.flatMap((step): DayWork[] => {
    const dates = plan.steps[step];
    if (dates === undefined) return [];
    const pieces = dates.pieces.length === 0 ? [[dates.start, dates.finish] as const] : dates.pieces;
    const stretches = pieces.flatMap(([from, to]): (readonly [number, number])[] => {
      // What ends as the day begins belongs to the day before, unless it takes no time at all.
      if (to < start || from >= end || (to === start && from < to)) return [];
      return [[Math.max(from, start), Math.min(to, end)]];
    });
    if (stretches.length === 0) return [];
    return [{ step, stretches, goesOn: dates.start < start, unfinished: dates.finish > end }];
  });
}
