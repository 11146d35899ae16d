import { byKey } from "./by-key";
import type { Problem, Solution } from "./problem";
import { withAfter } from "./with-after";

/**
 * The same problem with the order in which its jobs take what they share: each job comes after those that had before it, in the schedule, the people and things
 * that it has. Free jobs may go anywhere among them. The schedule stays one (a partial-order schedule by chaining: Policella, Cesta, Oddi & Smith 2007,
 * "From precedence constraint posting to partial order schedules", AI Communications 20:163-180, from memory).
 */
export function keptOrder(p: Problem, s: Solution, isFree: (job: number) => boolean): Problem {
  const from: number[] = [];
  const to: number[] = [];
  const told = new Set<number>();
  const after = (first: number, next: number): void => {
    if (told.has(first * p.jobs + next)) return;
    told.add(first * p.jobs + next);
    from.push(first);
    to.push(next);
  };
  const asked = p.capacities.map(() => new Int32Array(p.jobs));
  for (let d = 0; d < p.demands.length; d += 3) asked[p.demands[d + 1]!]![p.demands[d]!]! += p.demands[d + 2]!;
  const inTurn = byKey(p.jobs, (j) => s.start[j]!);
  for (const number of asked) {
    // Jobs that have some of it that nobody has taken over yet, and how much.
    const holders = new Map<number, number>();
    for (const j of inTurn) {
      if (number[j] === 0 || isFree(j)) continue;
      for (let lacks = number[j]!; lacks > 0; ) {
        const before = freedLast(holders, s.finish, s.start[j]!);
        // Nobody had it before, or it is free in others' pauses.
        if (before < 0) break;
        after(before, j);
        const left = holders.get(before)! - lacks;
        lacks = Math.max(0, -left);
        if (left > 0) holders.set(before, left);
        else holders.delete(before);
      }
      holders.set(j, number[j]!);
    }
  }
  return { ...p, links: withAfter(p.links, from, to, 0) };
}

/** Of the holders that are done by then the last to be: those done before are for jobs that begin sooner after them; -1: none is. */
function freedLast(holders: ReadonlyMap<number, number>, finish: Int32Array, by: number): number {
  let pick = -1;
  for (const job of holders.keys()) if (finish[job]! <= by && (pick < 0 || finish[job]! > finish[pick]!)) pick = job;
  return pick;
}
