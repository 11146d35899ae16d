import type { ElapsedMinute } from "../base";
import { fitFinish, fitStart, fitWhole, type Net, type Problem, type Solution } from "../schedule";
import type { Bound } from "./bound";
import { type Crowd, sharing } from "./crowd";
import type { Holder } from "./plan";
import { lastRunBefore } from "./stretches";
import type { Turn } from "./turns";

/** What holds a job, and when that let go. */
export interface Held {
  readonly holder: Holder;
  readonly ready: ElapsedMinute;
}

/** A wait before people before a window; what is of one kind, by what lets go last, then in document order. */
const weight: Readonly<Record<Holder["kind"], number>> = {
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
  "start-of-build": 4,
  "on-purpose": 5,
};

interface Candidate extends Held {
  /** The job it comes from; -1: a date. */
  readonly from: number;
  /** The start it leads to in the plan, and in the replay. */
  readonly leads: number;
  readonly replayed: number;
}

/** What holds each job. @param order jobs by start */
export function holdersOf(
  bound: Bound,
  served: Problem,
  net: Net,
  turns: readonly Turn[],
  plan: Solution,
  order: Int32Array,
  crowd: Crowd,
): readonly Held[] {
  return new Holders(bound, served, net, turns, plan, crowd).run(order);
}

/**
 * The one thing that keeps each job from being earlier: of everything that by itself already leads to this start, the first by kind. Beside the plan a
 * replay is kept, in which nothing is put late for the sake of what it may not be too far from: what was put late on purpose there stands as early as it
 * could, and what only comes later with it is read where it would be. So the chain never stops at something that itself waits for what comes after it.
 */
class Holders {
  private readonly held: Held[];
  /** Starts and finishes of the replay. */
  readonly #start: Int32Array;
  readonly #finish: Int32Array;

  constructor(
    private readonly bound: Bound,
    private readonly served: Problem,
    private readonly net: Net,
    private readonly turns: readonly Turn[],
    private readonly plan: Solution,
    private readonly crowd: Crowd,
  ) {
    this.held = new Array(served.jobs);
    this.#start = plan.start.slice();
    this.#finish = plan.finish.slice();
  }

  run(order: Int32Array): readonly Held[] {
    for (const j of order) this.held[j] = this.#of(j);
    return this.held;
  }

  #of(j: number): Held {
    const { served: p, plan, bound } = this;
    const start = plan.start[j]! as ElapsedMinute;
    if (p.fixed[j]! >= 0) return { holder: dated(bound.fixedOf[j] === "booking" ? "booking" : "fixed", start), ready: start };
    const all = this.#candidates(j);
    const exact = all.filter((c) => c.leads === start && c.replayed === start && !this.#onPurpose(c.from));
    if (exact.length > 0) return this.#first(j, start, exact);
    if (fitStart(p, j, 0 as ElapsedMinute) === start) return { holder: { kind: "start-of-build" }, ready: 0 as ElapsedMinute };
    const early = Math.max(fitStart(p, j, 0 as ElapsedMinute), ...all.map((c) => c.replayed));
    const late = this.#lateFor(j, start);
    if (late !== null) {
      this.#replay(j, early);
      return late;
    }
    // Held by what was put late itself: read where it would be without that.
    if (all.some((c) => c.leads === start)) {
      this.#replay(j, early);
      const there = all.filter((c) => c.replayed === early);
      const others = there.filter((c) => !this.#onPurpose(c.from));
      if (there.length > 0) return this.#first(j, early, others.length > 0 ? others : there);
      return { holder: { kind: "start-of-build" }, ready: 0 as ElapsedMinute };
    }
    return this.#unled(j, all);
  }

  #candidates(j: number): Candidate[] {
    const { served: p, plan, bound, net } = this;
    const { links } = p;
    const out: Candidate[] = [];
    const lead = (end: number, t: ElapsedMinute): number => (end === 0 ? fitStart(p, j, t) : fitFinish(p, j, t));
    for (let k = net.adj.inAt[j]!; k < net.adj.inAt[j + 1]!; k++) {
      const l = net.adj.in[k]!;
      if (links.least[l]! < 0) continue;
      const from = links.from[l]!;
      const after = (start: Int32Array, finish: Int32Array): ElapsedMinute => {
        const end = (links.fromEnd[l] === 0 ? start[from]! : finish[from]!) as ElapsedMinute;
        return links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.advance(end, links.least[l]!);
      };
      const ready = after(plan.start, plan.finish);
      const holder = linkHolder(bound, this.turns, l, from);
      if (holder.kind === "people" && !this.crowd.short(j, ready - 1)) continue;
      const leads = lead(links.toEnd[l]!, ready);
      const moved = this.#start[from] !== plan.start[from] || this.#finish[from] !== plan.finish[from];
      out.push({ holder, ready, from, leads, replayed: moved ? lead(links.toEnd[l]!, after(this.#start, this.#finish)) : leads });
    }
    if (p.release[j]! > 0) {
      const ready = p.release[j]! as ElapsedMinute;
      const of = bound.releaseOf[j];
      const leads = lead(0, ready);
      out.push({ holder: dated(of === "booking" || of === "fixed" ? of : "not-before", ready), ready, from: -1, leads, replayed: leads });
    }
    return out;
  }

  /** By kind, then by what lets go last; where even that was there before a whole window went by, it is that window that was too small. */
  #first(j: number, start: number, exact: readonly Candidate[]): Held {
    const calendar = j < this.bound.build.steps.length ? this.bound.clocks.work(calendarOf(this.bound, j)) : null;
    let passed: number | null = null;
    const fresh = exact.filter((c) => {
      // Most start at once, and then nothing has gone by.
      if (c.from < 0 || calendar === null || calendar.begin(c.ready) === start) return true;
      passed ??= this.#passedOver(j, start);
      return c.ready > passed;
    });
    const among = fresh.length > 0 ? fresh : exact;
    let best = among[0]!;
    for (const c of among) {
      const [a, b] = [weight[c.holder.kind], weight[best.holder.kind]];
      if (fresh.length > 0 ? a < b || (a === b && c.ready > best.ready) : c.ready > best.ready) best = c;
    }
    if (fresh.length > 0) return best;
    return { holder: { kind: "window", calendar: calendarOf(this.bound, j), after: best.from }, ready: best.ready };
  }

  /** When the last stretch of the job's own calendar that lies before a start began; far back for deliveries. */
  #passedOver(j: number, start: number): number {
    const { bound } = this;
    if (j >= bound.build.steps.length) return Number.NEGATIVE_INFINITY;
    return lastRunBefore(bound.clocks.work(calendarOf(bound, j)), start);
  }

  /** The job for the sake of which, by a wait at most so long, this one is as late as it is. */
  #lateFor(j: number, start: number): Held | null {
    const { served: p, plan, net } = this;
    const { links } = p;
    for (let k = net.adj.outAt[j]!; k < net.adj.outAt[j + 1]!; k++) {
      const l = net.adj.out[k]!;
      if (links.most[l]! < 0) continue;
      const to = links.to[l]!;
      const end = (links.toEnd[l] === 0 ? plan.start[to]! : plan.finish[to]!) as ElapsedMinute;
      const t = p.clocks[links.clock[l]!]!.unlimit(end, links.most[l]!);
      const first = links.fromEnd[l] === 0 ? fitStart(p, j, t) : fitFinish(p, j, t);
      if (first === start || (first < start && fitWhole(p, j, first) === start))
        return { holder: { kind: "on-purpose", job: to }, ready: t };
    }
    return null;
  }

  /** Nothing leads exactly here: whoever shares people or things with it and ends last before it; else what lets go last, and its calendar. */
  #unled(j: number, all: readonly Candidate[]): Held {
    const { served: p, plan, bound } = this;
    const start = plan.start[j]! as ElapsedMinute;
    const last = all.reduce<Candidate | null>(
      (a, c) => (c.from >= 0 && c.ready <= start && (a === null || c.ready > a.ready) ? c : a),
      null,
    );
    const other = sharing(p, plan, j, Math.max(this.#passedOver(j, start), last?.ready ?? 0));
    if (other !== null) {
      const { kind, id } = p.capacities[other.capacity]!;
      return { holder: { kind, job: other.job, of: id }, ready: plan.finish[other.job]! as ElapsedMinute };
    }
    return { holder: { kind: "window", calendar: calendarOf(bound, j), after: last?.from ?? -1 }, ready: last?.ready ?? start };
  }

  #replay(j: number, start: number): void {
    const { served: p } = this;
    if (start >= this.#start[j]!) return;
    this.#start[j] = start;
    this.#finish[j] = p.clocks[p.clock[j]!]!.advance(start as ElapsedMinute, p.amount[j]!);
  }

  #onPurpose(j: number): boolean {
    return j >= 0 && this.held[j]?.holder.kind === "on-purpose";
  }
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

function calendarOf(bound: Bound, j: number): string {
  const steps = bound.build.steps.length;
  return j < steps ? bound.build.steps[j]!.calendar : bound.build.deliveries[j - steps]!.calendar;
}
