import { type ElapsedMinute, Heap, never } from "../base";
import { fitFinish, fitStart, fitWhole } from "./job";
import { Ledger } from "./ledger";
import type { Needs } from "./needs";
import type { Net } from "./network";
import type { Problem, Solution, Stuck } from "./problem";

/** What the passes over one problem share. */
export interface Ground {
  readonly problem: Problem;
  readonly net: Net;
  readonly needs: Needs;
  /** Earliest starts of the network; latest starts that dues and fixed dates allow (`never` where nothing does). */
  readonly earliest: Int32Array;
  readonly limit: Int32Array;
  /** Jobs by rank, and each job's place among them. */
  readonly byTurn: Int32Array;
  readonly turn: Int32Array;
}

export type Attempt = { readonly solution: Solution; readonly stuck: null } | { readonly solution: null; readonly stuck: Stuck };

/**
 * Serial schedule generation: the job with the lowest key among those whose predecessors are placed goes to the earliest time at which its clock, its
 * links and everything it asks for allow it. A job that comes too late for a most-wait sends the job the wait counts from, and what follows from that,
 * back into the queue with a later earliest start (the unscheduling step of Neumann, Schwindt & Zimmermann, "Project Scheduling with Time Windows and
 * Scarce Resources", from memory), as long as the budget lasts.
 */
export class SerialPass {
  private readonly start: Int32Array;
  private readonly finish: Int32Array;
  private readonly placed: Uint8Array;
  private readonly floor: Int32Array;
  private readonly waiting: Int32Array;
  private readonly queued: Uint8Array;
  private readonly heap = new Heap();
  private readonly ledger: Ledger;
  private readonly deferred: number[] = [];
  private budget: number;

  constructor(
    private readonly ground: Ground,
    private readonly key: Int32Array,
    private readonly whole: boolean,
  ) {
    const p = ground.problem;
    this.start = new Int32Array(p.jobs).fill(-1);
    this.finish = new Int32Array(p.jobs).fill(-1);
    this.placed = new Uint8Array(p.jobs);
    this.floor = ground.earliest.slice();
    this.waiting = new Int32Array(p.jobs);
    this.queued = new Uint8Array(p.jobs);
    this.ledger = new Ledger(p, ground.needs);
    this.budget = 200 + 10 * p.jobs;
    for (let l = 0; l < p.links.count; l++) if (this.orders(l)) this.waiting[p.links.to[l]!]!++;
  }

  run(): Attempt {
    const p = this.ground.problem;
    for (const j of this.fixedFirst()) {
      if (this.ledger.search(j, p.fixed[j]!) !== p.fixed[j]!) return this.stuckAt(j, this.ledger.lacking);
      this.place(j, p.fixed[j]!, this.ledger.finishOf(j, p.fixed[j]!));
    }
    for (let j = 0; j < p.jobs; j++) if (this.waiting[j] === 0) this.offer(j);
    for (;;) {
      const turn = this.heap.pop();
      let j = turn === undefined ? -1 : this.ground.byTurn[turn]!;
      if (j < 0) {
        j = this.firstOpen();
        if (j < 0) break;
        // Stock that nothing placed will bring back; otherwise a ring of least links, entered anywhere.
        const [short] = this.deferred;
        if (short !== undefined && this.ledger.lacksStock(short)) return this.stuckAt(short, this.ledger.lacking);
      } else {
        this.queued[j] = 0;
        if (this.placed[j] === 1 || this.waiting[j]! > 0) continue;
      }
      const stuck = this.settle(j);
      if (stuck !== null) return stuck;
    }
    return { solution: { start: this.start, finish: this.finish }, stuck: null };
  }

  /** Fixed jobs by their dates, so that what one brings back is there for the next; what needs nothing and brings stock stands before any of them. */
  private fixedFirst(): readonly number[] {
    const p = this.ground.problem;
    const { adj } = this.ground.net;
    const fixed: number[] = [];
    for (let j = 0; j < p.jobs; j++) if (p.fixed[j]! >= 0) fixed.push(j);
    if (fixed.length === 0) return fixed;
    for (const { arrivals } of p.stocks) {
      for (const { job: j } of arrivals) {
        if (this.placed[j] === 1 || p.fixed[j]! >= 0 || adj.inAt[j] !== adj.inAt[j + 1]) continue;
        const t = this.ledger.search(j, this.floor[j]!);
        if (t < never && t <= this.ground.limit[j]!) this.place(j, t, this.ledger.finishOf(j, t));
      }
    }
    return fixed.sort((a, b) => p.fixed[a]! - p.fixed[b]! || a - b);
  }

  /** Places a job, or makes room for it by sending others back; returns why the pass must be given up, if it must. */
  private settle(j: number): Attempt | null {
    if (this.ledger.lacksStock(j)) {
      this.deferred.push(j);
      return null;
    }
    const t = this.ledger.search(j, this.lowest(j));
    if (t >= never) return this.stuckAt(j, this.ledger.lacking);
    if (t > this.ground.limit[j]!) return this.stuckAt(j, { kind: "due" });
    const f = this.ledger.finishOf(j, t);
    const broken = this.brokenLink(j, t, f);
    if (broken < 0) {
      this.place(j, t, f);
      return null;
    }
    const { links } = this.ground.problem;
    const other = links.to[broken] === j ? links.from[broken]! : links.to[broken]!;
    if (--this.budget < 0) return this.stuckAt(j, { kind: "link", index: broken });
    if (links.to[broken] === j) {
      if (this.ground.problem.fixed[other]! >= 0) return this.stuckAt(j, { kind: "link", index: broken });
      const end = (links.toEnd[broken] === 0 ? t : f) as ElapsedMinute;
      const from = this.ground.problem.clocks[links.clock[broken]!]!.unlimit(end, links.most[broken]!);
      const raised = links.fromEnd[broken] === 0 ? from : fitFinish(this.ground.problem, other, from);
      this.floor[other] = Math.max(this.floor[other]!, raised);
      if (this.floor[other]! > this.ground.limit[other]!) return this.stuckAt(j, { kind: "link", index: broken });
    } else if (this.ground.problem.fixed[other]! >= 0) {
      return this.stuckAt(j, { kind: "link", index: broken });
    }
    this.sendBack(other);
    this.offer(j);
    return null;
  }

  /**
   * The earliest start that the placed jobs and the floor allow, by links alone. What comes later than its least links ask, for the sake of a most-wait, is
   * not begun just before a pause to end just after it: it is done in one go where it fits.
   */
  private lowest(j: number): number {
    const p = this.ground.problem;
    const { links } = p;
    const { adj } = this.ground.net;
    let s = p.release[j]!;
    let f = 0;
    for (let k = adj.inAt[j]!; k < adj.inAt[j + 1]!; k++) {
      const l = adj.in[k]!;
      const from = links.from[l]!;
      if (links.least[l]! < 0 || this.placed[from] === 0) continue;
      const end = (links.fromEnd[l] === 0 ? this.start[from]! : this.finish[from]!) as ElapsedMinute;
      const t = links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.advance(end, links.least[l]!);
      if (links.toEnd[l] === 0) s = Math.max(s, t);
      else f = Math.max(f, t);
    }
    if (f > 0) s = Math.max(s, fitFinish(p, j, f as ElapsedMinute));
    const asked = s;
    s = Math.max(s, this.floor[j]!);
    f = 0;
    let held = false;
    for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
      const l = adj.out[k]!;
      const to = links.to[l]!;
      if (links.most[l]! < 0) continue;
      held = true;
      if (this.placed[to] === 0) continue;
      const end = (links.toEnd[l] === 0 ? this.start[to]! : this.finish[to]!) as ElapsedMinute;
      const t = p.clocks[links.clock[l]!]!.unlimit(end, links.most[l]!);
      if (links.fromEnd[l] === 0) s = Math.max(s, t);
      else f = Math.max(f, t);
    }
    if (f > 0) s = Math.max(s, fitFinish(p, j, f as ElapsedMinute));
    if (!held || !this.whole || s <= fitStart(p, j, asked as ElapsedMinute)) return s;
    const whole = fitWhole(p, j, s as ElapsedMinute);
    return whole <= this.ground.limit[j]! ? whole : s;
  }

  /** A link to a placed job that a start at `s` would break from above; -1: none. */
  private brokenLink(j: number, s: number, f: number): number {
    const p = this.ground.problem;
    const { links } = p;
    const { adj } = this.ground.net;
    for (let k = adj.inAt[j]!; k < adj.inAt[j + 1]!; k++) {
      const l = adj.in[k]!;
      const from = links.from[l]!;
      if (links.most[l]! < 0 || this.placed[from] === 0) continue;
      const end = (links.fromEnd[l] === 0 ? this.start[from]! : this.finish[from]!) as ElapsedMinute;
      if ((links.toEnd[l] === 0 ? s : f) > p.clocks[links.clock[l]!]!.limit(end, links.most[l]!)) return l;
    }
    for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
      const l = adj.out[k]!;
      const to = links.to[l]!;
      if (links.least[l]! < 0 || this.placed[to] === 0 || to === j) continue;
      const end = (links.fromEnd[l] === 0 ? s : f) as ElapsedMinute;
      const t = links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.advance(end, links.least[l]!);
      if (t > (links.toEnd[l] === 0 ? this.start[to]! : this.finish[to]!)) return l;
    }
    return -1;
  }

  private place(j: number, s: number, f: number): void {
    this.start[j] = s;
    this.finish[j] = f;
    this.placed[j] = 1;
    this.ledger.hold(j, s, f, 1);
    const { adj } = this.ground.net;
    for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
      const l = adj.out[k]!;
      const to = this.ground.problem.links.to[l]!;
      if (this.orders(l) && --this.waiting[to]! === 0 && this.placed[to] === 0) this.offer(to);
    }
    if (this.ground.needs.back[j]!.length > 0) this.offerDeferred();
  }

  /** Those put off for want of stock that is there now. */
  private offerDeferred(): void {
    let left = 0;
    for (const d of this.deferred) {
      if (this.ledger.lacksStock(d)) this.deferred[left++] = d;
      else this.offer(d);
    }
    this.deferred.length = left;
  }

  /** Takes a placed job and everything placed that follows from it out again. */
  private sendBack(first: number): void {
    const p = this.ground.problem;
    const { adj } = this.ground.net;
    const todo = [first];
    for (let j = todo.pop(); j !== undefined; j = todo.pop()) {
      if (this.placed[j] === 0 || (p.fixed[j]! >= 0 && j !== first)) continue;
      this.ledger.hold(j, this.start[j]!, this.finish[j]!, -1);
      this.placed[j] = 0;
      for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
        const l = adj.out[k]!;
        if (!this.orders(l)) continue;
        this.waiting[p.links.to[l]!]!++;
        todo.push(p.links.to[l]!);
      }
      // What was taken after a return may have rested on it.
      for (const m of this.ground.needs.back[j]!) {
        for (const s of p.spans) if (s.stock === m.stock && this.start[s.out]! >= this.finish[j]!) todo.push(s.out);
      }
      if (this.waiting[j] === 0) this.offer(j);
    }
    this.offerDeferred();
  }

  private offer(j: number): void {
    if (this.queued[j] === 1 || this.placed[j] === 1) return;
    this.queued[j] = 1;
    this.heap.push(this.ground.turn[j]!, this.key[j]!);
  }

  private orders(l: number): boolean {
    const { links } = this.ground.problem;
    return links.least[l]! >= 0 && links.from[l] !== links.to[l];
  }

  private firstOpen(): number {
    const { order } = this.ground.net;
    for (let k = 0; k < order.length; k++) if (this.placed[order[k]!] === 0) return order[k]!;
    return -1;
  }

  private stuckAt(job: number, of: Stuck["of"]): Attempt {
    return { solution: null, stuck: { job, of } };
  }
}
