import type { Clock, ElapsedMinute } from "../base";

/**
 * A clock for what concrete gathers: age, strength, warm minutes. `advance`, `retreat`, `limit` and `unlimit` count from (or up to) the instant given, which
 * may be the beginning itself: where `fromBeginning` is set, amounts do not add up (`advance(advance(t, m), n)` is not `advance(t, m + n)`), and
 * `reading(t)` is that of a beginning at minute 0.
 */
export interface Gathering extends Clock {
  /** What is there at `to` when it began at `from`; 0 before. */
  gathered(from: ElapsedMinute, to: ElapsedMinute): number;
  /** No beginning gathers `amount` in fewer minutes; `never` where none does. */
  shortest(amount: number): number;
  /** No beginning stays at `amount` or less for more minutes than these; `never` where that has no end. */
  longest(amount: number): number;
}
