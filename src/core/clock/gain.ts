import { never, notEver } from "../base";
import type { Gathering } from "./gathering";

/** `needed[n]`: whole units of the clock under it until `n` are there; never decreasing, `needed[0]` is 0; beyond its end never. */
export interface GainTable {
  readonly id: string;
  readonly needed: Float64Array;
}

/**
 * A clock for what comes with an amount on another clock: strength with age. It begins where it is asked from: `advance(t, n)` reads `t` as the beginning
 * (a pour's finish) and gives when `n` units are there. A wait on it always counts from the finish of its pour.
 */
export function gainClock(table: GainTable, base: Gathering): Gathering {
  const { needed } = table;
  const after = (amount: number): number => needed[Math.max(0, amount)] ?? never;
  const known = (amount: number): boolean => Math.max(0, amount) < needed.length;
  const lastOf = (units: number): number => Math.max(0, lastAtMost(needed, units));
  return {
    id: table.id,
    fromBeginning: true,
    gathered: (from, to) => lastOf(base.gathered(from, to)),
    reading: (t) => lastOf(base.reading(t)),
    advance: (t, amount) => (known(amount) ? base.advance(t, after(amount)) : never),
    retreat: (t, amount) => (known(amount) ? base.retreat(t, after(amount)) : notEver),
    // One more is not there yet: at most one unit less than that takes.
    limit: (t, amount) => (known(amount + 1) ? base.limit(t, after(amount + 1) - 1) : never),
    unlimit: (t, amount) => (known(amount + 1) ? base.unlimit(t, after(amount + 1) - 1) : notEver),
    begin: (t) => t,
    runEnd: () => never,
    shortest: (amount) => (known(amount) ? base.shortest(after(amount)) : never),
    longest: (amount) => (known(amount + 1) ? base.longest(after(amount + 1) - 1) : never),
  };
}

/** Largest n with needed[n] <= units; -1 before the first. */
function lastAtMost(needed: Float64Array, units: number): number {
  let low = 0;
  let high = needed.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((needed[middle] as number) <= units) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
