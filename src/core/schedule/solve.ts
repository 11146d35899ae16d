import { type ElapsedMinute, never } from "../base";
import { byKey } from "./by-key";
import { needsOf } from "./needs";
import { earliest, latest, type Net, netOf } from "./network";
import type { Problem, Result, Solution, Stuck } from "./problem";
import { type Ground, SerialPass } from "./serial";
import { witness } from "./witness";

/** Further priorities are tried while fewer jobs than this have been placed. */
const mostPlaced = 900;

/**
 * Dates for a problem, by a few passes of serial generation with different priorities; the earliest finish is kept, the first of equals. Infeasible is
 * said only of links, releases, dues and fixed dates without people, equipment, room and stock. `only`: the one priority to
 * go by (lower first), where that is known.
 */
export function solve(p: Problem, only?: Int32Array | null): Result {
  const net = netOf(p);
  const early = earliest(p, net);
  if (early.broken >= 0) {
    return {
      status: "infeasible",
      solution: null,
      earliest: early,
      bound: 0 as ElapsedMinute,
      work: 0,
      witness: witness(p, net, early),
      stuck: null,
    };
  }
  const bound = last(early.finish) as ElapsedMinute;
  const limit = dated(p) ? latest(p, net, never).start : new Int32Array(p.jobs).fill(never);
  const byTurn = byKey(p.jobs, (j) => p.rank[j]!);
  const turn = new Int32Array(p.jobs);
  for (let k = 0; k < byTurn.length; k++) turn[byTurn[k]!] = k;
  const ground: Ground = { problem: p, net, needs: needsOf(p), earliest: early.start, limit, byTurn, turn };
  const late = latest(p, net, bound);
  let best: Solution | null = null;
  let stuck: Stuck | null = null;
  let work = 0;
  const attempt = (key: Int32Array, whole = true): void => {
    const found = new SerialPass(ground, key, whole).run();
    work++;
    if (found.solution === null) stuck ??= found.stuck;
    else if (best === null || last(found.solution.finish) < last(best.finish)) best = found.solution;
  };
  const lacks = (): Stuck["of"]["kind"] | null => stuck?.of.kind ?? null;
  const finish = (): number => (best === null ? never : last(best.finish));
  let asWritten = false;
  for (const key of only ? [only] : keys(p, late)) {
    // Where things went out in an order in which they could not come back, the order as it is written is the next to try.
    if (finish() >= never && lacks() === "stock" && !asWritten && !only) {
      asWritten = true;
      attempt(p.rank);
      if (finish() < never) break;
    }
    attempt(key);
    if (finish() <= bound || (finish() < never && work * p.jobs >= mostPlaced)) break;
    // Nobody there for as long as anything is known: another order would not bring them.
    if (lacks() === "capacity") break;
  }
  const further = finish() >= never && lacks() !== "capacity" && !only;
  if (further && !asWritten) attempt(p.rank);
  if (further && finish() >= never) attempt(hurried(p, net, late.start, stuck!), false);
  if (best === null) return { status: "not-found", solution: null, earliest: early, bound, work, witness: [], stuck };
  const status = last((best as Solution).finish) <= bound ? "proved" : "planned";
  return { status, solution: best, earliest: early, bound, work, witness: [], stuck: null };
}

/** Latest start, latest finish, and latest start with the longer job first. */
function* keys(p: Problem, late: { readonly start: Int32Array; readonly finish: Int32Array }): Generator<Int32Array> {
  yield late.start;
  yield late.finish;
  yield late.start.map((s, j) => s - (p.amount[j]! >> 1));
}

/** When no pass met the windows: what leads to the job that came too late goes before everything else. */
function hurried(p: Problem, net: Net, base: Int32Array, stuck: Stuck): Int32Array {
  const key = base.slice();
  const ahead = 1 << 26;
  const urgent = new Uint8Array(p.jobs);
  const todo = [stuck.job];
  for (let j = todo.pop(); j !== undefined; j = todo.pop()) {
    if (urgent[j] === 1) continue;
    urgent[j] = 1;
    key[j]! -= ahead;
    for (let k = net.adj.inAt[j]!; k < net.adj.inAt[j + 1]!; k++) todo.push(p.links.from[net.adj.in[k]!]!);
  }
  return key;
}

function dated(p: Problem): boolean {
  return p.due.some((d) => d < never) || p.fixed.some((f) => f >= 0);
}

function last(finish: Int32Array): number {
  let t = 0;
  for (let j = 0; j < finish.length; j++) if (finish[j]! > t) t = finish[j]!;
  return t;
}
