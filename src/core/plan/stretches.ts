import type { ElapsedMinute } from "../base";
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
