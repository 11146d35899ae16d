import { type Clock, type ElapsedMinute, never } from "../base";

const plus = (t: number, amount: number): ElapsedMinute => Math.min(never, t + amount) as ElapsedMinute;
const minus = (t: number, amount: number): ElapsedMinute => Math.max(-never, t - amount) as ElapsedMinute;

/** Plain minutes: it never rests. */
export const elapsed: Clock = {
  id: "elapsed",
  reading: (t) => t,
  advance: plus,
  retreat: minus,
  limit: plus,
  unlimit: minus,
  begin: (t) => t,
  runEnd: () => never,
};
