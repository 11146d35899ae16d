import type { Problem } from "../problem";

/** A finish before which no schedule can be, by all the work there is for each constant capacity; 0 where none says anything. */
export function workBound(p: Problem): number {
  const asked = new Float64Array(p.capacities.length);
  for (let d = 0; d < p.demands.length; d += 3) asked[p.demands[d + 1]!]! += p.demands[d + 2]! * p.amount[p.demands[d]!]!;
  return p.capacities.reduce((bound, c, r) => {
    const most = c.levels.reduce((a, b) => Math.max(a, b), 0);
    return most === 0 ? bound : Math.max(bound, Math.ceil(asked[r]! / most));
  }, 0);
}
