import { type Clock, type ElapsedMinute, never, notEver } from "../base";
import type { RunSource, Runs } from "./runs";

/** Furthest a clock looks: 40 years on, 10 back. What lies beyond does not exist for it. */
export const furthest_min = 40 * 366 * 1440;
export const earliest_min = -10 * 366 * 1440;
const firstLook_min = 400 * 1440;
/** Back, where little is ever asked for. */
const firstLookBack_min = 30 * 1440;

/**
 * A clock that counts the running minutes of a source, from prefix sums in typed arrays: every answer is a binary search. The stretches are
 * made as far as questions reach, half as far again each time, so that a plan of one season does not pay for forty years.
 */
export class WorkingClock implements Clock {
  /** From, to, from, to ... */
  private bounds = new Int32Array(512);
  /** Reading at the beginning of each stretch. */
  private before = new Int32Array(256);
  private count = 0;
  /** The stretch that was asked for last. */
  private last = 0;
  private low = 0;
  private high = 0;

  constructor(
    readonly id: string,
    private readonly source: RunSource,
  ) {}

  reading(t: ElapsedMinute): number {
    this.cover(t);
    const i = this.lastFrom(t);
    if (i < 0) return this.count > 0 ? (this.before[0] as number) : 0;
    const end = this.bounds[2 * i + 1] as number;
    return (this.before[i] as number) + (t < end ? t : end) - (this.bounds[2 * i] as number);
  }

  advance(t: ElapsedMinute, amount: number): ElapsedMinute {
    return amount <= 0 ? t : this.earliest(this.reading(t) + amount);
  }

  retreat(t: ElapsedMinute, amount: number): ElapsedMinute {
    return amount <= 0 ? t : this.latest(this.reading(t) - amount);
  }

  limit(t: ElapsedMinute, amount: number): ElapsedMinute {
    return this.latest(this.reading(t) + amount);
  }

  unlimit(t: ElapsedMinute, amount: number): ElapsedMinute {
    return this.earliest(this.reading(t) - amount);
  }

  begin(t: ElapsedMinute): ElapsedMinute {
    this.cover(t);
    let i = this.lastFrom(t);
    if (i >= 0 && t < (this.bounds[2 * i + 1] as number)) return t;
    i += 1;
    while (i >= this.count && this.lookOn());
    return i < this.count ? (this.bounds[2 * i] as ElapsedMinute) : never;
  }

  runEnd(t: ElapsedMinute): ElapsedMinute {
    this.cover(t);
    const i = this.lastFrom(t);
    if (i < 0 || t >= (this.bounds[2 * i + 1] as number)) return t;
    while (this.bounds[2 * i + 1] === this.high && this.lookOn());
    return this.bounds[2 * i + 1] as ElapsedMinute;
  }

  /** Its running stretches inside [from, to): a clock is a source too. */
  readonly runs: RunSource = (from, to) => {
    if (from >= to) return [];
    this.cover(from);
    this.cover(to - 1);
    const first = this.lastFrom(from);
    const begins = first < 0 || this.to(first) <= from ? first + 1 : first;
    const out = this.bounds.slice(2 * begins, 2 * (lastBelow(this.bounds, 2, this.count, to) + 1));
    if (out.length > 0) {
      out[0] = Math.max(from, out[0] as number);
      out[out.length - 1] = Math.min(to, out[out.length - 1] as number);
    }
    return out;
  };

  /** Earliest instant with a reading of at least `target`. */
  private earliest(target: number): ElapsedMinute {
    while (this.total() < target && this.lookOn());
    if (this.total() < target) return never;
    while (this.start() >= target && this.lookBack());
    const i = this.lastBefore(target);
    if (i < 0) return notEver;
    return (this.from(i) + target - (this.before[i] as number)) as ElapsedMinute;
  }

  /** Latest instant with a reading of at most `target`. */
  private latest(target: number): ElapsedMinute {
    while (this.total() <= target && this.lookOn());
    if (this.total() <= target) return never;
    while (this.start() > target && this.lookBack());
    const i = this.lastBefore(target + 1);
    if (i < 0) return notEver;
    return (this.from(i) + target - (this.before[i] as number)) as ElapsedMinute;
  }

  private from(i: number): ElapsedMinute {
    return this.bounds[2 * i] as ElapsedMinute;
  }

  private to(i: number): ElapsedMinute {
    return this.bounds[2 * i + 1] as ElapsedMinute;
  }

  private start(): number {
    return this.count > 0 ? (this.before[0] as number) : 0;
  }

  private total(): number {
    const last = this.count - 1;
    return last < 0 ? 0 : (this.before[last] as number) + this.to(last) - this.from(last);
  }

  /** Last stretch that begins at or before `t`; -1: none. */
  private lastFrom(t: number): number {
    // Most questions are about the stretch that was asked for last, or the next.
    const { last, count, bounds } = this;
    if (last >= 0 && last + 2 < count && (bounds[2 * last] as number) <= t && t < (bounds[2 * last + 4] as number)) {
      if (t >= (bounds[2 * last + 2] as number)) this.last += 1;
    } else this.last = lastBelow(bounds, 2, count, t + 1);
    return this.last;
  }

  /** Last stretch whose reading at its beginning is below `target`; -1: none. */
  private lastBefore(target: number): number {
    return lastBelow(this.before, 1, this.count, target);
  }

  private cover(t: number): void {
    while (t >= this.high && this.lookOn(t));
    while (t < this.low && this.lookBack(t));
  }

  private lookOn(t = 0): boolean {
    if (this.high >= furthest_min) return false;
    const to = Math.min(furthest_min, Math.max(firstLook_min, this.high + (this.high >> 1), Math.min(t, furthest_min) + 1440));
    this.append(this.source(this.high, to));
    this.high = to;
    return true;
  }

  private lookBack(t = 0): boolean {
    if (this.low <= earliest_min) return false;
    const from = Math.max(earliest_min, Math.min(-firstLookBack_min, this.low * 2, Math.max(t, earliest_min) - 1440));
    this.prepend(this.source(from, this.low));
    this.low = from;
    return true;
  }

  private append(runs: Runs): void {
    const last = this.count - 1;
    const joins = last >= 0 && runs.length > 0 && runs[0] === this.to(last);
    if (joins) this.bounds[2 * last + 1] = runs[1] as number;
    const more = joins ? runs.slice(2) : runs;
    let reading = this.total();
    let k = this.count;
    this.count += more.length / 2;
    this.room(this.count, 0, k);
    const { bounds, before } = this;
    bounds.set(more, 2 * k);
    for (; k < this.count; k += 1) {
      before[k] = reading;
      reading += (bounds[2 * k + 1] as number) - (bounds[2 * k] as number);
    }
  }

  private prepend(runs: Runs): void {
    const joins = runs.length > 0 && this.count > 0 && runs[runs.length - 1] === this.bounds[0];
    if (joins) {
      const from = runs[runs.length - 2] as number;
      this.before[0] = (this.before[0] as number) - ((this.bounds[0] as number) - from);
      this.bounds[0] = from;
    }
    const more = joins ? runs.slice(0, -2) : runs;
    let reading = this.start();
    this.count += more.length / 2;
    this.room(this.count, more.length / 2, this.count - more.length / 2);
    const { bounds, before } = this;
    bounds.set(more);
    for (let k = more.length / 2 - 1; k >= 0; k -= 1) {
      reading -= (bounds[2 * k + 1] as number) - (bounds[2 * k] as number);
      before[k] = reading;
    }
  }

  /** Room for `count` stretches, the `known` that are there moved up by `shift`. */
  private room(count: number, shift: number, known: number): void {
    const size = Math.max(this.before.length, count > this.before.length ? count * 2 : 0);
    if (size === this.before.length && shift === 0) return;
    this.bounds = moved(this.bounds, 2 * known, 2 * shift, 2 * size);
    this.before = moved(this.before, known, shift, size);
  }
}

function moved(list: Int32Array, count: number, shift: number, size: number): Int32Array<ArrayBuffer> {
  const out = new Int32Array(size);
  out.set(list.subarray(0, count), shift);
  return out;
}

/** The last of the first `count` of every `step`-th value (never decreasing) that is below `value`; -1: none. */
function lastBelow(values: Int32Array, step: number, count: number, value: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[step * middle] as number) < value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
