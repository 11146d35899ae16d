import type { ElapsedMinute } from "../base";
import { fitFinish, fitStart, fitWhole, type Net, type Problem, type Solution } from "../schedule";
import type { Bound } from "./bound";
import type { Crowd } from "./crowd";
import type { ChainLink, Holder } from "./plan";
import type { Turn } from "./turns";

/** What holds a job, and when that let go. */
export interface Held {
  readonly holder: Holder;
  readonly ready: ElapsedMinute;
}

/** A wait before people before a window, then document order. */
const weight = {
  wait: 0,
  delivery: 0,
  people: 1,
  equipment: 2,
  room: 2,
  alone: 2,
  stock: 2,
  "not-before": 3,
  fixed: 3,
  booking: 3,
  window: 3,
  "on-purpose": 5,
  "start-of-build": 6,
};

/**
 * The one thing that keeps each job from being earlier: of everything that by itself already leads to this start, the first by kind, then in document
 * order; what was put late on purpose does not hold others when anything else does.
 */
export function holdersOf(
  bound: Bound,
  served: Problem,
  net: Net,
  turns: readonly Turn[],
  s: Solution,
  order: Int32Array,
  crowd: Crowd,
): Held[] {
  const held: Held[] = new Array(served.jobs);
  for (const j of order) held[j] = holderOf(bound, served, net, turns, s, j, held, crowd);
  return held;
}

function holderOf(
  bound: Bound,
  p: Problem,
  net: Net,
  turns: readonly Turn[],
  s: Solution,
  j: number,
  held: readonly Held[],
  crowd: Crowd,
): Held {
  const start = s.start[j]! as ElapsedMinute;
  const { links } = p;
  if (p.fixed[j]! >= 0) return { holder: dated(bound.fixedOf[j] === "booking" ? "booking" : "fixed", start), ready: start };
  let best: Held | null = null;
  let bestWeight = Number.POSITIVE_INFINITY;
  const offer = (holder: Holder, ready: ElapsedMinute, from: number): void => {
    const late = from >= 0 && held[from]?.holder.kind === "on-purpose" ? 4 : 0;
    const w = weight[holder.kind] + late;
    if (w < bestWeight) {
      best = { holder, ready };
      bestWeight = w;
    }
  };
  const leads = (end: number, t: ElapsedMinute): boolean => (end === 0 ? fitStart(p, j, t) : fitFinish(p, j, t)) === start;
  for (let k = net.adj.inAt[j]!; k < net.adj.inAt[j + 1]!; k++) {
    const l = net.adj.in[k]!;
    if (links.least[l]! < 0) continue;
    const from = links.from[l]!;
    const end = (links.fromEnd[l] === 0 ? s.start[from]! : s.finish[from]!) as ElapsedMinute;
    const ready = links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.advance(end, links.least[l]!);
    const holder = linkHolder(bound, turns, l, from);
    if (holder.kind === "people" && !crowd.short(j, ready - 1)) continue;
    if (leads(links.toEnd[l]!, ready)) offer(holder, ready, from);
  }
  if (p.release[j]! > 0 && leads(0, p.release[j]! as ElapsedMinute)) {
    const of = bound.releaseOf[j];
    offer(
      dated(of === "booking" || of === "fixed" ? of : "not-before", p.release[j]! as ElapsedMinute),
      p.release[j]! as ElapsedMinute,
      -1,
    );
  }
  if (best !== null) return best;
  for (let k = net.adj.outAt[j]!; k < net.adj.outAt[j + 1]!; k++) {
    const l = net.adj.out[k]!;
    if (links.most[l]! < 0) continue;
    const to = links.to[l]!;
    const end = (links.toEnd[l] === 0 ? s.start[to]! : s.finish[to]!) as ElapsedMinute;
    const t = p.clocks[links.clock[l]!]!.unlimit(end, links.most[l]!);
    const first = links.fromEnd[l] === 0 ? fitStart(p, j, t) : fitFinish(p, j, t);
    if (first === start || (first < start && fitWhole(p, j, first) === start)) offer({ kind: "on-purpose", job: to }, t, -1);
  }
  if (best !== null) return best;
  if (fitStart(p, j, 0 as ElapsedMinute) === start) return { holder: { kind: "start-of-build" }, ready: 0 as ElapsedMinute };
  return sharing(bound, p, s, j);
}

function linkHolder(bound: Bound, turns: readonly Turn[], l: number, from: number): Holder {
  const written = bound.problem.links.count;
  if (l >= written) {
    const { kind, of } = turns[l - written]!;
    return { kind, job: from, of };
  }
  const row = bound.row[l]!;
  return row < 0 ? { kind: "delivery", delivery: from - bound.build.steps.length } : { kind: "wait", job: from, row };
}

function dated(kind: "not-before" | "fixed" | "booking", date: ElapsedMinute): Holder {
  return { kind, date };
}

/** Nothing leads exactly here: of the jobs that share people or things with this one, the last to finish before it; else its own calendar. */
function sharing(bound: Bound, p: Problem, s: Solution, j: number): Held {
  const start = s.start[j]!;
  let at = -1;
  let of = -1;
  for (let d = 0; d < p.demands.length; d += 3) {
    if (p.demands[d] !== j) continue;
    const c = p.demands[d + 1]!;
    for (let e = 0; e < p.demands.length; e += 3) {
      const other = p.demands[e]!;
      if (p.demands[e + 1] !== c || other === j || s.finish[other]! > start) continue;
      if (at < 0 || s.finish[other]! > s.finish[at]!) {
        at = other;
        of = c;
      }
    }
  }
  if (at < 0) return { holder: { kind: "window", calendar: calendarOf(bound, j) }, ready: start as ElapsedMinute };
  const c = p.capacities[of]!;
  return { holder: { kind: c.kind, job: at, of: c.id }, ready: s.finish[at]! as ElapsedMinute };
}

function calendarOf(bound: Bound, j: number): string {
  const steps = bound.build.steps.length;
  return j < steps ? bound.build.steps[j]!.calendar : bound.build.deliveries[j - steps]!.calendar;
}

/** From the last finish back through what holds it; never through what was put late on purpose. */
export function chainOf(s: Solution, held: readonly Held[], steps: number): ChainLink[] {
  let last = -1;
  for (let j = 0; j < steps; j++) if (last < 0 || s.finish[j]! > s.finish[last]!) last = j;
  const chain: ChainLink[] = [];
  const seen = new Set<number>();
  for (let j = last; j >= 0 && !seen.has(j); ) {
    seen.add(j);
    const { holder, ready } = held[j]!;
    chain.push({ job: j, holder, ready });
    if (holder.kind === "delivery") j = steps + holder.delivery;
    else j = "job" in holder && holder.kind !== "on-purpose" ? holder.job : -1;
  }
  return chain.reverse();
}
