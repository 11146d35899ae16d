export * from "./apply";
export * from "./calendars";
export * from "./commands";
export * from "./history";
export * from "./pours";
export * from "./remove";
