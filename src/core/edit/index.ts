export * from "./apply";
export * from "./commands";
export * from "./done";
export * from "./history";
export * from "./pours";
export * from "./remove";
