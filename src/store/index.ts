export { openDatabase } from "./database";
export { Others } from "./others";
export { type KeptName, type ListPort, StoreError, type StoreTrouble, type Version, type VersionNote } from "./port";
export { Shelf, type ShelfOptions, type Storage, type Taken } from "./shelf";
export { browserTabs } from "./tabs";
