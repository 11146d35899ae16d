import { type Clock, type ElapsedMinute, never, notEver } from "../base";

/** `minutes[n]`: whole minutes from the beginning until `n` units are there; never decreasing, `minutes[0]` is 0; beyond its end never. */
export interface GainTable {
  readonly id: string;
  readonly minutes: Int32Array;
}

/**
 * A clock that begins where it is asked from: `advance(t, n)` reads `t` as the beginning (a pour's finish) and gives when `n` units are there.
 * What it measures starts with a decision, so it can have no reading of its own: `reading(t)` is that of a beginning at minute 0, and
 * `advance(advance(t, m), n)` is not `advance(t, m + n)`. A wait on it always counts from the finish of its pour.
 */
export function gainClock(table: GainTable): Clock {
  const { minutes } = table;
  const after = (amount: number): number => minutes[amount] ?? never;
  /** The last minute with at most `amount`. */
  const atMost = (amount: number): number => (amount + 1 < minutes.length ? after(amount + 1) - 1 : never);
  return {
    id: table.id,
    reading: (t) => lastAtMost(minutes, t),
    advance: (t, amount) => (after(amount) === never ? never : ((t + after(amount)) as ElapsedMinute)),
    retreat: (t, amount) => (after(amount) === never ? notEver : ((t - after(amount)) as ElapsedMinute)),
    limit: (t, amount) => (atMost(amount) === never ? never : ((t + atMost(amount)) as ElapsedMinute)),
    unlimit: (t, amount) => (atMost(amount) === never ? notEver : ((t - atMost(amount)) as ElapsedMinute)),
    begin: (t) => t,
    runEnd: () => never,
  };
}

/** Largest n with minutes[n] <= t; 0 before the beginning. */
function lastAtMost(minutes: Int32Array, t: number): number {
  let low = 0;
  let high = minutes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((minutes[middle] as number) <= t) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}
