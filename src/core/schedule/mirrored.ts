import { never } from "../base";
import { BackwardClock, backwardWait } from "./backward";
import type { Capacity, Problem } from "./problem";

/**
 * The same problem read from minute `end` back to minute 0, with what a pass from the end needs: clocks, least waits, people, equipment, places. Most-waits, dates
 * and stock are left out, and before minute 0 everybody is there at every hour: its schedules say in which order to serve, not when.
 */
export function mirrored(p: Problem, end: number): Problem {
  const ofJobs = new Set(p.clock);
  const { links } = p;
  // Key by key, in the order of the type: objects of one shape, so that code made fast for a problem is fast for its mirror image too.
  return {
    jobs: p.jobs,
    clocks: p.clocks.map((clock, k) =>
      ofJobs.has(k) && clock.fromBeginning !== true ? new BackwardClock(clock, end) : backwardWait(clock, end),
    ),
    clock: p.clock,
    amount: p.amount,
    unbroken: p.unbroken,
    release: new Int32Array(p.jobs),
    due: new Int32Array(p.jobs).fill(never),
    fixed: new Int32Array(p.jobs).fill(-1),
    links: {
      count: links.count,
      from: links.to,
      to: links.from,
      fromEnd: links.toEnd.map((e) => 1 - e),
      toEnd: links.fromEnd.map((e) => 1 - e),
      clock: links.clock,
      least: links.least,
      most: new Int32Array(links.most.length).fill(-1),
    },
    capacities: p.capacities.map((c) => capacityBack(c, end)),
    demands: p.demands,
    stocks: [],
    spans: [],
    rank: p.rank.map((r) => -r),
    horizon: never,
  };
}

function capacityBack(c: Capacity, end: number): Capacity {
  const most = c.levels.reduce((a, b) => Math.max(a, b), 0);
  if (c.times.length < 2) return c;
  const times: number[] = [];
  const levels: number[] = [];
  for (let k = c.times.length - 1; k >= 0; k--) {
    if (c.times[k]! >= end) continue;
    times.push(times.length === 0 ? 0 : end - c.times[k + 1]!);
    levels.push(c.levels[k]!);
  }
  times.push(end - c.times[0]!);
  levels.push(most);
  return { id: c.id, kind: c.kind, times: Int32Array.from(times), levels: Int32Array.from(levels), holds: c.holds };
}
