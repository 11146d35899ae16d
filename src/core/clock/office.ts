import { type Clock, type ElapsedMinute, never, notEver } from "../base";
import type { RunSource } from "./runs";
import type { SiteTime } from "./site";
import { earliest_min, furthest_min } from "./working";

/** How far an office's days are made at first: on, and back, where little is ever asked for. */
const firstLookOn_min = 200 * 1440;
const firstLookBack_min = 30 * 1440;

/** When an office opens on one of its days, and the last minute at which a request counts as made on it. */
interface OfficeDay {
  readonly opens: number;
  readonly lastRequest: number;
}

/**
 * Counts the days of an office. It has two faces, one for each end of a wait:
 *
 * - where a wait begins, a request is *made*: up to the cut-off of an office day it counts as made on that day, after it (or on a day they are shut)
 *   on their next one; without a cut-off, or with one after it, their closing time;
 * - where it ends, a day has *come* when they open on it. `reading` is this face: how often they have opened since the epoch.
 *
 * So `advance(t, 1)` is the opening of the office day after the one on which a request at `t` counts, and "two full working days, then dig" is the
 * amount 3. `retreat(t, n)` is the last minute for a request so that its n-th day has come by `t`. As an upper wait, `limit(t, n)` is the last minute
 * before day n + 1 comes. The clock never rests: `begin(t)` is `t`.
 */
export class OfficeClock implements Clock {
  /** Days before the epoch, latest first, and from it on. Day numbers of the clock: -1, -2 ... and 0, 1 ... */
  private readonly past: OfficeDay[] = [];
  private readonly coming: OfficeDay[] = [];
  private low = 0;
  private high = 0;

  constructor(
    readonly id: string,
    private readonly runs: RunSource,
    private readonly time: SiteTime,
    private readonly cutOff_min: number | null,
  ) {}

  reading(t: ElapsedMinute): number {
    return this.last((day) => day.opens <= t, t) + 1;
  }

  advance(t: ElapsedMinute, amount: number): ElapsedMinute {
    if (amount <= 0) return t;
    const day = this.day(this.made(t) + amount);
    return day === null ? never : (day.opens as ElapsedMinute);
  }

  retreat(t: ElapsedMinute, amount: number): ElapsedMinute {
    if (amount <= 0) return t;
    const day = this.day(this.reading(t) - 1 - amount);
    return day === null ? notEver : (day.lastRequest as ElapsedMinute);
  }

  limit(t: ElapsedMinute, amount: number): ElapsedMinute {
    const day = this.day(this.made(t) + amount + 1);
    return day === null ? never : ((day.opens - 1) as ElapsedMinute);
  }

  unlimit(t: ElapsedMinute, amount: number): ElapsedMinute {
    const day = this.day(this.reading(t) - 2 - amount);
    return day === null ? notEver : (Math.min(t, day.lastRequest + 1) as ElapsedMinute);
  }

  begin(t: ElapsedMinute): ElapsedMinute {
    return t;
  }

  runEnd(): ElapsedMinute {
    return never;
  }

  /** The number of the office day on which a request at `t` counts as made. */
  private made(t: ElapsedMinute): number {
    return this.last((day) => day.lastRequest < t, t) + 1;
  }

  /** Number of the last day that is so; `so` holds for the days before every day for which it holds. */
  private last(so: (day: OfficeDay) => boolean, t: number): number {
    while (this.high <= t + 2 * 1440 && this.lookOn());
    while (this.low > t - 2 * 1440 && this.lookBack());
    const coming = firstNot(this.coming, so);
    if (coming > 0) return coming - 1;
    return -1 - firstNot(this.past, (day) => !so(day));
  }

  private day(number: number): OfficeDay | null {
    if (number >= 0) {
      while (this.coming.length <= number && this.lookOn());
      return this.coming[number] ?? null;
    }
    while (this.past.length < -number && this.lookBack());
    return this.past[-number - 1] ?? null;
  }

  private lookOn(): boolean {
    if (this.high >= furthest_min) return false;
    const from = this.high;
    this.high = this.edge(Math.max(firstLookOn_min, from + (from >> 1)));
    this.coming.push(...this.daysIn(from, this.high));
    return true;
  }

  private lookBack(): boolean {
    if (this.low <= earliest_min) return false;
    const to = this.low;
    this.low = this.edge(Math.min(-firstLookBack_min, to * 2));
    this.past.push(...this.daysIn(this.low, to).reverse());
    return true;
  }

  /** The local midnight at or before `t`, so that no office day is cut in two. */
  private edge(t: number): number {
    return this.time.startOf(this.time.dayOf(t));
  }

  private daysIn(from: number, to: number): OfficeDay[] {
    const runs = this.runs(from, to);
    const days: OfficeDay[] = [];
    let dayBefore: number | null = null;
    let day: number = this.time.dayOf(from);
    let midnight = this.time.startOf(day + 1);
    for (let i = 0, length = runs.length; i < length; i += 2) {
      const closes = runs[i + 1] as number;
      for (let opens = runs[i] as number; opens < closes; opens = midnight) {
        while (midnight <= opens) {
          day += 1;
          midnight = this.time.startOf(day + 1);
        }
        const end = Math.min(closes, midnight);
        const lastRequest = this.cutOff_min === null ? end : Math.min(end, this.time.at(day, this.cutOff_min));
        if (day === dayBefore) days[days.length - 1] = { opens: (days[days.length - 1] as OfficeDay).opens, lastRequest };
        else days.push({ opens, lastRequest });
        dayBefore = day;
      }
    }
    return days;
  }
}

/** Position of the first for which it does not hold. */
function firstNot(days: readonly OfficeDay[], so: (day: OfficeDay) => boolean): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (so(days[middle] as OfficeDay)) low = middle + 1;
    else high = middle;
  }
  return low;
}
