import type { ElapsedMinute } from "../../base";
import { type Capacity, type Earliest, earliest, latest, type Net, netOf, type Problem } from "../../schedule";
import type { Bound } from "../bound";
import { boundByWaits, type FinishBound } from "./finish-bound";

interface Stretch {
  readonly capacity: number;
  readonly from: number;
  readonly until: number;
  readonly asked: number;
  readonly there: number;
  readonly jobs: readonly number[];
}

/** The later of what waits and dates say and what the work of people says, of a problem that holds for every order and can finish at `finish`; in pieces. */
export function* strongest(bound: Bound, over: Problem, finish: number): Generator<void, FinishBound> {
  const net = netOf(over);
  const early = earliest(over, net);
  const waits = boundByWaits(bound, over, early);
  return (waits.at >= finish ? null : yield* boundByHands(bound, over, net, early, waits.at, finish)) ?? waits;
}

/**
 * The lowest finish at which no stretch of time holds more work for a set of people than they are there for (energetic reasoning over what lies in a stretch
 * as a whole: Erschler, Lopez & Thuriot 1991). Null where the work of people says no more than waits and dates do.
 */
function* boundByHands(
  bound: Bound,
  p: Problem,
  net: Net,
  early: Earliest,
  least: number,
  most: number,
): Generator<void, FinishBound | null> {
  const pools = poolsOf(p);
  if (pools.length === 0) return null;
  let low = least;
  let high = most;
  let why: Stretch | null = null;
  while (low < high) {
    yield;
    const middle = (low + high) >> 1;
    const over = overfull(p, pools, early, latest(p, net, middle as ElapsedMinute));
    if (over === null) high = middle;
    else {
      low = middle + 1;
      why = over;
    }
  }
  if (why === null) return null;
  const pool = new Set(p.capacities[why.capacity]!.id.split(" "));
  return {
    by: "hands",
    at: low as ElapsedMinute,
    people: bound.build.people.map(({ id }) => id).filter((id) => pool.has(id)),
    work_min: why.asked,
    there_min: why.there,
    from: why.from as ElapsedMinute,
    until: why.until as ElapsedMinute,
    before: nextOf(bound, p, early, why.jobs),
  };
}

interface Pool {
  readonly capacity: number;
  readonly demand: Int32Array;
  readonly jobs: readonly number[];
  /** Minutes times people up to each change of what there is. */
  readonly sums: Float64Array;
}

function poolsOf(p: Problem): Pool[] {
  return p.capacities.flatMap((c, capacity) => {
    if (c.kind !== "people") return [];
    const demand = new Int32Array(p.jobs);
    for (let d = 0; d < p.demands.length; d += 3) if (p.demands[d + 1] === capacity) demand[p.demands[d]!] = p.demands[d + 2]!;
    const jobs = [...demand.keys()].filter((j) => demand[j]! > 0 && p.amount[j]! > 0);
    const sums = new Float64Array(c.times.length);
    for (let k = 1; k < c.times.length; k++) sums[k] = sums[k - 1]! + c.levels[k - 1]! * (c.times[k]! - c.times[k - 1]!);
    return jobs.length === 0 ? [] : [{ capacity, demand, jobs, sums }];
  });
}

function area(c: Capacity, sums: Float64Array, t: number): number {
  let low = 0;
  let high = c.times.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (c.times[middle]! <= t) low = middle;
    else high = middle - 1;
  }
  return c.times.length === 0 || t < c.times[0]! ? 0 : sums[low]! + c.levels[low]! * (t - c.times[low]!);
}

/** The stretch that is asked for most beyond what there is in it. */
function overfull(p: Problem, pools: readonly Pool[], early: Earliest, late: { readonly finish: Int32Array }): Stretch | null {
  let worst: Stretch | null = null;
  for (const { capacity, demand, jobs, sums } of pools) {
    const c = p.capacities[capacity]!;
    const byEnd = [...jobs].sort((a, b) => late.finish[a]! - late.finish[b]! || a - b);
    for (const from of new Set(jobs.map((j) => early.start[j]!))) {
      const before = area(c, sums, from);
      let asked = 0;
      for (let k = 0; k < byEnd.length; k++) {
        const j = byEnd[k]!;
        if (early.start[j]! < from) continue;
        asked += demand[j]! * p.amount[j]!;
        const until = late.finish[j]!;
        const there = area(c, sums, until) - before;
        if (asked <= there || (worst !== null && asked - there <= worst.asked - worst.there)) continue;
        worst = { capacity, from, until, asked, there, jobs: byEnd.slice(0, k + 1).filter((i) => early.start[i]! >= from) };
      }
    }
  }
  return worst;
}

/** Of the steps that all of some jobs come before, the one that may start first; -1: none. */
function nextOf({ build }: Bound, p: Problem, early: Earliest, jobs: readonly number[]): number {
  const out: number[][] = Array.from({ length: p.jobs }, () => []);
  for (let l = 0; l < p.links.count; l++) if (p.links.least[l]! >= 0) out[p.links.from[l]!]!.push(p.links.to[l]!);
  const reached = new Int32Array(p.jobs);
  for (const j of jobs) {
    const seen = new Set<number>([j]);
    for (const at of seen) for (const to of out[at]!) seen.add(to);
    seen.delete(j);
    for (const to of seen) reached[to]!++;
  }
  let next = -1;
  for (let s = 0; s < build.steps.length; s++)
    if (reached[s] === jobs.length && (next < 0 || early.start[s]! < early.start[next]!)) next = s;
  return next;
}
