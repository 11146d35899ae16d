import { createContext } from "svelte";

/** How much room the view has: beside the sheet that explains, a wide screen has less of it. */
export const [getRoom, setRoom] = createContext<{ readonly narrow: boolean }>();
