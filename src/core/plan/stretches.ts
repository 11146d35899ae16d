import { type ElapsedMinute, notEver } from "../base";
import type { WorkingClock } from "../clock";
import { type Problem, runsOf, type Solution } from "../schedule";

export type Stretch = readonly [ElapsedMinute, ElapsedMinute];

/** The running stretches of a job between its start and its finish; one empty stretch for a job that takes no time. */
export function stretchesOf(p: Problem, s: Solution, j: number): Stretch[] {
  const runs = runsOf(p.clocks[p.clock[j]!]!);
  const start = s.start[j]! as ElapsedMinute;
  const finish = s.finish[j]! as ElapsedMinute;
  if (finish <= start) return [[finish, finish]];
  const out: Stretch[] = [];
  let t = start;
  for (let run = runs.at(t); ; run++) {
    const end = runs.to(run) as ElapsedMinute;
    out.push([t, Math.min(end, finish) as ElapsedMinute]);
    if (end >= finish || !runs.has(run + 1)) return out;
    t = runs.from(run + 1) as ElapsedMinute;
    if (t >= finish) return out;
  }
}

/** Jobs by start, then finish, then rank. */
export function byStart(p: Problem, s: Solution): Int32Array {
  return Int32Array.from(p.rank.keys()).sort((a, b) => s.start[a]! - s.start[b]! || s.finish[a]! - s.finish[b]! || p.rank[a]! - p.rank[b]!);
}

/** When the last stretch of a clock before `t` began, up to a month back; far back when there is none. A stretch that `t` lies in counts from its beginning. */
export function lastRunBefore(clock: WorkingClock, t: number): number {
  const runs = clock.runs(t - month_min, t);
  return runs.length === 0 ? notEver : runs[runs.length - 2]!;
}

const month_min = 31 * 1440;
