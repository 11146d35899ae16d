export * from "./result";
