import { elapsed } from "../../clock";
import { earliest, netOf, type Problem } from "../../schedule";
import type { Bound } from "../bound";
import { lastOf } from "../last-of";

/**
 * The problem without precedences that were only chosen: whatever order is chosen, its schedules are schedules of this one, so what this one refutes or
 * bounds holds for every order.
 */
export function anyOrder({ problem, access, row }: Bound): Problem {
  const { links } = problem;
  const least = links.least.slice();
  const most = links.most.slice();
  for (let l = 0; l < links.count; l++) {
    if (row[l]! < 0 || access.arcs.forced[row[l]!] === 1) continue;
    least[l] = -1;
    most[l] = -1;
  }
  return { ...problem, links: { ...links, least, most } };
}

/** Whether a chosen precedence binds anything. */
export function hasChosen({ problem, access, row }: Bound): boolean {
  for (let l = 0; l < problem.links.count; l++) if (row[l]! >= 0 && access.arcs.forced[row[l]!] === 0) return true;
  return false;
}

/**
 * The same with every delivery that comes later than steps could be done set free, of its date and of the days on which it comes: only steps make a finish, and
 * stock that comes too late is no help.
 */
export function ofSteps(p: Problem, steps: number): Problem {
  const early = earliest(p, netOf(p));
  if (early.broken >= 0) return p;
  const finish = lastOf(early.finish, steps);
  if (lastOf(early.finish, p.jobs) <= finish) return p;
  const release = p.release.slice();
  const clock = p.clock.slice();
  const clocks = [...p.clocks, elapsed];
  for (let j = steps; j < p.jobs; j++) {
    if (early.finish[j]! <= finish) continue;
    release[j] = 0;
    clock[j] = clocks.length - 1;
  }
  return { ...p, release, clock, clocks };
}
