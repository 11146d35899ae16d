export { type PourCode, pourCodes } from "./codes";
export { buildClocks, siteAir } from "./maturity";
export type * from "./result";
