declare const point: unique symbol;

/** Whole minutes since the build's epoch (local midnight at the site on the build's first day). May be negative. */
export type ElapsedMinute = number & { readonly [point]: "elapsed" };

/** Whole days since the build's epoch, counted on the site's calendar dates. */
export type Day = number & { readonly [point]: "day" };

/** Answered by a clock that never reaches what is asked of it. Fits an Int32Array. */
export const never = 0x3fff_ffff as ElapsedMinute;
/** As `never`, looking backwards. */
export const notEver = -0x3fff_ffff as ElapsedMinute;

/**
 * A never-decreasing whole amount read off at every minute: elapsed minutes, working minutes of a calendar, strength of a pour.
 * Everything that takes or awaits time is an amount on a clock; the scheduler knows nothing else of time.
 */
export interface Clock {
  readonly id: string;
  /** It counts from where it is asked, as a cure does from its pour: amounts one after the other are not one amount. */
  readonly fromBeginning?: true;
  /** The amount gathered from the epoch up to `t` (whole units; negative before the epoch where the clock ran then). */
  reading(t: ElapsedMinute): number;
  /** The earliest instant at or after `t` whose reading is at least `reading(t) + amount`; `never` if there is none. amount >= 0. */
  advance(t: ElapsedMinute, amount: number): ElapsedMinute;
  /** The latest instant at or before `t` from which `amount` is gathered by `t`; `notEver` if there is none. amount >= 0. */
  retreat(t: ElapsedMinute, amount: number): ElapsedMinute;
  /** The latest instant at or after `t` with at most `amount` more on the clock (an upper wait ends here); `never` if unlimited. */
  limit(t: ElapsedMinute, amount: number): ElapsedMinute;
  /** The earliest instant at or before `t` such that `limit(it, amount) >= t`; `notEver` if unlimited. */
  unlimit(t: ElapsedMinute, amount: number): ElapsedMinute;
  /** The first running minute at or after `t` (a start is always one of these); `never` if there is none. */
  begin(t: ElapsedMinute): ElapsedMinute;
  /** The end of the unbroken run of minutes that `t` lies in (exclusive); `t` itself when the clock is not running at `t`. */
  runEnd(t: ElapsedMinute): ElapsedMinute;
}

/** The last running minute of a clock at or before `t`; `notEver` if there is none. */
export function lastRunning(clock: Clock, t: ElapsedMinute): ElapsedMinute {
  return clock.begin(t) === t ? t : clock.retreat(t, 1);
}
