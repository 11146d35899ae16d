export { type PourRole, pourRoles } from "../concrete";
export { type PourCode, pourCodes } from "./codes";
export { pourDay } from "./day";
export { buildClocks, siteAir } from "./maturity";
export type * from "./result";
