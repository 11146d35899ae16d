import { type Clock, type ElapsedMinute, never, notEver } from "../base";
import type { Problem, WitnessPart } from "./problem";

/**
 * The problem that is left when only these parts hold. A job whose length is not among them may take any time at any hour, so its start and its finish
 * become jobs of their own; it then asks for no capacity, and still takes from stock and brings back.
 */
export function problemOfParts(p: Problem, parts: readonly WitnessPart[]): Problem {
  const kept = new Set<number>();
  for (const part of parts) if (part.kind === "job") kept.add(part.job);
  const rows = new Rows(p, kept);
  const sides = new Map<number, { least: boolean; most: boolean }>();
  const capacities: number[] = [];
  const stocks: number[] = [];
  for (const part of parts) {
    if ("index" in part) (part.kind === "stock" ? stocks : capacities).push(part.index);
    else if (part.kind === "job") rows.at(part.job, 0);
    else if (part.kind !== "link") rows.at(part.job, part.kind === "due" ? 1 : 0);
    else {
      rows.at(p.links.from[part.link]!, p.links.fromEnd[part.link]!);
      rows.at(p.links.to[part.link]!, p.links.toEnd[part.link]!);
      const both = sides.get(part.link) ?? { least: false, most: false };
      both[part.side] = true;
      sides.set(part.link, both);
    }
  }
  const stocked = stocks.map((index) => {
    const { id, inHand, arrivals } = p.stocks[index]!;
    return { id, inHand, arrivals: arrivals.map((a) => ({ job: rows.at(a.job, 1), number: a.number })) };
  });
  const spans = p.spans
    .filter((x) => stocks.includes(x.stock))
    .map((x) => ({ ...x, stock: stocks.indexOf(x.stock), out: rows.at(x.out, 0), back: x.back < 0 ? -1 : rows.at(x.back, 1) }));
  const demands: number[] = [];
  for (let d = 0; d < p.demands.length; d += 3) {
    const capacity = capacities.indexOf(p.demands[d + 1]!);
    if (capacity >= 0 && kept.has(p.demands[d]!)) demands.push(rows.at(p.demands[d]!, 0), capacity, p.demands[d + 2]!);
  }
  const { job, end } = rows;
  const whole = (r: number): boolean => kept.has(job[r]!);
  const n = job.length;
  const out = {
    jobs: n,
    clocks: [...p.clocks, elapsed],
    clock: Int32Array.from(job, (j, r) => (whole(r) ? p.clock[j]! : p.clocks.length)),
    amount: Int32Array.from(job, (j, r) => (whole(r) ? p.amount[j]! : 0)),
    unbroken: Uint8Array.from(job, (j, r) => (whole(r) ? p.unbroken[j]! : 0)),
    release: new Int32Array(n),
    due: new Int32Array(n).fill(never),
    fixed: new Int32Array(n).fill(-1),
    links: linksOf(p, sides, rows),
    capacities: capacities.map((c) => p.capacities[c]!),
    demands: Int32Array.from(demands),
    stocks: stocked,
    spans,
    rank: Int32Array.from(job, (j, r) => 2 * p.rank[j]! + end[r]!),
    horizon: p.horizon,
  };
  for (const part of parts) {
    if (part.kind === "release" || part.kind === "due" || part.kind === "fixed")
      out[part.kind][rows.at(part.job, part.kind === "due" ? 1 : 0)] = p[part.kind][part.job]!;
  }
  return out;
}

/** Rows of the reduced problem by job and end: one for a job that keeps its length, else one for each end that is spoken of. */
class Rows {
  readonly job: number[] = [];
  readonly end: number[] = [];
  private readonly row: Int32Array;

  constructor(
    p: Problem,
    private readonly kept: ReadonlySet<number>,
  ) {
    this.row = new Int32Array(2 * p.jobs).fill(-1);
  }

  at(job: number, end: number): number {
    const key = 2 * job + (this.kept.has(job) ? 0 : end);
    if (this.row[key]! < 0) {
      this.row[key] = this.job.length;
      this.job.push(job);
      this.end.push(key & 1);
    }
    return this.row[key]!;
  }

  /** Start and finish of every job that has both as rows of their own. */
  pairs(): [number, number][] {
    const out: [number, number][] = [];
    for (let key = 0; key < this.row.length; key += 2)
      if (this.row[key]! >= 0 && this.row[key + 1]! >= 0) out.push([this.row[key]!, this.row[key + 1]!]);
    return out;
  }
}

function linksOf(p: Problem, sides: ReadonlyMap<number, { least: boolean; most: boolean }>, rows: Rows): Problem["links"] {
  const all = p.links;
  const kept = [...sides].map(([l, side]) => ({
    from: rows.at(all.from[l]!, all.fromEnd[l]!),
    to: rows.at(all.to[l]!, all.toEnd[l]!),
    fromEnd: all.fromEnd[l]!,
    toEnd: all.toEnd[l]!,
    clock: all.clock[l]!,
    least: side.least ? all.least[l]! : -1,
    most: side.most ? all.most[l]! : -1,
  }));
  // No job ends before it starts.
  for (const [from, to] of rows.pairs()) kept.push({ from, to, fromEnd: 1, toEnd: 0, clock: p.clocks.length, least: 0, most: -1 });
  return {
    count: kept.length,
    from: Int32Array.from(kept, (l) => l.from),
    to: Int32Array.from(kept, (l) => l.to),
    fromEnd: Uint8Array.from(kept, (l) => l.fromEnd),
    toEnd: Uint8Array.from(kept, (l) => l.toEnd),
    clock: Int32Array.from(kept, (l) => l.clock),
    least: Int32Array.from(kept, (l) => l.least),
    most: Int32Array.from(kept, (l) => l.most),
  };
}

/** Plain minutes, for ends that stand alone. */
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
