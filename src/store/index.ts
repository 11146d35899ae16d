export { openDatabase } from "./database";
export { type KeptName, type Port, StoreError, type StoreTrouble } from "./port";
export { Shelf, type ShelfOptions, type Taken } from "./shelf";
export { browserTabs } from "./tabs";
