import type { ElapsedMinute, Finding } from "../../base";
import type { FinishBound } from "./finish-bound";

/** How far a search is taken, in units of work: a unit is a schedule made or a clash met. Only the plan at the end of one of these is a plan. */
export const rungs = [1_000, 10_000, 30_000, 100_000] as const;

/** What a search can say at any time; all but `tried` and `bound` change at the end of a rung only. */
export interface Sought {
  readonly tried: number;
  /** The rung reached; 0 before the first. */
  readonly rung: number;
  readonly done: boolean;
  /** Finish of the plan as it is, and at the end of the rung; null where there is none. */
  readonly finishWas: ElapsedMinute | null;
  readonly finish: ElapsedMinute | null;
  readonly bound: FinishBound | null;
  /** Nothing finishes earlier: in whatever order, or in the order that was chosen; or nothing was shown. */
  readonly proved: "any-order" | "this-order" | null;
  /** There is no plan at all, and why: every order and every date was ruled out. */
  readonly ruledOut: Finding | null;
  /** Site days that the finish at the end of the rung is earlier than as it is, and from the bound to it. */
  readonly gain: number;
  readonly gap: number;
}
