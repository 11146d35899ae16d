import type { ElapsedMinute } from "../../base";
import { type Earliest, earliest, latest, type Net, netOf, type Problem } from "../../schedule";
import type { Bound } from "../bound";
import { boundByWaits, type FinishBound } from "./finish-bound";
import { type Usable, usableOf } from "./usable";

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
 * The lowest finish at which no stretch of time holds more work for a set of people than they can do in it (energetic reasoning over what lies in a stretch
 * as a whole: Erschler, Lopez & Thuriot 1991; what they can do in it: usable.ts). Null where the work of people says no more than waits and dates do.
 */
function* boundByHands(
  bound: Bound,
  p: Problem,
  net: Net,
  early: Earliest,
  least: number,
  most: number,
): Generator<void, FinishBound | null> {
  const pools: Pool[] = [];
  for (const { capacity, demand, jobs } of poolsOf(p)) {
    const usable = usableOf(p, capacity, demand, jobs, most);
    yield;
    pools.push({ capacity, jobs, asked: jobs.map((j) => demand[j]! * p.amount[j]!), usable, most: jobs.map((j) => usable.mostOf(j)) });
    yield;
  }
  if (pools.length === 0) return null;
  let low = least;
  let high = most;
  let why: Stretch | null = null;
  while (low < high) {
    yield;
    const middle = (low + high) >> 1;
    const over = overfull(pools, early, latest(p, net, middle as ElapsedMinute));
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
  readonly jobs: readonly number[];
  /** Of each of the jobs, minutes times people, and the most that it can take of each sort of minute. */
  readonly asked: readonly number[];
  readonly most: readonly Float64Array[];
  readonly usable: Usable;
}

/** People of whom jobs ask for any: by job how many, and those jobs. */
function poolsOf(p: Problem): { capacity: number; demand: Int32Array; jobs: number[] }[] {
  return p.capacities.flatMap((c, capacity) => {
    if (c.kind !== "people") return [];
    const demand = new Int32Array(p.jobs);
    for (let d = 0; d < p.demands.length; d += 3) if (p.demands[d + 1] === capacity) demand[p.demands[d]!] = p.demands[d + 2]!;
    const jobs = [...demand.keys()].filter((j) => demand[j]! > 0 && p.amount[j]! > 0);
    return jobs.length === 0 ? [] : [{ capacity, demand, jobs }];
  });
}

/** The stretch that is asked for most beyond what can be done in it. */
function overfull(pools: readonly Pool[], early: Earliest, late: { readonly finish: Int32Array }): Stretch | null {
  let worst: Stretch | null = null;
  for (const { capacity, jobs, asked, most, usable } of pools) {
    const byEnd = jobs.map((_, k) => k).sort((a, b) => late.finish[jobs[a]!]! - late.finish[jobs[b]!]! || jobs[a]! - jobs[b]!);
    const ends = byEnd.map((k) => usable.upTo(late.finish[jobs[k]!]!));
    for (const from of new Set(jobs.map((j) => early.start[j]!))) {
      const before = usable.upTo(from);
      const taken = new Float64Array(before.length);
      let work = 0;
      for (let at = 0; at < byEnd.length; at++) {
        const k = byEnd[at]!;
        if (early.start[jobs[k]!]! < from) continue;
        work += asked[k]!;
        const [end, own] = [ends[at]!, most[k]!];
        let there = 0;
        for (let s = 0; s < taken.length; s++) {
          taken[s] += own[s]!;
          there += Math.min(taken[s]!, end[s]! - before[s]!);
        }
        if (work <= there || (worst !== null && work - there <= worst.asked - worst.there)) continue;
        const within = byEnd.slice(0, at + 1).map((i) => jobs[i]!);
        worst = {
          capacity,
          from,
          until: late.finish[jobs[k]!]!,
          asked: work,
          there,
          jobs: within.filter((j) => early.start[j]! >= from),
        };
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
