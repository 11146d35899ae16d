export { type PourCode, pourCodes } from "./codes";
export type * from "./result";
