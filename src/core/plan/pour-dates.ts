import type { PourDates, StepTimes } from "../pour";
import type { Plan } from "./plan";

/** Start and finish of every step, by position: what a cure is told from. Null without dates. */
export const stepTimes = (plan: Plan): StepTimes | null =>
  plan.status !== "planned" ? null : { start: plan.steps.map(({ start }) => start), finish: plan.steps.map(({ finish }) => finish) };

/** What a shopping list takes from a plan. Null without dates. */
export const pourDates = (plan: Plan): PourDates | null =>
  plan.status !== "planned"
    ? null
    : {
        pieces: plan.stands.pieces.map(({ up, gone }) => ({ up, gone })),
        starts: plan.steps.map(({ start }) => start),
        orderBy: plan.deliveries.map(({ orderBy }) => orderBy),
      };
