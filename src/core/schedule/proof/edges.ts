import type { Model } from "./model";
import type { StartMap } from "./start-map";
import type { Stretches } from "./stretches";
import { type TimeTable, taskRoom } from "./time-table";
import { type Trail, Why } from "./trail";

/** Every pair of an earliest start and a latest end is looked at: beyond so many tasks that costs more than it tells. */
const mostTasks = 150;

/** At the least, one look of so many is taken. */
const rarest = 8;

/** Numbers that a job takes, in the mean, where the waits leave wide windows: of more, most of what holds a job up is not in the table that is looked at. */
const mostNumbers = 1.5;

/**
 * By table; null where it tells too little for what it costs: where there are neither most-waits, which make windows narrow, nor jobs that take one number each,
 * nor tasks of which no two may overlap (measured on published problems: with one number each a proof takes between a quarter and two thirds of the clashes, with four as many
 * and twice the time); where there are too many tasks, or where lengths depend on the day.
 */
export function edgesOf(model: Model, tables: readonly TimeTable[], trail: Trail, stretches: Stretches): (Edges | null)[] {
  const narrow = model.lags.some((l) => (l.from & 1) === 0 && l.lag < 0);
  const numbers = tables.reduce((sum, { shared }) => sum + (shared.implied ? 0 : shared.tasks.length), 0);
  const wanted = narrow || numbers <= mostNumbers * model.jobs;
  return tables.map((table) => {
    const { tasks } = table.shared;
    const steady = tasks.every((t) => t.out >= 0 && t.out === t.back && t.runs === null && model.maps[t.out]!.only >= 0);
    return (wanted || table.shared.implied) && steady && tasks.length <= mostTasks ? new Edges(table, trail, model.maps, stretches) : null;
  });
}

/**
 * Edge finding beside a time-table: what tasks surely hold in a stretch of time, and all of those that lie in it as a whole, may not be more than there is;
 * a task that would begin in the stretch and takes too much of what is left begins later, and the same from the other end (Vilim 2011, "Timetable edge finding
 * filtering algorithm for discrete cumulative resources", LNCS 6697:230-245; explained as in Schutt, Feydt & Stuckey 2013, LNCS 7874:234-250).
 */
export class Edges {
  private readonly job: Int32Array;
  private readonly length: Int32Array;
  private readonly number: Int32Array;
  /** By task: earliest start, latest start, and energy beyond what it surely holds. */
  private readonly low: Int32Array;
  private readonly high: Int32Array;
  private readonly free: Float64Array;
  private readonly byLow: Int32Array;
  private readonly byEnd: Int32Array;
  private readonly lows: Int32Array;
  private readonly ends: Int32Array;
  /** The same by place among `lows` and among `ends`. */
  private readonly byLows: Row;
  private readonly byEnds: Row;
  private count = 0;
  /** Looks in a row of which nothing came, and how many are to be left out now. */
  private idle = 0;
  private rest = 0;
  /** The most that is free of one task. */
  private largest = 0;

  /** Every task of the table has to have one length, at any hour. */
  constructor(
    private readonly table: TimeTable,
    private readonly trail: Trail,
    maps: readonly StartMap[],
    private readonly stretches: Stretches,
  ) {
    const { tasks } = table.shared;
    const n = tasks.length;
    this.job = Int32Array.from(tasks, (t) => t.out);
    this.length = Int32Array.from(tasks, (t) => maps[t.out]!.only);
    this.number = table.number;
    this.low = new Int32Array(n);
    this.high = new Int32Array(n);
    this.free = new Float64Array(n);
    this.byLows = rowOf(n);
    this.byEnds = rowOf(n);
    this.byLow = Int32Array.from(tasks.keys());
    this.byEnd = Int32Array.from(tasks.keys());
    this.lows = new Int32Array(n);
    this.ends = new Int32Array(n);
  }

  /** Whether to look now: the longer nothing has come of it, the more rarely. Nothing else rests on what is found here. */
  wanted(): boolean {
    if (this.rest === 0) return true;
    this.rest--;
    return false;
  }

  /** Everything that follows; false on a clash. The time-table has to be up to date. */
  run(): boolean {
    const before = this.trail.size;
    this.read();
    const ok = this.count < 2 || (this.later() && this.sooner());
    this.idle = ok && this.trail.size === before ? Math.min(this.idle + 1, rarest) : 0;
    this.rest = Math.max(0, this.idle - 1);
    return ok;
  }

  private read(): void {
    const { trail, job, length, number, low, high, free, byLow, byEnd, lows, ends, byLows, byEnds } = this;
    for (let k = 0; k < job.length; k++) {
      low[k] = trail.low(job[k]!);
      high[k] = trail.high(job[k]!);
      const sure = low[k]! + length[k]! - high[k]!;
      free[k] = number[k]! * (sure > 0 ? length[k]! - sure : length[k]!);
    }
    for (let k = 1; k < byLow.length; k++) {
      const task = byLow[k]!;
      let m = k;
      for (; m > 0 && low[byLow[m - 1]!]! > low[task]!; m--) byLow[m] = byLow[m - 1]!;
      byLow[m] = task;
      const other = byEnd[k]!;
      const end = high[other]! + length[other]!;
      for (m = k; m > 0 && high[byEnd[m - 1]!]! + length[byEnd[m - 1]!]! > end; m--) byEnd[m] = byEnd[m - 1]!;
      byEnd[m] = other;
    }
    let n = 0;
    let largest = 0;
    for (let k = 0; k < byLow.length; k++) {
      const i = byLow[k]!;
      if (free[i]! <= 0) continue;
      lows[n] = i;
      byLows.low[n] = low[i]!;
      byLows.end[n] = high[i]! + length[i]!;
      byLows.free[n++] = free[i]!;
      if (free[i]! > largest) largest = free[i]!;
    }
    this.largest = largest;
    n = 0;
    for (let k = 0; k < byEnd.length; k++) {
      const i = byEnd[k]!;
      if (free[i]! <= 0) continue;
      ends[n] = i;
      byEnds.low[n] = low[i]!;
      byEnds.end[n] = high[i]! + length[i]!;
      byEnds.free[n++] = free[i]!;
    }
    this.count = n;
    this.measure();
  }

  /** Energy surely held up to each earliest start and each latest end. */
  private measure(): void {
    const { count, byLows, byEnds } = this;
    const { times, used, size } = this.table.usage;
    let sum = 0;
    let a = 0;
    let b = 0;
    for (let k = 0; k < size; k++) {
      const until = k + 1 < size ? times[k + 1]! : Number.MAX_SAFE_INTEGER;
      const from = times[k]!;
      for (; a < count && byLows.low[a]! < until; a++) byLows.held[a] = sum + used[k]! * (byLows.low[a]! - from);
      for (; b < count && byEnds.end[b]! < until; b++) byEnds.held[b] = sum + used[k]! * (byEnds.end[b]! - from);
      if (a === count && b === count) return;
      sum += used[k]! * (until - from);
    }
  }

  private later(): boolean {
    const { count, lows, low, high, length, number, trail } = this;
    const { low: froms, end: tos, free, held } = this.byLows;
    const { end: stops, free: freeOf, held: heldAt } = this.byEnds;
    const { level } = this.table.shared;
    let first = 0;
    // Wherever it begins, a stretch holds of what is free no more than this.
    let whole = this.largest;
    for (let e = 0; e < count; e++) {
      const to = stops[e]!;
      whole += freeOf[e]!;
      if (e + 1 < count && stops[e + 1] === to) continue;
      while (first < count && froms[first]! < to) first++;
      let energy = 0;
      let most = 0;
      let task = -1;
      for (let k = first - 1; k >= 0; k--) {
        const from = froms[k]!;
        const there = level * (to - from) + held[k]! - heldAt[e]!;
        if (there >= whole) break;
        if (tos[k]! <= to) energy += free[k]!;
        else if (free[k]! > most) {
          const i = lows[k]!;
          const sure = Math.min(from + length[i]!, to) - high[i]!;
          const need = number[i]! * (Math.min(length[i]!, to - from) - Math.max(0, sure));
          if (need > most) {
            most = need;
            task = i;
          }
        }
        const room = there - energy;
        if (room >= most) continue;
        if (room < 0) return trail.fail(Why.edge, this.code(taskRoom - 1), this.stretches.add(from, to, trail.size));
        const sure = Math.min(low[task]! + length[task]!, to) - high[task]!;
        const start = to - Math.floor(room / number[task]!) - Math.max(0, sure);
        const side = 2 * this.job[task]!;
        if (start <= trail.bound[side]!) continue;
        if (!trail.raise(side, start, Why.edge, this.code(task), this.stretches.add(from, to, trail.size))) return false;
      }
    }
    return true;
  }

  private sooner(): boolean {
    const { count, ends, low, high, length, number, trail } = this;
    const { low: froms, end: tos, free, held } = this.byEnds;
    const { low: begins, free: freeOf, held: heldAt } = this.byLows;
    const { level } = this.table.shared;
    let first = count;
    let whole = this.largest;
    for (let e = count - 1; e >= 0; e--) {
      const from = begins[e]!;
      whole += freeOf[e]!;
      if (e > 0 && begins[e - 1] === from) continue;
      while (first > 0 && tos[first - 1]! > from) first--;
      let energy = 0;
      let most = 0;
      let task = -1;
      for (let k = first; k < count; k++) {
        const to = tos[k]!;
        const there = level * (to - from) - held[k]! + heldAt[e]!;
        if (there >= whole) break;
        if (froms[k]! >= from) energy += free[k]!;
        else if (free[k]! > most) {
          const i = ends[k]!;
          const sure = low[i]! + length[i]! - Math.max(high[i]!, from);
          const need = number[i]! * (Math.min(length[i]!, to - from) - Math.max(0, sure));
          if (need > most) {
            most = need;
            task = i;
          }
        }
        const room = there - energy;
        if (room >= most) continue;
        const sure = low[task]! + length[task]! - Math.max(high[task]!, from);
        const end = from + Math.floor(room / number[task]!) + Math.max(0, sure);
        const side = 2 * this.job[task]! + 1;
        if (length[task]! - end <= trail.bound[side]!) continue;
        if (!trail.raise(side, length[task]! - end, Why.edge, this.code(task), this.stretches.add(from, to, trail.size))) return false;
      }
    }
    return true;
  }

  private code(task: number): number {
    return this.table.index * taskRoom + task;
  }
}

/** Earliest start, latest end, energy beyond what is surely held, and energy surely held before that start or end; side by side for the inner loop. */
interface Row {
  readonly low: Int32Array;
  readonly end: Int32Array;
  readonly free: Float64Array;
  readonly held: Float64Array;
}

function rowOf(n: number): Row {
  return { low: new Int32Array(n), end: new Int32Array(n), free: new Float64Array(n), held: new Float64Array(n) };
}
