import { type Clock, type ElapsedMinute, never, notEver } from "../base";
import { lastAtMost } from "./last-at-most";
import { runsOf } from "./runs";

/** When a clock that gathers one a minute runs, read from minute `end` back; before minute 0 it runs at every hour. */
export class BackwardClock implements Clock {
  readonly id: string;
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  /** Reading at `from`. */
  private readonly before: Int32Array;

  constructor(clock: Clock, end: number) {
    this.id = clock.id;
    const runs = runsOf(clock);
    let last = -1;
    while (runs.has(last + 1) && runs.from(last + 1) < end) last++;
    const from: number[] = [];
    const to: number[] = [];
    for (let k = last; k >= 0; k--) {
      from.push(end - Math.min(end, runs.to(k)));
      to.push(end - runs.from(k));
    }
    if (to[to.length - 1] === end) to[to.length - 1] = never;
    else {
      from.push(end);
      to.push(never);
    }
    this.from = Int32Array.from(from);
    this.to = Int32Array.from(to);
    this.before = new Int32Array(from.length);
    for (let k = 1; k < from.length; k++) this.before[k] = this.before[k - 1]! + to[k - 1]! - from[k - 1]!;
  }

  reading(t: ElapsedMinute): number {
    const k = lastAtMost(this.from, t);
    return k < 0 ? 0 : this.before[k]! + Math.min(t, this.to[k]!) - this.from[k]!;
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
    const k = lastAtMost(this.from, t);
    if (k >= 0 && t < this.to[k]!) return t;
    return (this.from[k + 1] ?? never) as ElapsedMinute;
  }

  runEnd(t: ElapsedMinute): ElapsedMinute {
    const k = lastAtMost(this.from, t);
    return k < 0 || t >= this.to[k]! ? t : (this.to[k] as ElapsedMinute);
  }

  private earliest(target: number): ElapsedMinute {
    const k = lastAtMost(this.before, target - 1);
    return k < 0 ? notEver : (Math.min(never, this.from[k]! + target - this.before[k]!) as ElapsedMinute);
  }

  private latest(target: number): ElapsedMinute {
    const k = lastAtMost(this.before, target);
    return k < 0 ? notEver : (Math.min(never, this.from[k]! + target - this.before[k]!) as ElapsedMinute);
  }
}

/** What is awaited on a clock, counted from where the wait ends to where it begins; plain time before minute 0. */
export function backwardWait(clock: Clock, end: number): Clock {
  const later = (t: number, amount: number): ElapsedMinute => {
    if (amount <= 0) return t as ElapsedMinute;
    const from = t >= end ? notEver : clock.retreat((end - t) as ElapsedMinute, amount);
    return Math.min(never, from < 0 ? Math.max(t + amount, end) : end - from) as ElapsedMinute;
  };
  const earlier = (t: number, amount: number): ElapsedMinute => {
    if (amount <= 0) return t as ElapsedMinute;
    const to = t > end ? never : clock.advance((end - t) as ElapsedMinute, amount);
    return (to >= never ? Math.min(t, end) - amount : end - to) as ElapsedMinute;
  };
  return {
    id: clock.id,
    reading: (t) => t,
    advance: later,
    limit: later,
    retreat: earlier,
    unlimit: earlier,
    begin: (t) => t,
    runEnd: () => never,
  };
}
