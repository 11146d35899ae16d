export * from "./model";
