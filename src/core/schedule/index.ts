export * from "./problem";
