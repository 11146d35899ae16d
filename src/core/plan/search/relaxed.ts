import type { Pair } from "../../access";
import { elapsed } from "../../clock";
import { digraph, redundantArcs, topologicalOrder } from "../../graph";
import { earliest, netOf, type Problem, withAfter } from "../../schedule";
import type { Bound } from "../bound";
import { lastOf } from "../last-of";

/**
 * The problem without precedences that were only chosen: whatever order is chosen, its schedules are schedules of this one, so what this one refutes or
 * bounds holds for every order.
 *
 * @param rows precedences of every order that the problem does without, as they follow from chosen ones
 * @param pairs steps that come one before the other in every order although nothing asks for it by itself
 */
export function anyOrder(bound: Bound, rows: readonly number[] = leftOut(bound), pairs: readonly Pair[] = []): Bound {
  const { problem, row } = bound;
  const { arcs } = bound.access;
  const { links } = problem;
  const least = links.least.slice();
  const most = links.most.slice();
  for (let l = 0; l < links.count; l++) {
    if (row[l]! < 0 || arcs.forced[row[l]!] === 1) continue;
    least[l] = -1;
    most[l] = -1;
  }
  const from = [...rows.map((r) => arcs.from[r]!), ...pairs.map(([before]) => before)];
  const to = [...rows.map((r) => arcs.to[r]!), ...pairs.map(([, after]) => after)];
  const rowOf = new Int32Array(links.count + from.length).fill(-1);
  rowOf.set(row.subarray(0, links.count));
  rowOf.set(rows, links.count);
  const all = withAfter({ ...links, least, most }, from, to, problem.clocks.indexOf(bound.clocks.elapsed));
  return { ...bound, problem: { ...problem, links: all }, row: rowOf };
}

/** Precedences of every order that the problem does without, as they follow from others, but not from those of every order alone. */
function leftOut({ build, access: { arcs } }: Bound): number[] {
  const rows = [...arcs.forced.keys()].filter((r) => arcs.forced[r] === 1 && arcs.orders[r] === 1);
  const graph = digraph(
    build.steps.length,
    Int32Array.from(rows, (r) => arcs.from[r]!),
    Int32Array.from(rows, (r) => arcs.to[r]!),
  );
  const follows = redundantArcs(graph, topologicalOrder(graph)!);
  return rows.filter((r, arc) => arcs.redundant[r] === 1 && follows[arc] === 0);
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
