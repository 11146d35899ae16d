export { openDatabase } from "./database";
export { Others } from "./others";
export { type KeptName, type ListPort, StoreError, type StoreTrouble, type Version, type VersionNote } from "./port";
export { Shelf } from "./shelf";
export type { ShelfOptions, Storage, Taken } from "./shelf-options";
export { browserTabs } from "./tabs";
