import { type ElapsedMinute, never, notEver } from "../base";
import type { Gathering } from "./gathering";
import type { RateClock } from "./rate";
import { earliest_min } from "./working";

/**
 * What is gathered on `kept` for the first `for_min` minutes after the beginning, and on `after` from then on: blankets or heat that are taken away.
 * `kept` has to be, hour by hour, the higher of `after` and one rate that never changes. Then what begins later never has more, and the directions agree.
 */
export function heldClock(id: string, kept: RateClock, after: RateClock, for_min: number): Gathering {
  const gathered = (from: number, to: number): number => {
    if (to <= from) return 0;
    const change = Math.min(to, from + for_min) as ElapsedMinute;
    return kept.gathered(from as ElapsedMinute, change) + after.gathered(change, to as ElapsedMinute);
  };
  /** When the keeping ends, and what is there by then. */
  const changeOf = (t: ElapsedMinute) => {
    const change = (t + for_min) as ElapsedMinute;
    return { change, first: kept.gathered(t, change) };
  };
  return {
    id,
    fromBeginning: true,
    gathered,
    reading: (t) => gathered(0, t),
    advance: (t, amount) => {
      if (amount <= 0 || t >= never) return t;
      const { change, first } = changeOf(t);
      return first >= amount ? kept.advance(t, amount) : after.advance(change, amount - first);
    },
    limit: (t, amount) => {
      if (t >= never) return never;
      const { change, first } = changeOf(t);
      return first > amount ? kept.limit(t, amount) : after.limit(change, amount - first);
    },
    // The beginning lies between what the two clocks alone would say: `kept` has at least as much as is there, `after` at most.
    retreat: (t, amount) => {
      if (amount <= 0 || t <= notEver) return t;
      const high = kept.retreat(t, amount);
      if (high <= notEver) return notEver;
      const tooLate = firstOf(after.retreat(t, amount), high + 1, (at) => gathered(at, t) < amount);
      return tooLate <= earliest_min ? notEver : ((tooLate - 1) as ElapsedMinute);
    },
    unlimit: (t, amount) => {
      const high = kept.unlimit(t, amount);
      if (high <= notEver) return notEver;
      const first = firstOf(after.unlimit(t, amount), high, (at) => gathered(at, t) <= amount);
      return first <= earliest_min ? notEver : (first as ElapsedMinute);
    },
    begin: (t) => t,
    runEnd: () => never,
    shortest: (amount) => kept.shortest(amount),
    longest: (amount) => after.longest(amount),
  };
}

/** The first minute from `low` to `high` of which `so` holds; it holds of `high`, and of every minute after one of which it holds. */
function firstOf(low: number, high: number, so: (at: number) => boolean): number {
  let from = Math.max(earliest_min, low);
  let to = high;
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (so(middle)) to = middle;
    else from = middle + 1;
  }
  return from;
}
