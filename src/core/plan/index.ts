export { type Aimed, AimSearch } from "./aims/aim-search";
export type { Measured } from "./aims/measure";
export { askedEdit, askOverdue, type ToAsk } from "./asked";
export {
  assumptions,
  type CompareCode,
  compareCodes,
  type PlanCode,
  planCodes,
  type WindowRule,
  windowRules,
} from "./codes";
export { compare } from "./compare";
export { type DayRow, type DaySheet, daySheet, nextSiteDay, overdue, sheetDays, workDays } from "./day-sheet";
export { withEffect, withEffects } from "./effects";
export { engine } from "./engine";
export { asDone, asDoneAfter } from "./history";
export { type KeptPart, keep } from "./keep";
export type { Left } from "./left-behind";
export { type PlanMay, planMay } from "./may";
export { type Bought, OneMore, type OneMoreRow, type OneMoreTable } from "./one-more";
export type { OfferKind } from "./one-more-offers";
export * from "./plan";
export { plan } from "./plan-of";
export { pourDates, stepTimes } from "./pour-dates";
export { quickFinish } from "./quick-finish";
export type { FinishBound } from "./search/finish-bound";
export { PlanSearch } from "./search/plan-search";
export { rungs, type Sought } from "./search/sought";
export { searched } from "./searched";
export { type SolidStage, type SolidState, solidStages, statesAt } from "./solid-states";
export type { Fault } from "./verify/fault";
export { verifyPlan } from "./verify/verify-plan";
