import type { Problem, Solution } from "../schedule";
import type { Stretch } from "./stretches";

/** How many people of each pool a plan leaves free, minute by minute. */
export interface Crowd {
  /** Whether at this minute too few are free for a job that is not among those at work. */
  short(job: number, t: number): boolean;
}

export function crowdOf(p: Problem, s: Solution, stretches: readonly (readonly Stretch[])[]): Crowd {
  const pools = p.capacities.filter((c) => c.kind === "people").length;
  const changes: [number, number][][] = Array.from({ length: pools }, () => []);
  const wants: [number, number][][] = Array.from({ length: p.jobs }, () => []);
  for (let d = 0; d < p.demands.length; d += 3) {
    const [job, pool, number] = [p.demands[d]!, p.demands[d + 1]!, p.demands[d + 2]!];
    if (pool >= pools) continue;
    wants[job]!.push([pool, number]);
    if (s.finish[job]! > s.start[job]!) for (const [from, to] of stretches[job]!) changes[pool]!.push([from, number], [to, -number]);
  }
  const steps = changes.map((list) => {
    list.sort((a, b) => a[0] - b[0]);
    const times = new Int32Array(list.length);
    const used = new Int32Array(list.length);
    let level = 0;
    list.forEach(([at, by], i) => {
      level += by;
      times[i] = at;
      used[i] = level;
    });
    return { times, used };
  });
  return {
    short: (job, t) =>
      wants[job]!.some(([pool, number]) => {
        const c = p.capacities[pool]!;
        return valueAt(c.times, c.levels, t) - valueAt(steps[pool]!.times, steps[pool]!.used, t) < number;
      }),
  };
}

/** Of the jobs that share a capacity with this one, the last to finish after `since` and by its start; null: none. */
export function sharing(p: Problem, s: Solution, j: number, since: number): { readonly job: number; readonly capacity: number } | null {
  let found: { job: number; capacity: number } | null = null;
  for (let d = 0; d < p.demands.length; d += 3) {
    if (p.demands[d] !== j) continue;
    const capacity = p.demands[d + 1]!;
    for (let e = 0; e < p.demands.length; e += 3) {
      const job = p.demands[e]!;
      if (p.demands[e + 1] !== capacity || job === j || s.finish[job]! > s.start[j]! || s.finish[job]! <= since) continue;
      if (found === null || s.finish[job]! > s.finish[found.job]!) found = { job, capacity };
    }
  }
  return found;
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
