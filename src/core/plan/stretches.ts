import { type ElapsedMinute, notEver } from "../base";
import type { WorkingClock } from "../clock";
import type { Problem, Solution } from "../schedule";

export type Stretch = readonly [ElapsedMinute, ElapsedMinute];

/** The running stretches of a job between its start and its finish; one empty stretch for a job that takes no time. */
export function stretchesOf(p: Problem, s: Solution, j: number): Stretch[] {
  const clock = p.clocks[p.clock[j]!]!;
  const finish = s.finish[j]! as ElapsedMinute;
  const out: Stretch[] = [];
  for (let t = s.start[j]! as ElapsedMinute; t < finish; t = clock.begin(clock.runEnd(t))) {
    out.push([t, Math.min(clock.runEnd(t), finish) as ElapsedMinute]);
  }
  return out.length > 0 ? out : [[finish, finish]];
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
