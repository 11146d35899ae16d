export * from "./apply";
export * from "./commands";
export * from "./history";
export * from "./pours";
export * from "./remove";
