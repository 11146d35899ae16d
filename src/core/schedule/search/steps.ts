import { never } from "../../base";
import type { Runs } from "../runs";

/** How much of a number is taken over time, in steps that hold from their time on; begun anew for every pass. */
export class Steps {
  private times: Int32Array;
  private used: Int32Array;
  private size = 0;

  constructor(
    private readonly baseTimes: Int32Array,
    private readonly baseUsed: Int32Array,
  ) {
    this.times = new Int32Array(2 * baseTimes.length + 64);
    this.used = new Int32Array(this.times.length);
  }

  reset(): void {
    this.times.set(this.baseTimes);
    this.used.set(this.baseUsed);
    this.size = this.baseTimes.length;
  }

  /** Until when more than `room` is taken in [from, to) while `runs` go on (null: at any time); -1: never is. */
  blocked(from: number, to: number, room: number, runs: Runs | null): number {
    const { times, used } = this;
    for (let k = this.before(to); k >= 0; k--) {
      const until = k + 1 < this.size ? times[k + 1]! : never;
      if (until <= from) return -1;
      if (used[k]! > room && (runs === null || works(runs, Math.max(from, times[k]!), Math.min(to, until)))) return until;
    }
    return -1;
  }

  /** Takes `number` more in [from, to) (`never`: for good); a negative number gives back. */
  add(from: number, to: number, number: number): void {
    if (to <= from) return;
    const first = this.cut(from);
    const last = to >= never ? this.size : this.cut(to);
    for (let k = first; k < last; k++) this.used[k]! += number;
  }

  /** The last step that begins before `t`; -1: none. */
  private before(t: number): number {
    const { times } = this;
    let low = 0;
    let high = this.size;
    while (low < high) {
      const mid = (low + high) >> 1;
      if (times[mid]! < t) low = mid + 1;
      else high = mid;
    }
    return low - 1;
  }

  private cut(t: number): number {
    const k = this.before(t) + 1;
    if (k < this.size && this.times[k] === t) return k;
    if (this.size === this.times.length) {
      this.times = wider(this.times);
      this.used = wider(this.used);
    }
    const { times, used } = this;
    for (let m = this.size++; m > k; m--) {
      times[m] = times[m - 1]!;
      used[m] = used[m - 1]!;
    }
    times[k] = t;
    used[k] = k > 0 ? used[k - 1]! : used[k + 1]!;
    return k;
  }
}

function works(runs: Runs, from: number, to: number): boolean {
  const run = runs.at(from);
  return runs.has(run) && runs.from(run) < to;
}

function wider(list: Int32Array): Int32Array {
  const out = new Int32Array(2 * list.length);
  out.set(list);
  return out;
}
