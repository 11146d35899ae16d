import { type ElapsedMinute, never } from "../base";
import { finishOf, lastFit, lastStart } from "./job";
import { Ledger } from "./ledger";
import { type Needs, needsOf } from "./needs";
import type { Net } from "./network";
import type { Problem, Solution } from "./problem";

/** Starts looked at for one job, each ending where the one before begins, before it is left where it is. */
const mostTried = 60;

/** A job that may come later: its last finish, and by how many minutes its start has to come later for it to move at all. */
export interface Later {
  readonly job: number;
  readonly finishBy: ElapsedMinute;
  readonly least_min: number;
}

/**
 * Puts some jobs of a schedule later with nothing else moved, the last to start first, each as late as its dates, its links and what is free then allow. What
 * comes out keeps everything that went in: finish, dues, links, capacities and stocks. A job that brings something to a stock stays, as others may count on
 * it. Null where nothing moves.
 */
export function putLater(p: Problem, net: Net, s: Solution, jobs: readonly Later[]): Solution | null {
  const start = s.start.slice();
  const finish = s.finish.slice();
  const needs = needsOf(p);
  let ledger: Ledger | null = null;
  for (const { job: j, finishBy, least_min } of [...jobs].sort((a, b) => s.start[b.job]! - s.start[a.job]! || a.job - b.job)) {
    if (p.fixed[j]! >= 0 || needs.back[j]!.length > 0) continue;
    const first = start[j]! + Math.max(1, least_min);
    let t = latestBy(p, net, { start, finish }, j, finishBy);
    if (t < first) continue;
    ledger ??= filled(p, needs, s);
    ledger.hold(j, start[j]!, finish[j]!, -1);
    for (let tried = 0; tried < mostTried && t >= first && ledger.search(j, t) !== t; tried++) t = lastFit(p, j, t as ElapsedMinute);
    if (t >= first && ledger.search(j, t) === t) {
      start[j] = t;
      finish[j] = finishOf(p, j, t as ElapsedMinute);
    }
    ledger.hold(j, start[j]!, finish[j]!, 1);
  }
  return start.some((t, j) => t !== s.start[j]) ? { start, finish } : null;
}

function filled(p: Problem, needs: Needs, s: Solution): Ledger {
  const ledger = new Ledger(p, needs);
  for (let j = 0; j < p.jobs; j++) ledger.hold(j, s.start[j]!, s.finish[j]!, 1);
  return ledger;
}

/** The last start at which a job keeps its dates and every link, with all others where they are. */
function latestBy(p: Problem, net: Net, { start, finish }: Solution, j: number, finishBy: ElapsedMinute): number {
  const { links } = p;
  let s: number = never;
  let f = Math.min(finishBy, p.due[j]!);
  const may = (end: number, t: number): void => {
    if (end === 0) s = Math.min(s, t);
    else f = Math.min(f, t);
  };
  for (let k = net.adj.outAt[j]!; k < net.adj.outAt[j + 1]!; k++) {
    const l = net.adj.out[k]!;
    if (links.least[l]! < 0) continue;
    const end = (links.toEnd[l] === 0 ? start : finish)[links.to[l]!]! as ElapsedMinute;
    may(links.fromEnd[l]!, links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.retreat(end, links.least[l]!));
  }
  for (let k = net.adj.inAt[j]!; k < net.adj.inAt[j + 1]!; k++) {
    const l = net.adj.in[k]!;
    if (links.most[l]! < 0) continue;
    const end = (links.fromEnd[l] === 0 ? start : finish)[links.from[l]!]! as ElapsedMinute;
    may(links.toEnd[l]!, p.clocks[links.clock[l]!]!.limit(end, links.most[l]!));
  }
  const byFinish = f >= never ? never : lastFit(p, j, f as ElapsedMinute);
  return Math.min(byFinish, s >= never ? never : lastStart(p, j, s as ElapsedMinute));
}
