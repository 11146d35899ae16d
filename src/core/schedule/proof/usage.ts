import { lastAtMost } from "../last-at-most";
import { wider } from "./trail";

/**
 * How much of a shared number is surely taken over time: steps that hold from their time on. Steps that say the same are one step, so taking out what was
 * put in gives the steps there were.
 */
export class Usage {
  times: Int32Array;
  used: Int32Array;
  size: number;

  constructor(times: Int32Array, used: Int32Array) {
    this.times = times.slice();
    this.used = used.slice();
    this.size = times.length;
  }

  /** The step that holds at `t`, not before the first. */
  at(t: number): number {
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

  /** The first time at or after `t` from which no more than `room` is taken for so long. */
  firstRoom(t: number, length: number, room: number): number {
    const { times, used, size } = this;
    let from = t;
    for (let k = this.at(t); k < size && times[k]! < from + length; k++) if (used[k]! > room && k + 1 < size) from = times[k + 1]!;
    return from;
  }

  /** Takes `number` more in [from, to). */
  add(from: number, to: number, number: number): void {
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
