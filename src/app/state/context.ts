import { createContext } from "svelte";
import type { Desk } from "./desk";
import type { Shop } from "./shop.svelte";

/** `getDesk()` in any component below the one that called `setDesk(desk)` while it was being made; throws where there is none. */
export const [getDesk, setDesk] = createContext<Desk>();

/** The same for what stands round the desk: files, kept builds, settings, notices. */
export const [getShop, setShop] = createContext<Shop>();
