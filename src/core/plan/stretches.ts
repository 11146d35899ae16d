import { type ElapsedMinute, notEver } from "../base";
import type { WorkingClock } from "../clock";
import { byKey, type Problem, runsOf, type Solution } from "../schedule";

export type Stretch = readonly [ElapsedMinute, ElapsedMinute];

/** The running stretches of a job between its start and its finish; one empty stretch for a job that takes no time. */
export function stretchesOf(p: Problem, s: Solution, j: number): Stretch[] {
  const runs = runsOf(p.clocks[p.clock[j]!]!);
  const start = s.start[j]! as ElapsedMinute;
  const finish = s.finish[j]! as ElapsedMinute;
  if (finish <= start) return [[finish, finish]];
  let run = runs.at(start);
  // Most are done in one go; a list that is grown has room for many.
  const out: Stretch[] = [[start, Math.min(runs.to(run), finish) as ElapsedMinute]];
  while (runs.to(run) < finish && runs.has(++run)) {
    const t = runs.from(run) as ElapsedMinute;
    if (t >= finish) break;
    out.push([t, Math.min(runs.to(run), finish) as ElapsedMinute]);
  }
  return out;
}

/** Jobs by start, then finish, then rank. */
export function byStart(p: Problem, s: Solution): Int32Array {
  const order = byKey(p.jobs, (j) => s.start[j]!);
  const later = (a: number, b: number): boolean =>
    s.start[a] === s.start[b] && (s.finish[a]! > s.finish[b]! || (s.finish[a] === s.finish[b] && p.rank[a]! > p.rank[b]!));
  for (let k = 1; k < order.length; k++) {
    const job = order[k]!;
    let at = k;
    for (; at > 0 && later(order[at - 1]!, job); at--) order[at] = order[at - 1]!;
    order[at] = job;
  }
  return order;
}

/** When the last stretch of a clock before `t` began, up to a month back; far back when there is none. A stretch that `t` lies in counts from its beginning. */
export function lastRunBefore(clock: WorkingClock, t: number): number {
  const runs = clock.runs(t - month_min, t);
  return runs.length === 0 ? notEver : runs[runs.length - 2]!;
}

const month_min = 31 * 1440;
