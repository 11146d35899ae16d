import { type Clock, type ElapsedMinute, lastRunning, never, notEver } from "../base";
import type { Problem, Solution } from "./problem";

/** The first start at or after `t` that job `j` may have on its clock (unbroken: with room for all of it in one run); `never` if there is none. */
export function fitStart(p: Problem, j: number, t: ElapsedMinute): ElapsedMinute {
  const clock = p.clocks[p.clock[j]!]!;
  let s = clock.begin(t);
  if (p.unbroken[j] === 0) return s;
  const amount = p.amount[j]!;
  while (s < p.horizon) {
    const end = clock.runEnd(s);
    if (s + amount <= end) return s;
    s = clock.begin(end);
  }
  return never;
}

/** Longest look for one run that takes a whole job. */
const fortnight_min = 14 * 1440;

/** The first start at or after `t` from which the job lies in one run, if there is one within a fortnight; else the first start. */
export function fitWhole(p: Problem, j: number, t: ElapsedMinute): ElapsedMinute {
  const clock = p.clocks[p.clock[j]!]!;
  const first = fitStart(p, j, t);
  for (let s = first; s < Math.min(t + fortnight_min, never); s = clock.begin(clock.runEnd(s)))
    if (s + p.amount[j]! <= clock.runEnd(s)) return s;
  return first;
}

/** Where job `j` ends when it starts at `s`; `never` when its clock never gathers the amount. */
export function finishOf(p: Problem, j: number, s: ElapsedMinute): ElapsedMinute {
  return s >= never ? never : p.clocks[p.clock[j]!]!.advance(s, p.amount[j]!);
}

/** The schedule with these starts. */
export function solutionOf(p: Problem, start: Int32Array): Solution {
  return { start, finish: start.map((s, j) => finishOf(p, j, s as ElapsedMinute)) };
}

/** The first start whose finish is at or after `x`; `never` if there is none. */
export function fitFinish(p: Problem, j: number, x: ElapsedMinute): ElapsedMinute {
  if (x >= never) return never;
  const clock = p.clocks[p.clock[j]!]!;
  const amount = p.amount[j]!;
  if (amount === 0) return fitStart(p, j, x);
  let s = fitStart(p, j, back(clock, x, amount));
  // A finish in a gap is told as the end of the run before it: then one more minute of the clock is needed.
  while (s < never && finishOf(p, j, s) < x) s = fitStart(p, j, clock.advance(s, 1));
  return s;
}

/** The last start at or before `x`; `notEver` if there is none. */
export function lastStart(p: Problem, j: number, x: ElapsedMinute): ElapsedMinute {
  if (x <= notEver) return notEver;
  const clock = p.clocks[p.clock[j]!]!;
  const s = lastRunning(clock, x);
  return p.unbroken[j] === 0 ? s : lastWhole(p, clock, j, s);
}

/** The last start whose finish is at or before `x`; `notEver` if there is none. */
export function lastFit(p: Problem, j: number, x: ElapsedMinute): ElapsedMinute {
  if (x <= notEver) return notEver;
  const amount = p.amount[j]!;
  if (amount === 0) return lastStart(p, j, x);
  const clock = p.clocks[p.clock[j]!]!;
  const s = clock.retreat(x, amount);
  return p.unbroken[j] === 0 ? s : lastWhole(p, clock, j, s);
}

/** The last start at or before `s` from which the whole amount lies in one run. */
function lastWhole(p: Problem, clock: Clock, j: number, s: ElapsedMinute): ElapsedMinute {
  const amount = p.amount[j]!;
  let at = s;
  // Nothing is planned before the epoch by more than the horizon; the guard ends a clock that never offers such a run.
  while (at > -p.horizon) {
    const end = clock.runEnd(at);
    if (at + amount <= end) return at;
    const earlier = clock.retreat(end, amount);
    at = earlier < at ? earlier : clock.retreat(at, 1);
  }
  return notEver;
}

function back(clock: Clock, x: ElapsedMinute, amount: number): ElapsedMinute {
  const r = clock.retreat(x, amount);
  return r <= notEver ? (0 as ElapsedMinute) : r;
}
