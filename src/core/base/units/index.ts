export * from "./format";
export * from "./kinds";
export * from "./parse";
