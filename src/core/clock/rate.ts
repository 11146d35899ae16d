import { type ElapsedMinute, never, notEver } from "../base";
import type { Gathering } from "./gathering";
import { earliest_min, furthest_min } from "./working";

/** Whole units gathered in each minute of an hour; pure, never negative. Hours count from the epoch. */
export interface Rates {
  /** For the hours from, from + 1 ... to - 1. */
  readonly of: (from: number, to: number) => Int32Array;
  /** No hour of any year has less, or more. */
  readonly least: number;
  readonly most: number;
}

const furthest_h = furthest_min / 60;
const earliest_h = earliest_min / 60;
/** Hours of a season at first, then half as many again: every one is worked out by itself. */
const firstLook_h = 200 * 24;
const hoursOfSlice = 8;

/**
 * A clock that runs at a rate of its own in every hour: prefix sums, made as far as questions reach, half as far again each time. Readings are whole, as rates are whole units
 * a minute. A reading is two look-ups, everything else one more and a binary search; once many have been asked for, over the few hours of one slice of the reading.
 */
export class RateClock implements Gathering {
  private rate = new Int32Array(0);
  /** Reading at the beginning of each hour, and one more at the end. */
  private before = new Float64Array(1);
  /** Positions of the last hours that begin below each multiple of `slice` above the first reading; null while few searches would gain by them. */
  private slices: Int32Array | null = null;
  private slice = 1;
  /** Searches since hours were last made. */
  private searches = 0;
  private low = 0;
  private high = 0;

  constructor(
    readonly id: string,
    private readonly rates: Rates,
  ) {}

  reading(t: ElapsedMinute): number {
    const at = Math.max(earliest_min, Math.min(furthest_min, t));
    while (at > this.high * 60 && this.lookOn(at));
    while (at < this.low * 60 && this.lookBack(at));
    const hour = Math.floor(at / 60);
    const i = hour - this.low;
    const past = at - hour * 60;
    return (this.before[i] as number) + (past === 0 ? 0 : past * (this.rate[i] as number));
  }

  gathered(from: ElapsedMinute, to: ElapsedMinute): number {
    return to <= from ? 0 : this.reading(to) - this.reading(from);
  }

  advance(t: ElapsedMinute, amount: number): ElapsedMinute {
    return amount <= 0 || t >= never ? t : this.earliest(this.reading(t) + amount);
  }

  retreat(t: ElapsedMinute, amount: number): ElapsedMinute {
    return amount <= 0 || t <= notEver ? t : this.latest(this.reading(t) - amount);
  }

  limit(t: ElapsedMinute, amount: number): ElapsedMinute {
    return t >= never ? never : this.latest(this.reading(t) + amount);
  }

  unlimit(t: ElapsedMinute, amount: number): ElapsedMinute {
    return t <= notEver ? notEver : this.earliest(this.reading(t) - amount);
  }

  begin(t: ElapsedMinute): ElapsedMinute {
    if (this.rateAt(t) > 0) return t;
    for (let hour = Math.floor(t / 60) + 1; hour < furthest_h; hour += 1) {
      const at = (hour * 60) as ElapsedMinute;
      if (this.rateAt(at) > 0) return at;
    }
    return never;
  }

  runEnd(t: ElapsedMinute): ElapsedMinute {
    if (this.rateAt(t) <= 0) return t;
    if (this.rates.least > 0) return never;
    let hour = Math.floor(t / 60) + 1;
    while (hour < furthest_h && this.rateAt((hour * 60) as ElapsedMinute) > 0) hour += 1;
    return hour < furthest_h ? ((hour * 60) as ElapsedMinute) : never;
  }

  shortest(amount: number): number {
    if (amount <= 0) return 0;
    return this.rates.most <= 0 ? never : Math.min(never, Math.ceil(amount / this.rates.most));
  }

  longest(amount: number): number {
    return this.rates.least <= 0 ? never : Math.min(never, Math.floor(amount / this.rates.least));
  }

  private rateAt(t: ElapsedMinute): number {
    if (t < earliest_min || t >= furthest_min) return 0;
    this.reading(t);
    const hour = Math.floor(t / 60);
    if (hour === this.high) this.lookOn(t + 60);
    return this.rate[hour - this.low] as number;
  }

  /** Earliest instant with a reading of at least `target`. */
  private earliest(target: number): ElapsedMinute {
    while (this.total() < target && this.lookOn(0));
    if (this.total() < target) return never;
    while ((this.before[0] as number) >= target && this.lookBack(0));
    const i = this.lastBelow(target);
    if (i < 0) return notEver;
    return ((this.low + i) * 60 + Math.ceil((target - (this.before[i] as number)) / (this.rate[i] as number))) as ElapsedMinute;
  }

  /** Latest instant with a reading of at most `target`. */
  private latest(target: number): ElapsedMinute {
    while (this.total() <= target && this.lookOn(0));
    if (this.total() <= target) return never;
    while ((this.before[0] as number) > target && this.lookBack(0));
    const i = this.lastBelow(target + 1);
    if (i < 0) return notEver;
    return ((this.low + i) * 60 + Math.floor((target - (this.before[i] as number)) / (this.rate[i] as number))) as ElapsedMinute;
  }

  private total(): number {
    return this.before[this.high - this.low] as number;
  }

  /** Position of the last hour that begins with a reading below `target`, which is at most the total; -1: none. */
  private lastBelow(target: number): number {
    if (target <= (this.before[0] as number)) return -1;
    let low = 0;
    let high = this.before.length;
    const slices = this.slices ?? this.sliceUp();
    if (slices !== null) {
      const k = Math.floor((target - (this.before[0] as number)) / this.slice);
      low = slices[k] as number;
      high = (slices[k + 1] as number) + 1;
    }
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((this.before[middle] as number) < target) low = middle;
      else high = middle;
    }
    return low;
  }

  /** Where each even slice of the reading begins, so that a search has a few hours left to look through. Not before as many searches as there are slices. */
  private sliceUp(): Int32Array | null {
    const { before } = this;
    const hours = before.length - 1;
    if (++this.searches * hoursOfSlice < hours) return null;
    const first = before[0] as number;
    const slice = Math.max(1, Math.ceil((((before[hours] as number) - first) / hours) * hoursOfSlice));
    const slices = new Int32Array(Math.ceil(hours / hoursOfSlice) + 3);
    let i = -1;
    for (let k = 0; k < slices.length; k += 1) {
      const end = first + k * slice;
      while (i < hours && (before[i + 1] as number) < end) i += 1;
      slices[k] = i;
    }
    this.slice = slice;
    this.slices = slices;
    return slices;
  }

  /** Hours were made. */
  private unslice(): void {
    this.slices = null;
    this.searches = 0;
  }

  private lookOn(t: number): boolean {
    // What never runs need not be looked through.
    if (this.high >= furthest_h || (this.rates.most <= 0 && this.high > t / 60)) return false;
    const to = Math.min(furthest_h, Math.max(firstLook_h, this.high + (this.high >> 1), Math.ceil(t / 60) + 24));
    const more = this.rates.of(this.high, to);
    const known = this.high - this.low;
    const before = new Float64Array(known + more.length + 1);
    before.set(this.before);
    let sum = before[known] as number;
    for (let i = 0, hours = more.length; i < hours; i += 1) {
      sum += 60 * (more[i] as number);
      before[known + i + 1] = sum;
    }
    this.rate = joined(this.rate, more);
    this.before = before;
    this.high = to;
    this.unslice();
    return true;
  }

  private lookBack(t: number): boolean {
    if (this.low <= earliest_h) return false;
    const from = Math.max(earliest_h, Math.min(-firstLook_h, this.low * 2, Math.floor(t / 60) - 24));
    const more = this.rates.of(from, this.low);
    this.rate = joined(more, this.rate);
    const before = new Float64Array(this.rate.length + 1);
    before.set(this.before, more.length);
    for (let i = more.length - 1; i >= 0; i -= 1) before[i] = (before[i + 1] as number) - 60 * (more[i] as number);
    this.before = before;
    this.low = from;
    this.unslice();
    return true;
  }
}

function joined(first: Int32Array, then: Int32Array): Int32Array<ArrayBuffer> {
  const out = new Int32Array(first.length + then.length);
  out.set(first);
  out.set(then, first.length);
  return out;
}
