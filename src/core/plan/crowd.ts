import type { Problem, Solution } from "../schedule";
import type { Stretch } from "./stretches";

/** How many people of each pool a plan leaves free, minute by minute. */
export interface Crowd {
  /** Whether at this minute too few are free for a job that is not among those at work. */
  short(job: number, t: number): boolean;
}

/** Numbers of people that come or go are told from instants by this; no site has half as many. */
const most = 1 << 16;

export function crowdOf(p: Problem, s: Solution, stretches: readonly (readonly Stretch[])[]): Crowd {
  const pools = p.capacities.filter((c) => c.kind === "people").length;
  const changes: number[][] = Array.from({ length: pools }, () => []);
  const first = new Int32Array(p.jobs).fill(-1);
  const next = new Int32Array(p.demands.length).fill(-1);
  for (let d = 0; d < p.demands.length; d += 3) {
    const [job, pool, number] = [p.demands[d]!, p.demands[d + 1]!, p.demands[d + 2]!];
    if (pool >= pools) continue;
    next[d] = first[job]!;
    first[job] = d;
    if (s.finish[job]! <= s.start[job]!) continue;
    for (const [from, to] of stretches[job]!) changes[pool]!.push(from * most + most / 2 + number, to * most + most / 2 - number);
  }
  const steps = changes.map((list) => {
    const sorted = new Float64Array(list).sort();
    const times = new Int32Array(list.length);
    const used = new Int32Array(list.length);
    let level = 0;
    for (let i = 0; i < sorted.length; i++) {
      times[i] = Math.floor(sorted[i]! / most);
      level += sorted[i]! - times[i]! * most - most / 2;
      used[i] = level;
    }
    return { times, used };
  });
  const short = (job: number, t: number): boolean => {
    for (let d = first[job]!; d >= 0; d = next[d]!) {
      const pool = p.demands[d + 1]!;
      const c = p.capacities[pool]!;
      const { times, used } = steps[pool]!;
      if (valueAt(c.times, c.levels, t) - valueAt(times, used, t) < p.demands[d + 2]!) return true;
    }
    return false;
  };
  return { short };
}

/** The value of the last entry at or before `t`; 0 before the first. */
function valueAt(times: Int32Array, values: Int32Array, t: number): number {
  let low = 0;
  let high = times.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (times[mid]! <= t) low = mid + 1;
    else high = mid;
  }
  return low === 0 ? 0 : values[low - 1]!;
}
