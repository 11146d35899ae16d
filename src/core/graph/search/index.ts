export { minimalSet, type WorkLeft } from "./minimal-set";
export * from "./problem";
export { restrict } from "./restrict";
export { type Answer, ClauseSearch } from "./search";
export type { Refutation } from "./trace";
