import { writtenId } from "../../core/base";
import type { Build, Part } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dateLabel } from "../../draw";

/** Months in which concrete is placed, 1 to 12 in their order; undefined where there are no dates. */
export function pouredIn(build: Build, plan: Plan): readonly number[] | undefined {
  if (plan.status !== "planned") return undefined;
  const time = siteTime(build.site.zone, build.start);
  const starts = build.pours.flatMap(({ step }) => plan.steps[build.at.step.get(step) ?? -1]?.start ?? []);
  return [...new Set(starts.sort((a, b) => a - b).map((start) => Number(time.local(start).date.slice(5, 7))))];
}

/** "From Sat 6 Mar to Sun 28 Mar; the build finishes Sat 3 Apr 2027." Empty where there are no dates, or nothing of the part is left. */
export function datesOf(build: Build, plan: Plan, part: Part): string {
  const ids = new Set(part.made.steps ?? []);
  const dates = build.steps.flatMap((step, at) => (ids.has(writtenId(step.id)) ? (plan.steps[at] ?? []) : []));
  if (plan.status !== "planned" || dates.length === 0) return "";
  const time = siteTime(build.site.zone, build.start);
  const [first, last] = [Math.min(...dates.map(({ start }) => start)), Math.max(...dates.map(({ finish }) => finish))].map((at) =>
    dateLabel(time, at),
  );
  const finish = `${dateLabel(time, plan.finish)} ${time.local(plan.finish).date.slice(0, 4)}`;
  return `${first === last ? `On ${first}` : `From ${first} to ${last}`}; the build finishes ${finish}.`;
}
