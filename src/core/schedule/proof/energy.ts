import { lastAtMost } from "../last-at-most";
import type { Model, Shared } from "./model";

/**
 * The lowest finish for which no stretch of time asks for more of a shared number than there is in it (energetic reasoning: Erschler, Lopez & Thuriot 1991;
 * Baptiste, Le Pape & Nuijten 1999, Annals of Operations Research 92:305-333), as a bound from below: a finish is tried, the latest starts that go with it
 * follow, and if some stretch is asked for too much it cannot be. `highFor(finish)`: the latest starts. Past `m.high` of the finish: there is none at all. In pieces.
 */
export function* energyBound(m: Model, highFor: (finish: number) => Int32Array): Generator<void, number> {
  const shared = m.shared.filter((s) => s.tasks.some((t) => t.out === t.back)).map((s) => ({ shared: s, area: areaOf(s) }));
  let low = m.low[m.jobs]!;
  let high = m.high[m.jobs]! + 1;
  // What can be at one finish can be at a later one, so halving finds the first that is not refuted.
  while (low < high && shared.length > 0) {
    yield;
    const middle = (low + high) >> 1;
    const latest = highFor(middle);
    if (shared.some((s) => tooMuch(m, s.shared, s.area, latest))) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What there is of a number from minute 0 up to `t`, in number-minutes. */
type Area = (t: number) => number;

function areaOf(s: Shared): Area {
  const sums = new Float64Array(s.times.length);
  for (let k = 1; k < s.times.length; k++) sums[k] = sums[k - 1]! + (s.level - s.missing[k - 1]!) * (s.times[k]! - s.times[k - 1]!);
  return (t) => {
    const k = Math.max(0, lastAtMost(s.times, t));
    return sums[k]! + (s.level - s.missing[k]!) * (t - s.times[k]!);
  };
}

/** A task by its earliest start, latest start and latest end. */
interface Asked {
  readonly low: number;
  readonly high: number;
  readonly end: number;
  /** Minutes for which it holds its number, at least. */
  readonly length: number;
  /** It holds for so long in one go, whenever it starts. */
  readonly steady: boolean;
  readonly number: number;
}

/** Every pair of an earliest start and a latest end is looked at for every task: beyond so many tasks only what lies in a stretch as a whole counts. */
const mostTasks = 150;

function tooMuch(m: Model, s: Shared, area: Area, latest: Int32Array): boolean {
  const tasks = s.tasks.flatMap((t): Asked[] => {
    if (t.out !== t.back) return [];
    const map = m.maps[t.out]!;
    const low = m.low[t.out]!;
    const high = Math.min(latest[t.out]!, m.high[t.out]!);
    const steady = map.only >= 0 && t.runs === null;
    const length = t.runs !== null ? m.amount[t.out]! : steady ? map.only : map.length.reduce((a, b) => Math.min(a, b));
    return [{ low, high, end: map.finish(high), length, steady, number: t.number }];
  });
  return tasks.length <= mostTasks && tasks.every((t) => t.steady) ? partly(tasks, area) : wholly(tasks, area);
}

/** Counts of each task what must lie in a stretch even when it is pushed as far out of it as it goes. */
function partly(tasks: readonly Asked[], area: Area): boolean {
  const tos = [...new Set(tasks.map((t) => t.end))];
  return [...new Set(tasks.map((t) => t.low))].some((from) =>
    tos.some((to) => {
      if (to <= from) return false;
      let left = area(to) - area(from);
      for (const t of tasks) left -= t.number * Math.max(0, Math.min(t.length, to - from, t.low + t.length - from, to - t.high));
      return left < 0;
    }),
  );
}

/** Counts only the tasks that lie in a stretch as a whole. */
function wholly(tasks: readonly Asked[], area: Area): boolean {
  const byEnd = [...tasks].sort((a, b) => a.end - b.end);
  return [...new Set(tasks.map((t) => t.low))].some((from) => {
    const before = area(from);
    let asked = 0;
    return byEnd.some((t) => {
      if (t.low < from) return false;
      asked += t.number * t.length;
      return asked > area(t.end) - before;
    });
  });
}
