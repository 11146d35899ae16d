import { type ElapsedMinute, never } from "../base";
import type { Gathering } from "./gathering";

const plus = (t: number, amount: number): ElapsedMinute => Math.min(never, t + amount) as ElapsedMinute;
const minus = (t: number, amount: number): ElapsedMinute => Math.max(-never, t - amount) as ElapsedMinute;

/** Plain minutes: it never rests. */
export const elapsed: Gathering = {
  id: "elapsed",
  reading: (t) => t,
  gathered: (from, to) => Math.max(0, to - from),
  advance: plus,
  retreat: minus,
  limit: plus,
  unlimit: minus,
  begin: (t) => t,
  runEnd: () => never,
  shortest: (amount) => Math.min(never, amount),
  longest: (amount) => Math.min(never, amount),
};
