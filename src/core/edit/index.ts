export * from "./apply";
export * from "./commands";
export * from "./history";
