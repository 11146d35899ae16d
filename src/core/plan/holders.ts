import type { ElapsedMinute } from "../base";
import type { WorkingClock } from "../clock";
import { fitFinish, fitStart, fitWhole, type Net, type Problem, type Solution } from "../schedule";
import type { Bound } from "./bound";
import { type Candidate, dated, holderOf, isBefore, turnOf } from "./candidate";
import type { Crowd } from "./crowd";
import type { Holder } from "./plan";
import { Sharers } from "./sharers";
import { lastRunBefore } from "./stretches";
import type { Turn } from "./turns";

const none: readonly Candidate[] = [];

/** What holds a job, and when that let go. */
export interface Held {
  readonly holder: Holder;
  readonly ready: ElapsedMinute;
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
  readonly #calendars = new Map<string, WorkingClock>();
  /** Made when it is first asked for. */
  #sharers: Sharers | null = null;

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
    if (p.fixed[j]! >= 0) {
      const of = bound.fixedOf[j];
      return { holder: dated(of === "booking" || of === "done" ? of : "fixed", start), ready: start };
    }
    const exact = this.#candidates(j, start);
    if (exact.length > 0) return this.#first(j, start, exact);
    const all = this.#candidates(j, null);
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

  /** What leads to a start of a job; where one is asked for, only what leads there, in the replay too, and is not late on purpose itself. */
  #candidates(j: number, asked: ElapsedMinute | null): readonly Candidate[] {
    const { served: p, plan, net } = this;
    const { links } = p;
    let out: Candidate[] | null = null;
    for (let k = net.adj.inAt[j]!; k < net.adj.inAt[j + 1]!; k++) {
      const link = net.adj.in[k]!;
      if (links.least[link]! < 0) continue;
      const from = links.from[link]!;
      const ready = this.#after(link, plan.start, plan.finish);
      const leads = this.#lead(j, links.toEnd[link]!, ready);
      if (asked !== null && leads !== asked) continue;
      const moved = this.#start[from] !== plan.start[from] || this.#finish[from] !== plan.finish[from];
      const replayed = moved ? this.#lead(j, links.toEnd[link]!, this.#after(link, this.#start, this.#finish)) : leads;
      if (asked !== null && (replayed !== asked || this.#onPurpose(from))) continue;
      const turn = turnOf(this.bound, this.turns, link);
      if (turn !== null && turn.kind === "people" && !this.crowd.short(j, ready - 1)) continue;
      const candidate = { link, from, ready, leads, replayed };
      if (out === null) out = [candidate];
      else out.push(candidate);
    }
    if (p.release[j]! > 0) {
      const ready = p.release[j]! as ElapsedMinute;
      const leads = this.#lead(j, 0, ready);
      if (asked === null || leads === asked) {
        const candidate = { link: -1, from: -1, ready, leads, replayed: leads };
        if (out === null) out = [candidate];
        else out.push(candidate);
      }
    }
    return out ?? none;
  }

  /** When a link lets go, by these starts and finishes. */
  #after(link: number, start: Int32Array, finish: Int32Array): ElapsedMinute {
    const { links, clocks } = this.served;
    const end = (links.fromEnd[link] === 0 ? start : finish)[links.from[link]!]! as ElapsedMinute;
    return links.least[link] === 0 ? end : clocks[links.clock[link]!]!.advance(end, links.least[link]!);
  }

  /** The first start of a job with that end of it at or after `t`. Where it starts in the plan it may start. */
  #lead(j: number, end: number, t: ElapsedMinute): number {
    if (end === 0 && t === this.plan.start[j]) return t;
    return end === 0 ? fitStart(this.served, j, t) : fitFinish(this.served, j, t);
  }

  /** By kind, then by what lets go last; where even that was there before a whole window went by, it is that window that was too small. */
  #first(j: number, start: number, exact: readonly Candidate[]): Held {
    const { length } = this.bound.build.steps;
    let passed: number | null = null;
    let best = exact[0]!;
    let found = false;
    for (const c of exact) {
      // Most start at once, and then nothing has gone by.
      let fresh = c.from < 0 || j >= length || c.ready === start || this.#calendar(calendarOf(this.bound, j)).begin(c.ready) === start;
      if (!fresh) {
        passed ??= this.#passedOver(j, start);
        fresh = c.ready > passed;
      }
      if (fresh === found ? isBefore(this.bound, this.turns, c, best, found) : fresh) best = c;
      found ||= fresh;
    }
    if (found) return { holder: holderOf(this.bound, this.turns, j, best), ready: best.ready };
    return { holder: { kind: "window", calendar: calendarOf(this.bound, j), after: best.from }, ready: best.ready };
  }

  #calendar(id: string): WorkingClock {
    let clock = this.#calendars.get(id);
    if (clock === undefined) {
      clock = this.bound.clocks.work(id);
      this.#calendars.set(id, clock);
    }
    return clock;
  }

  /** When the last stretch of the job's own calendar that lies before a start began; far back for deliveries. */
  #passedOver(j: number, start: number): number {
    const { bound } = this;
    if (j >= bound.build.steps.length) return Number.NEGATIVE_INFINITY;
    return lastRunBefore(this.#calendar(calendarOf(bound, j)), start);
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
    this.#sharers ??= new Sharers(p, plan);
    const other = this.#sharers.last(j, Math.max(this.#passedOver(j, start), last?.ready ?? 0));
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

function calendarOf(bound: Bound, j: number): string {
  const steps = bound.build.steps.length;
  return j < steps ? bound.build.steps[j]!.calendar : bound.build.deliveries[j - steps]!.calendar;
}
