import type { StepId, WaitId } from "../base";
import type { Wait } from "../build";

/** Step `to` begins when step `from` is done, for no other reason than that it is said. */
export const plainWait = (from: StepId, to: StepId, id: string): Wait => ({
  id: id as WaitId,
  name: "",
  from,
  to,
  fromEnd: "finish",
  toEnd: "start",
  least: null,
  most: null,
  visits: null,
  why: "",
  plain: true,
});
