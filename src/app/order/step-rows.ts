import { formatWork } from "../../core/base";
import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { clockLabel, dateLabel } from "../../draw";
import { begunBefore } from "../../words";
import { shownName } from "../state/names";

export interface StepRow {
  readonly id: string;
  readonly name: string;
  readonly day: string;
  readonly time: string;
  readonly place: string;
  readonly work: string;
  readonly hands: string;
  readonly done: boolean;
  /** On the chain that sets the finish. */
  readonly onChain: boolean;
}

/** The steps as a list: by start where there are dates, else in an order that can be built, else as written. */
export function stepRows(build: Build, plan: Plan | null): readonly StepRow[] {
  const time = siteTime(build.site.zone, build.start);
  const dated = plan?.status === "planned";
  const order = build.steps.map((_, index) => index);
  if (dated) order.sort((a, b) => (plan.steps[a]?.start ?? 0) - (plan.steps[b]?.start ?? 0) || a - b);
  else if (plan && plan.access.order.length === order.length) order.splice(0, order.length, ...plan.access.order);
  return order.flatMap((index): StepRow[] => {
    const step = build.steps[index];
    if (!step) return [];
    const dates = dated ? plan.steps[index] : undefined;
    const before = dates ? begunBefore(step, build) : null;
    const hands = step.hands.reduce((sum, need) => sum + need.number, 0);
    return [
      {
        id: step.id,
        name: shownName(step),
        day: before?.day ?? (dates ? dateLabel(time, dates.start) : ""),
        time: before?.time ?? (dates ? clockLabel(time, dates.start) : ""),
        place: step.place === null ? "" : shownName(build.places[build.at.place.get(step.place) ?? -1]),
        work: `${formatWork(step.work.likely_min)}${step.begun === null ? "" : " left"}`,
        hands: hands === 0 ? "" : hands === 1 ? "one hand" : `${hands} hands`,
        done: step.done !== null,
        onChain: dates?.onChain ?? false,
      },
    ];
  });
}
