import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import { type Comparison, compare, type Plan, type StepDates } from "../../core/plan";
import { counted, dateWords, sentence } from "../../words";

/** How a plan stands against the one that was kept on purpose. */
export interface Kept {
  /** Local date on which it was kept; null where that was not written down. */
  readonly on: string | null;
  /** "2 site days later than the plan kept on Fri 5 Mar." */
  readonly sentence: string;
  readonly comparison: Comparison;
}

/**
 * The kept plan as far as a document holds one: when each step starts and ends, and the finish. Of all else nothing was kept, so it counts as unmoved.
 * Null where its dates cannot be placed.
 */
function planKept(build: Build, now: Plan): Plan | null {
  const time = siteTime(build.site.zone, build.start);
  const finish = build.kept ? time.minuteOf(build.kept.finish) : null;
  const [pattern] = now.steps;
  if (!build.kept || finish === null || !pattern) return null;
  const rows = [...build.kept.steps].flatMap(([id, kept]): (readonly [string, StepDates])[] => {
    const [start, end] = [time.minuteOf(kept.start), time.minuteOf(kept.finish)];
    return start === null || end === null ? [] : [[id, { ...pattern, start, finish: end } as StepDates]];
  });
  return {
    ...now,
    finish: finish as Plan["finish"],
    ids: rows.map(([id]) => id),
    steps: rows.map(([, dates]) => dates),
  };
}

/** Null where no plan was kept or there is none to compare with it. */
export function againstKept(build: Build | null, plan: Plan | null): Kept | null {
  if (build?.kept == null || plan?.status !== "planned") return null;
  const before = planKept(build, plan);
  if (before === null) return null;
  const comparison = compare(before, plan, build);
  const time = siteTime(build.site.zone, build.start);
  const on = build.kept.on ?? null;
  const day = on === null ? null : time.minuteOf(on);
  const name = day === null ? "the kept plan" : `the plan kept on ${dateWords(time, day)}`;
  return { on, comparison, sentence: sentence(apart(comparison, name)) };
}

/** How much later or earlier than another plan the finish is, in site days; "name" as it is called in a sentence: "2 site days later than the kept plan". */
export function finishApart({ finishBefore, finishAfter, siteDaysLost }: Comparison, name: string): string {
  const side = (later: boolean): string => (later ? "later" : "earlier");
  if (siteDaysLost !== 0) return `${counted(Math.abs(siteDaysLost), "site day")} ${side(siteDaysLost > 0)} than ${name}`;
  if (finishAfter !== finishBefore) return `a little ${side(finishAfter > finishBefore)} than ${name}, on the same site day`;
  return `as in ${name}`;
}

function apart(comparison: Comparison, name: string): string {
  const { finishBefore, finishAfter, moved } = comparison;
  if (finishAfter !== finishBefore || moved.length === 0) return finishApart(comparison, name);
  return `the same finish as in ${name}; ${counted(moved.length, "step")} moved`;
}
