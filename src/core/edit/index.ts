export * from "./apply";
export * from "./calendars";
export * from "./commands";
export * from "./done";
export * from "./history";
export * from "./pours";
export * from "./remove";
