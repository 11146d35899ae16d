import type { Build } from "../../core/build";
import { type SiteTime, siteTime } from "../../core/clock";
import { type Plan, type SolidStage, solidStages } from "../../core/plan";
import { bodiesOf, isHole } from "../../draw";
import type { BodyChange } from "../../words";

/** The days of a build as its drawing runs through them, counted from the build's first day. */
export interface StructureDays {
  readonly first: number;
  readonly last: number;
  /** Days on which somebody works at the site. */
  readonly site: readonly number[];
  /** Days on which a body becomes something else, with what it becomes; in order of time. */
  readonly changes: ReadonlyMap<number, readonly BodyChange[]>;
  readonly time: SiteTime;
}

/** The instant for which a day is drawn: its last minute, when all that is done on it is done. */
export const endOf = (time: SiteTime, day: number): number => time.startOf(day + 1) - 1;

/** Needs a plan with dates. */
export function structureDays(build: Build, plan: Plan): StructureDays {
  const time = siteTime(build.site.zone, build.start);
  const first = time.dayOf(Math.min(plan.finish, ...plan.steps.map(({ start }) => start)));
  const last = Math.max(first, time.dayOf(plan.finish));
  const { solids } = bodiesOf(build);
  const stages = solidStages(build, plan, solids);
  const found: [number, BodyChange][] = solids.flatMap((solid, index) =>
    changesOf(stages[index] ?? [], time).map(([day, change]): [number, BodyChange] => [
      day,
      { ...change, name: solid.name, hole: isHole(build, solid) },
    ]),
  );
  const changes = new Map<number, BodyChange[]>();
  for (const [day, change] of found.sort(([a], [b]) => a - b)) {
    if (day < first || day > last) continue;
    changes.set(day, [...(changes.get(day) ?? []), change]);
  }
  return { first, last, site: plan.days.filter(({ site }) => site).map(({ from }) => time.dayOf(from)), changes, time };
}

type Change = Pick<BodyChange, "state" | "form" | "isState">;

/** What one body is in the evening of a day that it was not the evening before. */
function changesOf(stages: readonly SolidStage[], time: SiteTime): [number, Change][] {
  const days = [...new Set(stages.slice(1).map(({ from }) => time.dayOf(from) as number))];
  const at = (t: number) => stages.findLast(({ from }) => from <= t) ?? (stages[0] as SolidStage);
  return days.flatMap((day): [number, Change][] => {
    const [before, now] = [at(endOf(time, day - 1)), at(endOf(time, day))];
    const form = before.form === now.form ? null : now.form ? "up" : "off";
    const isState = before.state !== now.state;
    return isState || form !== null ? [[day, { state: now.state, form, isState }]] : [];
  });
}

/** The next day on which something changes, in either direction; past the last of them the end of the build on that side. */
export function nextChange({ changes, first, last }: StructureDays, day: number, way: 1 | -1): number {
  const days = [...changes.keys()];
  return way > 0 ? (days.find((one) => one > day) ?? last) : (days.findLast((one) => one < day) ?? first);
}

/** Today, where it falls within the build; else the last day, when everything stands. */
export const dayToShow = ({ first, last, time }: StructureDays, today: number): number => {
  const day = time.dayOf(today);
  return day >= first && day <= last ? day : last;
};
