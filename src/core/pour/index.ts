export { type PourRole, pourRoles } from "../concrete";
export { type BarSheet, type BarSpan, barSheets } from "./bars";
export { barFindings } from "./bars-findings";
export { type PourCode, pourCodes } from "./codes";
export { cureSheet } from "./cure";
export type { StepTimes } from "./cure-context";
export { pourDay } from "./day";
export { buildClocks, siteAir } from "./maturity";
export type * from "./result";
