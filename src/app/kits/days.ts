import { writtenId } from "../../core/base";
import type { Build, Part } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dateLabel } from "../../draw";

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
