import { lastAtMost } from "../last-at-most";
import { wider } from "./trail";

/** Where all is over by this instant, every instant is a step of its own. */
const mostSingle = 1024;

/**
 * How much of a shared number is surely taken over time: steps that hold from their time on. Steps that say the same are one step, so taking out what was
 * put in gives the steps there were.
 */
export class Usage {
  times: Int32Array;
  used: Int32Array;
  size: number;

  private readonly single: boolean;

  /** @param until nothing is entered or taken out of what is there from then on */
  constructor(times: Int32Array, used: Int32Array, until: number) {
    this.single = until < mostSingle;
    this.times = this.single ? Int32Array.from({ length: until + 1 }, (_, t) => t) : times.slice();
    this.used = this.single ? this.times.map((t) => stepAt(times, used, t)) : used.slice();
    this.size = this.times.length;
  }

  /** The step that holds at `t`, not before the first. */
  at(t: number): number {
    if (this.single) return Math.max(0, Math.min(t, this.size - 1));
    const { times } = this;
    let low = 0;
    let high = this.size - 1;
    while (low < high) {
      const mid = (low + high + 1) >> 1;
      if (times[mid]! <= t) low = mid;
      else high = mid - 1;
    }
    return low;
  }

  /** Takes `number` more in [from, to). */
  add(from: number, to: number, number: number): void {
    if (this.single) {
      const { used } = this;
      const end = Math.min(to, this.size);
      for (let t = from; t < end; t++) used[t]! += number;
      return;
    }
    let k = this.cut(from);
    const first = k;
    while (k < this.size && this.times[k]! < to) {
      if (k + 1 === this.size || this.times[k + 1]! > to) this.cut(to);
      this.used[k]! += number;
      k++;
    }
    this.join(k);
    this.join(first);
  }

  /** Makes a step begin at `t`; returns it. */
  private cut(t: number): number {
    const k = this.at(t);
    if (this.times[k]! >= t) return k;
    if (this.size === this.times.length) {
      this.times = wider(this.times);
      this.used = wider(this.used);
    }
    const { times, used } = this;
    for (let m = this.size++; m > k + 1; m--) {
      times[m] = times[m - 1]!;
      used[m] = used[m - 1]!;
    }
    times[k + 1] = t;
    used[k + 1] = used[k]!;
    return k + 1;
  }

  private join(k: number): void {
    const { times, used } = this;
    if (k === 0 || k >= this.size || used[k] !== used[k - 1]) return;
    this.size--;
    for (let m = k; m < this.size; m++) {
      times[m] = times[m + 1]!;
      used[m] = used[m + 1]!;
    }
  }
}

/** What holds at `t` of steps that begin at `times`. */
export function stepAt(times: Int32Array, values: Int32Array, t: number): number {
  return values[Math.max(0, lastAtMost(times, t))]!;
}
