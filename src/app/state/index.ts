export { getDesk, setDesk } from "./context";
export type { Desk, Selection } from "./desk";
