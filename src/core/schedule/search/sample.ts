import type { Chance } from "./chance";
import { fewJobs, type Ground } from "./member";

/**
 * Writes jobs in an order in which none goes before what it waits for: of those that can go next, the earlier a latest start the likelier (regret-based biased
 * random sampling: Drexl 1991, Management Science 37:1590-1602). In problems of fewer jobs chance has a larger part.
 */
export function sample(g: Ground, chance: Chance, list: Int32Array): void {
  const { jobs, late, after, afterAt } = g;
  const waiting = new Int32Array(jobs);
  for (let k = 0; k < after.length; k++) waiting[after[k]!]!++;
  const even = jobs < fewJobs;
  let latest = -1;
  const likely = (j: number): number => (even ? Math.sqrt(latest - late[j]! + 1) : latest - late[j]! + 1);
  const open: number[] = [];
  for (let j = 0; j < jobs; j++) if (waiting[j] === 0) open.push(j);
  for (let k = 0; k < jobs; k++) {
    latest = -1;
    for (const j of open) latest = Math.max(latest, late[j]!);
    let all = 0;
    for (const j of open) all += likely(j);
    let pick = 0;
    for (let at = chance.fraction() * all; pick + 1 < open.length; pick++) {
      at -= likely(open[pick]!);
      if (at <= 0) break;
    }
    const j = open[pick]!;
    open[pick] = open[open.length - 1]!;
    open.pop();
    list[k] = j;
    for (let a = afterAt[j]!; a < afterAt[j + 1]!; a++) if (--waiting[after[a]!]! === 0) open.push(after[a]!);
  }
}
