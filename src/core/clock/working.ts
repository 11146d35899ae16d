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
  private from = new Int32Array(256);
  private to = new Int32Array(256);
  /** Reading at `from`. */
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
    return (this.before[i] as number) + Math.min(t, this.to[i] as number) - (this.from[i] as number);
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
    if (i >= 0 && t < (this.to[i] as number)) return t;
    i += 1;
    while (i >= this.count && this.lookOn());
    return i < this.count ? (this.from[i] as ElapsedMinute) : never;
  }

  runEnd(t: ElapsedMinute): ElapsedMinute {
    this.cover(t);
    const i = this.lastFrom(t);
    if (i < 0 || t >= (this.to[i] as number)) return t;
    while ((this.to[i] as number) === this.high && this.lookOn());
    return this.to[i] as ElapsedMinute;
  }

  /** Its running stretches inside [from, to): a clock is a source too. */
  readonly runs: RunSource = (from, to) => {
    this.cover(from);
    this.cover(to - 1);
    const out: number[] = [];
    for (let i = Math.max(0, this.lastFrom(from)); i < this.count && (this.from[i] as number) < to; i += 1) {
      const a = Math.max(from, this.from[i] as number);
      const b = Math.min(to, this.to[i] as number);
      if (a < b) out.push(a, b);
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
    return ((this.from[i] as number) + target - (this.before[i] as number)) as ElapsedMinute;
  }

  /** Latest instant with a reading of at most `target`. */
  private latest(target: number): ElapsedMinute {
    while (this.total() <= target && this.lookOn());
    if (this.total() <= target) return never;
    while (this.start() > target && this.lookBack());
    const i = this.lastBefore(target + 1);
    if (i < 0) return notEver;
    return ((this.from[i] as number) + target - (this.before[i] as number)) as ElapsedMinute;
  }

  private start(): number {
    return this.count > 0 ? (this.before[0] as number) : 0;
  }

  private total(): number {
    const last = this.count - 1;
    return last < 0 ? 0 : (this.before[last] as number) + (this.to[last] as number) - (this.from[last] as number);
  }

  /** Last stretch that begins at or before `t`; -1: none. */
  private lastFrom(t: number): number {
    // Most questions are about the stretch that was asked for last, or the next.
    const { last, count, from } = this;
    if (last >= 0 && last + 2 < count && (from[last] as number) <= t && t < (from[last + 2] as number)) {
      if (t >= (from[last + 1] as number)) this.last += 1;
    } else this.last = lastBelow(from, count, t + 1);
    return this.last;
  }

  /** Last stretch whose reading at its beginning is below `target`; -1: none. */
  private lastBefore(target: number): number {
    return lastBelow(this.before, this.count, target);
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
    let i = 0;
    const last = this.count - 1;
    if (last >= 0 && runs.length > 0 && runs[0] === this.to[last]) {
      this.to[last] = runs[1] as number;
      i = 2;
    }
    this.room(this.count + (runs.length - i) / 2, 0);
    const { from, to, before } = this;
    let reading = this.total();
    let k = this.count;
    for (; i < runs.length; i += 2) {
      const begin = runs[i] as number;
      const end = runs[i + 1] as number;
      before[k] = reading;
      from[k] = begin;
      to[k] = end;
      reading += end - begin;
      k += 1;
    }
    this.count = k;
  }

  private prepend(runs: Runs): void {
    let end = runs.length;
    if (end > 0 && this.count > 0 && runs[end - 1] === this.from[0]) {
      end -= 2;
      this.before[0] = (this.before[0] as number) - ((this.from[0] as number) - (runs[end] as number));
      this.from[0] = runs[end] as number;
    }
    const more = end / 2;
    let reading = this.start();
    this.room(this.count + more, more);
    for (let i = more - 1; i >= 0; i -= 1) {
      this.from[i] = runs[2 * i] as number;
      this.to[i] = runs[2 * i + 1] as number;
      reading -= (this.to[i] as number) - (this.from[i] as number);
      this.before[i] = reading;
    }
    this.count += more;
  }

  /** Room for `count` stretches, those that are there moved up by `shift`. */
  private room(count: number, shift: number): void {
    const size = Math.max(this.from.length, count > this.from.length ? count * 2 : 0);
    if (size === this.from.length && shift === 0) return;
    this.from = moved(this.from, this.count, shift, size);
    this.to = moved(this.to, this.count, shift, size);
    this.before = moved(this.before, this.count, shift, size);
  }
}

function moved(list: Int32Array, count: number, shift: number, size: number): Int32Array<ArrayBuffer> {
  const out = new Int32Array(size);
  out.set(list.subarray(0, count), shift);
  return out;
}

/** Position of the last of the first `count` values (never decreasing) that is below `value`; -1: none. */
function lastBelow(values: Int32Array, count: number, value: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle] as number) < value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
