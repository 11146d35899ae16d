export type * from "./result";
