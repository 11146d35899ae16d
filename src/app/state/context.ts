import { createContext } from "svelte";
import type { Desk } from "./desk";

/** `getDesk()` in any component below the one that called `setDesk(desk)` while it was being made; throws where there is none. */
export const [getDesk, setDesk] = createContext<Desk>();
