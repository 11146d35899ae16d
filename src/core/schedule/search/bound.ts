import type { Problem, Stuck } from "../problem";

/** A finish before which no schedule can be, by all the work there is for each capacity; 0 where none says anything. */
export function workBound(p: Problem): number {
  const asked = new Float64Array(p.capacities.length);
  for (let d = 0; d < p.demands.length; d += 3) asked[p.demands[d + 1]!]! += p.demands[d + 2]! * p.amount[p.demands[d]!]!;
  return p.capacities.reduce((bound, _, r) => {
    const most = mostOf(p, r);
    return most === 0 ? bound : Math.max(bound, Math.ceil(asked[r]! / most));
  }, 0);
}

/** A job that asks for more than there ever is; null: none does. */
export function lacking(p: Problem): Stuck | null {
  for (let d = 0; d < p.demands.length; d += 3) {
    const [job, index] = [p.demands[d]!, p.demands[d + 1]!];
    if (p.amount[job]! > 0 && p.demands[d + 2]! > mostOf(p, index)) return { job, of: { kind: "capacity", index } };
  }
  return null;
}

function mostOf(p: Problem, capacity: number): number {
  return p.capacities[capacity]!.levels.reduce((a, b) => Math.max(a, b), 0);
}
