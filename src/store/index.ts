export { openDatabase } from "./database";
export { Lease, type LeasePort, type LeaseState } from "./lease";
export { type KeptName, type Port, StoreError, type StoreTrouble } from "./port";
export { replay } from "./restore";
export { Saver, type SaveState } from "./saver";
export { Shelf, type Taken } from "./shelf";
export { browserTabs } from "./tabs";
