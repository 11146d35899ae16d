import type { Model, Shared } from "./model";

/**
 * The lowest finish for which no stretch of time asks for more of a shared number than there is in it: energetic reasoning (Erschler, Lopez & Thuriot 1991;
 * Baptiste, Le Pape & Nuijten 1999, Annals of Operations Research 92:305-333), as a bound from below: a finish is tried, the latest starts that go with it
 * follow, and if some stretch is asked for too much it cannot be. `highFor(finish)`: the latest starts.
 */
export function energyBound(m: Model, highFor: (finish: number) => Int32Array): number {
  const shared = m.shared.filter((s) => s.times.length === 1 && s.tasks.some((t) => t.out === t.back));
  let low = m.low[m.jobs]!;
  let high = m.high[m.jobs]!;
  // What can be at one finish can be at a later one, so halving finds the first that is not refuted.
  while (low < high) {
    const middle = (low + high) >> 1;
    const latest = highFor(middle);
    if (shared.some((s) => tooMuch(m, s, latest))) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Every pair of an earliest start and a latest end is looked at for every task: beyond this many it takes too long. */
const mostTasks = 150;

/** Of each task its earliest start, latest start, least length and number; only tasks that take something from start to finish. */
function tooMuch(m: Model, s: Shared, latest: Int32Array): boolean {
  const tasks = s.tasks.flatMap((t) => {
    if (t.out !== t.back || t.runs !== null) return [];
    const map = m.maps[t.out]!;
    const low = m.low[t.out]!;
    const high = latest[t.out]!;
    const length = map.only >= 0 ? map.only : map.length.reduce((a, b) => Math.min(a, b));
    return [{ low, high, length, number: t.number, end: map.only >= 0 ? high + length : map.finish(high), fixed: map.only >= 0 }];
  });
  if (tasks.length > mostTasks) return false;
  const froms = [...new Set(tasks.map((t) => t.low))];
  const tos = [...new Set(tasks.map((t) => t.end))];
  return froms.some((from) =>
    tos.some((to) => {
      let left = s.level * (to - from);
      if (left <= 0) return false;
      for (const t of tasks) {
        // Where the length changes with the start, only what lies in the stretch as a whole counts.
        if (!t.fixed) left -= t.low >= from && t.end <= to ? t.number * t.length : 0;
        else left -= t.number * Math.max(0, Math.min(t.length, to - from, t.low + t.length - from, to - t.high));
      }
      return left < 0;
    }),
  );
}
