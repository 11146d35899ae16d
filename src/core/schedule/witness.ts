import { type Clock, type ElapsedMinute, never, notEver } from "../base";
import { type Earliest, earliest, type Net, netOf } from "./network";
import type { Links, Problem, WitnessPart } from "./problem";

/**
 * Why the times of a network cannot hold together: parts of which none can be left out. Starts from what moved the broken job, drops what can go
 * (lengths of work first, then dates, then waits, each from the back), and keeps a part only when the rest can hold without it.
 */
export function witness(p: Problem, net: Net, failed: Earliest): WitnessPart[] {
  const parts = causes(p, net, failed);
  let kept = parts;
  for (let size = kept.length >> 1; size >= 1; size >>= 1) {
    for (let from = 0; from < kept.length; ) {
      const without = [...kept.slice(0, from), ...kept.slice(from + size)];
      if (cannotHold(p, without)) kept = without;
      else from += size;
    }
  }
  return kept.sort((a, b) => weight(a) - weight(b) || place(a) - place(b));
}

/** Everything that took part in moving the broken job, in the order in which it is tried to be dropped. */
function causes(p: Problem, net: Net, failed: Earliest): WitnessPart[] {
  const seen = new Uint8Array(p.jobs);
  const todo = [failed.broken];
  seen[failed.broken] = 1;
  const parts: WitnessPart[] = [];
  const visit = (job: number): void => {
    if (seen[job] === 0) {
      seen[job] = 1;
      todo.push(job);
    }
  };
  for (let v = todo.pop(); v !== undefined; v = todo.pop()) {
    parts.push({ kind: "job", job: v });
    if (p.release[v]! > 0) parts.push({ kind: "release", job: v });
    if (p.fixed[v]! >= 0) parts.push({ kind: "fixed", job: v });
    for (let k = net.adj.inAt[v]!; k < net.adj.inAt[v + 1]!; k++) {
      const l = net.adj.in[k]!;
      if (failed.moved[2 * l] === 0) continue;
      parts.push({ kind: "link", link: l, side: "least" });
      visit(p.links.from[l]!);
    }
    for (let k = net.adj.outAt[v]!; k < net.adj.outAt[v + 1]!; k++) {
      const l = net.adj.out[k]!;
      if (failed.moved[2 * l + 1] === 0) continue;
      parts.push({ kind: "link", link: l, side: "most" });
      visit(p.links.to[l]!);
    }
  }
  if (failed.by === "due") parts.push({ kind: "due", job: failed.broken });
  return parts.sort((a, b) => weight(b) - weight(a) || place(b) - place(a));
}

function weight(part: WitnessPart): number {
  return part.kind === "link" ? 0 : part.kind === "job" ? 2 : 1;
}

function place(part: WitnessPart): number {
  return part.kind === "link" ? 2 * part.link + (part.side === "most" ? 1 : 0) : part.job;
}

/** True when the parts alone, on the same clocks, already have no times. A job whose length is not among them takes none, at any minute. */
export function cannotHold(p: Problem, parts: readonly WitnessPart[]): boolean {
  const row = new Map<number, number>();
  const jobs: number[] = [];
  const rowOf = (job: number): number => {
    const known = row.get(job);
    if (known !== undefined) return known;
    row.set(job, jobs.length);
    jobs.push(job);
    return jobs.length - 1;
  };
  const sides = new Map<number, { least: boolean; most: boolean }>();
  for (const part of parts) {
    if (part.kind !== "link") rowOf(part.job);
    else {
      rowOf(p.links.from[part.link]!);
      rowOf(p.links.to[part.link]!);
      const both = sides.get(part.link) ?? { least: false, most: false };
      both[part.side] = true;
      sides.set(part.link, both);
    }
  }
  const n = jobs.length;
  const sub = {
    ...p,
    jobs: n,
    clocks: [...p.clocks, elapsed],
    clock: new Int32Array(n).fill(p.clocks.length),
    amount: new Int32Array(n),
    unbroken: new Uint8Array(n),
    release: new Int32Array(n),
    due: new Int32Array(n).fill(never),
    fixed: new Int32Array(n).fill(-1),
    links: linksOf(p.links, sides, row),
  };
  for (const part of parts) {
    if (part.kind === "link") continue;
    const r = rowOf(part.job);
    if (part.kind === "job") {
      sub.clock[r] = p.clock[part.job]!;
      sub.amount[r] = p.amount[part.job]!;
      sub.unbroken[r] = p.unbroken[part.job]!;
    } else sub[part.kind][r] = p[part.kind][part.job]!;
  }
  return earliest(sub, netOf(sub)).broken >= 0;
}

function linksOf(all: Links, sides: ReadonlyMap<number, { least: boolean; most: boolean }>, row: ReadonlyMap<number, number>): Links {
  const rows = [...sides];
  return {
    count: rows.length,
    from: Int32Array.from(rows, ([l]) => row.get(all.from[l]!)!),
    to: Int32Array.from(rows, ([l]) => row.get(all.to[l]!)!),
    fromEnd: Uint8Array.from(rows, ([l]) => all.fromEnd[l]!),
    toEnd: Uint8Array.from(rows, ([l]) => all.toEnd[l]!),
    clock: Int32Array.from(rows, ([l]) => all.clock[l]!),
    least: Int32Array.from(rows, ([l, side]) => (side.least ? all.least[l]! : -1)),
    most: Int32Array.from(rows, ([l, side]) => (side.most ? all.most[l]! : -1)),
  };
}

/** Plain minutes, for jobs whose own length is left out. */
const elapsed: Clock = {
  id: "elapsed",
  reading: (t) => t,
  advance: (t, amount) => Math.min(t + amount, never) as ElapsedMinute,
  retreat: (t, amount) => Math.max(t - amount, notEver) as ElapsedMinute,
  limit: (t, amount) => Math.min(t + amount, never) as ElapsedMinute,
  unlimit: (t, amount) => Math.max(t - amount, notEver) as ElapsedMinute,
  begin: (t) => t,
  runEnd: () => never,
};
