import type { Build } from "../../core/build";
import type { SiteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import type { Axis } from "../time/axis";
import type { Ground } from "./ground";
import type { Span } from "./rows";

export interface SheetAsked {
  readonly build: Build;
  readonly plan: Plan;
  /** weekends: names and times. whole: the whole build, a weekend about 20 px. */
  readonly scale: "weekends" | "whole";
  /** Every day of the calendar at one width. Only in the weekends scale. */
  readonly unfolded?: boolean;
  /** Width of a site day, px. */
  readonly dayWidth?: number;
  /** In the whole scale: days widen until the sheet is as wide as this, px. Left out: a weekend about 20 px. */
  readonly fill?: number;
  /** Type size, px: 14 on a desk, 16 on a phone. */
  readonly text?: number;
  readonly today?: number | null;
  /** Flags in more rows than this lose their words (they keep their place and their row in the table). Left out: no limit. */
  readonly flagRows?: number;
  readonly slack?: boolean;
  readonly units?: "us" | "metric";
  /** Draw the elevation with its leader lines. */
  readonly elevation?: boolean;
  /**
   * The stretch of time in sight. Lanes take the height of what stands in them there and shrink to a line where that is nothing; for some way on both
   * sides blocks are drawn bare, without words, so that there is something to scroll to. Left out: all.
   */
  readonly sight?: { readonly from: number; readonly to: number } | null;
  /** A plan of the same build to show as ghosts: where the steps and flags stood before. */
  readonly before?: { readonly build: Build; readonly plan: Plan } | null;
}

/** How far beyond what is in sight the sheet is drawn, px. */
const beyond = 1600;

/** Whether something from x0 to x1 is in sight. */
export const inSight = ({ seen }: Frame, x0: number, x1: number): boolean => seen === null || (x1 >= seen.from && x0 <= seen.to);

/** Whether something from x0 to x1 is drawn. */
export const touches = ({ seen }: Frame, x0: number, x1: number): boolean =>
  seen === null || (x1 >= seen.from - beyond && x0 <= seen.to + beyond);

/** What every part of the sheet is made from. */
export interface Frame {
  readonly asked: SheetAsked;
  readonly build: Build;
  readonly plan: Plan;
  readonly time: SiteTime;
  readonly axis: Axis;
  readonly whole: boolean;
  /** Ten weekends on a desk: days too narrow for a name and a date in one line, rows as low as they can be. */
  readonly dense: boolean;
  readonly text: number;
  /** What is in sight, px; null: all. */
  readonly seen: Span | null;
  readonly ground: Ground;
  /** Height of a block and of a row with the channel below it, px. */
  readonly block: number;
  readonly row: number;
}
