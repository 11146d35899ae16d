import type { Build, Step } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { clockLabel, dateLabel, nameOf } from "../../draw";
import { listed } from "../../words";
import { againstKept, finishApart } from "../state/kept";

const numbers = [
  "nobody of yours",
  "one person",
  "two people",
  "three people",
  "four people",
  "five people",
  "six people",
  "seven people",
  "eight people",
];

/** "Ana and Ben", else "two people", "nobody of yours". */
export function whoWords(build: Build, plan: Plan, index: number): string {
  const ids = plan.steps[index]?.people ?? [];
  const names = ids.map((id) => build.people[build.at.person.get(id) ?? -1]?.name ?? id);
  if (names.length > 0) return listed(names);
  const count = build.steps[index]!.hands.reduce((sum, { number }) => sum + number, 0);
  return numbers[count] ?? `${count} people`;
}

function needsWords(step: Step): string {
  const needs = [...step.tools, ...step.materials].slice(0, 4);
  return needs.length === 0 ? "" : ` Needs ${listed(needs)}.`;
}

function finishWords(build: Build, plan: Plan): string {
  const time = siteTime(build.site.zone, build.start);
  const finish = `Finish ${dateLabel(time, plan.finish)} ${time.local(plan.finish).date.slice(0, 4)}`;
  const kept = againstKept(build, plan);
  return kept === null ? `${finish}.` : `${finish}, ${finishApart(kept.comparison, "the kept plan")}.`;
}

/** One sentence or two over the sheet: what is next, who does it and what it needs, the finish and what it is later or earlier than. `today`: an instant. */
export function nextWords(build: Build, plan: Plan, today: number): string {
  if (plan.status === "no-order") return "No dates: this cannot be built as written. Order shows what is wrong and ways out.";
  if (plan.status === "no-dates") return "No dates: there is an order, but the dates cannot be met. Order shows which ones and ways out.";
  if (plan.status === "not-found") return "No plan was found with the people, stock and room there are.";
  if (plan.steps.length === 0) return "Nothing to do yet. Write the first step under Order; it shows here at once.";
  const time = siteTime(build.site.zone, build.start);
  let next = -1;
  plan.steps.forEach((dates, index) => {
    if (dates.finish <= today || build.steps[index]?.done) return;
    const before = plan.steps[next];
    if (!before || dates.start < before.start) next = index;
  });
  if (next === -1)
    return `${build.steps.every(({ done }) => done) ? "All is done." : "All is done by the plan."} ${finishWords(build, plan)}`;
  const step = build.steps[next]!;
  const dates = plan.steps[next]!;
  const who = whoWords(build, plan, next);
  return `Next: ${nameOf(step)}, ${dateLabel(time, dates.start)}, ${[clockLabel(time, dates.start), who].filter((part) => part !== "").join(", ")}.${needsWords(step)} ${finishWords(build, plan)}`;
}
