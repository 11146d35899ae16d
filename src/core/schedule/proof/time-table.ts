import { never } from "../../base";
import type { Runs } from "../runs";
import type { Shared } from "./model";
import type { StartMap } from "./start-map";
import { type Trail, Why } from "./trail";
import { Usage } from "./usage";

/**
 * Time-table reasoning over one shared number: a task surely holds it between its latest start and its earliest finish; where too little is left for
 * another, that one ends before or starts after. Each move is explained by one minute (pointwise: Schutt, Feydt, Stuckey & Wallace 2011, "Explaining the
 * cumulative propagator", Constraints 16:250-282). The steps are kept from call to call and only what moved is entered anew.
 */
export class TimeTable {
  readonly usage: Usage;
  readonly tasks: number;
  /** What each task surely holds, as entered in `usage`. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly number: Int32Array;
  /** By task: the job it begins with, the job it ends with, and the length of that where it has but one; -1: none. */
  private readonly out: Int32Array;
  private readonly back: Int32Array;
  private readonly only: Int32Array;
  private readonly stale: Int32Array;
  private readonly isStale: Uint8Array;
  /** By task: `returns` of the trail when a bound of it rose. */
  private readonly rose: Int32Array;
  private staleCount = 0;
  private fewest = never as number;
  /** [raisedFrom, raisedTo): where more is taken than at the last call. */
  private raisedFrom = never as number;
  private raisedTo = -1;

  constructor(
    readonly index: number,
    readonly shared: Shared,
    private readonly trail: Trail,
    private readonly maps: readonly StartMap[],
    /** The latest finish of all. */
    until: number,
  ) {
    const n = shared.tasks.length;
    this.tasks = n;
    this.usage = new Usage(shared.times, shared.missing, until);
    this.from = new Int32Array(n);
    this.to = new Int32Array(n);
    this.number = Int32Array.from(shared.tasks, (t) => t.number);
    this.out = Int32Array.from(shared.tasks, (t) => t.out);
    this.back = Int32Array.from(shared.tasks, (t) => t.back);
    this.only = Int32Array.from(shared.tasks, (t) => (t.back < 0 ? -1 : maps[t.back]!.only));
    for (const t of shared.tasks) this.fewest = Math.min(this.fewest, t.number);
    this.stale = new Int32Array(n);
    this.isStale = new Uint8Array(n);
    this.rose = new Int32Array(n).fill(-1);
    for (let k = 0; k < n; k++) this.touch(k, true);
  }

  /** A bound of the task moved, either way; `rose`: not only back to where it was. */
  touch(task: number, rose: boolean): void {
    if (rose) this.rose[task] = this.trail.returns;
    if (this.isStale[task] === 1) return;
    this.isStale[task] = 1;
    this.stale[this.staleCount++] = task;
  }

  /** Earliest instant from which the task may hold, and the one until which it surely does once it holds. */
  earliestOut(task: number): number {
    const x = this.out[task]!;
    return x < 0 ? 0 : this.trail.bound[2 * x]!;
  }

  latestOut(task: number): number {
    const x = this.out[task]!;
    return x < 0 ? 0 : -this.trail.bound[2 * x + 1]!;
  }

  earliestBack(task: number): number {
    const x = this.back[task]!;
    return x < 0 ? never : this.ended(task, x, this.trail.bound[2 * x]!);
  }

  latestBack(task: number): number {
    const x = this.back[task]!;
    return x < 0 ? never : this.ended(task, x, -this.trail.bound[2 * x + 1]!);
  }

  private ended(task: number, x: number, start: number): number {
    const length = this.only[task]!;
    return length >= 0 ? start + length : this.maps[x]!.finish(start);
  }

  /** Everything that follows; false on a clash. */
  run(): boolean {
    const moved = this.staleCount;
    this.refresh(moved);
    let ok = this.raisedTo <= this.raisedFrom || this.fits();
    if (ok) {
      let most = 0;
      const { usage } = this;
      const { returns } = this.trail;
      if (this.raisedTo > this.raisedFrom)
        for (let k = usage.at(this.raisedFrom); k < usage.size && usage.times[k]! < this.raisedTo; k++)
          most = Math.max(most, usage.used[k]!);
      if (most + this.fewest > this.shared.level) {
        for (let task = 0; task < this.tasks && ok; task++) {
          const rose = this.rose[task] === returns;
          if (rose || this.number[task]! + most > this.shared.level) ok = this.filter(task, !rose);
        }
      } else for (let k = 0; k < moved && ok; k++) if (this.rose[this.stale[k]!] === returns) ok = this.filter(this.stale[k]!, false);
    }
    if (!ok) return false;
    // Looked at.
    for (let k = 0; k < moved; k++) this.rose[this.stale[k]!] = -1;
    for (let k = 0; k < moved; k++) this.isStale[this.stale[k]!] = 0;
    this.staleCount = 0;
    this.raisedFrom = never;
    this.raisedTo = -1;
    return true;
  }

  /** Enters what tasks surely hold now: first what has become less, so that nothing is counted twice. */
  private refresh(moved: number): void {
    const { from, to } = this;
    for (let k = 0; k < moved; k++) {
      const task = this.stale[k]!;
      if (from[task]! >= to[task]!) continue;
      const a = this.latestOut(task);
      const b = this.earliestBack(task);
      if (a <= from[task]! && b >= to[task]!) continue;
      this.enter(task, from[task]!, to[task]!, -1);
      to[task] = from[task]!;
    }
    for (let k = 0; k < moved; k++) {
      const task = this.stale[k]!;
      const a = this.latestOut(task);
      const b = this.earliestBack(task);
      if (a >= b) continue;
      if (from[task]! >= to[task]!) this.enter(task, a, b, 1);
      else {
        if (a < from[task]!) this.enter(task, a, from[task]!, 1);
        if (b > to[task]!) this.enter(task, to[task]!, b, 1);
      }
      from[task] = a;
      to[task] = b;
    }
  }

  private enter(task: number, from: number, to: number, sign: 1 | -1): void {
    if (sign === 1) {
      this.raisedFrom = Math.min(this.raisedFrom, from);
      this.raisedTo = Math.max(this.raisedTo, to);
    }
    const number = sign * this.number[task]!;
    const { runs } = this.shared.tasks[task]!;
    if (runs === null) {
      this.usage.add(from, to, number);
      return;
    }
    for (let r = runs.at(from); runs.has(r) && runs.from(r) < to; r++) {
      this.usage.add(Math.max(from, runs.from(r)), Math.min(to, runs.to(r)), number);
    }
  }

  private fits(): boolean {
    const { usage, shared } = this;
    for (let k = usage.at(this.raisedFrom); k < usage.size && usage.times[k]! < this.raisedTo; k++) {
      if (usage.used[k]! <= shared.level) continue;
      const end = k + 1 < usage.size ? usage.times[k + 1]! : usage.times[k]! + 1;
      return this.trail.fail(Why.table, this.code(taskRoom - 1), (usage.times[k]! + Math.min(end, this.raisedTo)) >> 1);
    }
    return true;
  }

  /** Moves a task out of where too little is left for it. */
  private filter(task: number, onlyRaised: boolean): boolean {
    const low = this.earliestOut(task);
    if (onlyRaised && this.raisedTo <= low) return true;
    const lowEnd = this.earliestBack(task);
    const high = this.latestOut(task);
    const highEnd = this.latestBack(task);
    if (low === high && lowEnd === highEnd) return true;
    if (!onlyRaised) return this.later(task) && this.sooner(task);
    if (this.raisedFrom < lowEnd && !this.later(task)) return false;
    return this.raisedFrom >= highEnd || this.raisedTo <= high || this.sooner(task);
  }

  /** Where the task would be at work if it began as early as it may, the last minute without room for it says when it may begin; and so on from there. */
  private later(task: number): boolean {
    const { trail } = this;
    const { out, runs } = this.shared.tasks[task]!;
    if (out < 0) return true;
    const room = this.shared.level - this.number[task]!;
    // What the task itself surely holds is no reason to move it: too much there is a clash.
    const own = this.from[task]! < this.to[task]! ? this.from[task]! : never;
    for (;;) {
      const t = this.lastFull(trail.low(out), Math.min(this.earliestBack(task), own), room, runs);
      if (t < 0) return true;
      if (!trail.raise(2 * out, t + 1, Why.table, this.code(task), t)) return false;
    }
  }

  private sooner(task: number): boolean {
    const { trail } = this;
    const { back, runs } = this.shared.tasks[task]!;
    if (back < 0) return true;
    const room = this.shared.level - this.number[task]!;
    const own = this.from[task]! < this.to[task]! ? this.to[task]! : 0;
    for (;;) {
      const t = this.firstFull(Math.max(this.latestOut(task), own), this.latestBack(task), room, runs);
      if (t < 0) return true;
      if (!trail.raise(2 * back + 1, -this.maps[back]!.lastToFinish(t), Why.table, this.code(task), t)) return false;
    }
  }

  /** The last minute of [from, to), of those that count, at which more than `room` is taken; -1: none. */
  private lastFull(from: number, to: number, room: number, runs: Runs | null): number {
    const { times, used } = this.usage;
    let end = to;
    for (let k = this.usage.at(to - 1); end > from; k--) {
      const begin = Math.max(from, times[k]!);
      if (used[k]! > room) {
        const t = runs === null ? end - 1 : lastRunning(runs, begin, end);
        if (t >= 0) return t;
      }
      end = begin;
    }
    return -1;
  }

  private firstFull(from: number, to: number, room: number, runs: Runs | null): number {
    const { times, used, size } = this.usage;
    let begin = from;
    for (let k = this.usage.at(from); begin < to; k++) {
      const end = k + 1 < size ? Math.min(to, times[k + 1]!) : to;
      if (used[k]! > room) {
        const t = runs === null ? begin : firstRunning(runs, begin, end);
        if (t >= 0) return t;
      }
      begin = end;
    }
    return -1;
  }

  private code(task: number): number {
    return this.index * taskRoom + task;
  }
}

/** Tasks a shared number may have, as its own number and the task's are told in one. */
export const taskRoom = 1 << 16;

/** The last minute of [from, to) at which a clock runs; -1: none. */
function lastRunning(runs: Runs, from: number, to: number): number {
  const r = runs.at(to - 1);
  if (runs.has(r) && runs.from(r) < to) return to - 1;
  return r > 0 && runs.to(r - 1) > from ? runs.to(r - 1) - 1 : -1;
}

function firstRunning(runs: Runs, from: number, to: number): number {
  const r = runs.at(from);
  if (!runs.has(r)) return -1;
  const first = Math.max(from, runs.from(r));
  return first < to ? first : -1;
}
