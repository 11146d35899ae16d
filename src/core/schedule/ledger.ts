import { never } from "../base";
import { Full } from "./full";
import type { Needs } from "./needs";
import type { Problem, Stuck } from "./problem";
import { Chunks, Profile } from "./profile";
import { type Runs, runsOf } from "./runs";
import { StockRoom } from "./stock";

/** Which of what is asked for is looked at: all, what is held through pauses, people. */
const everything = 0;
const spans = 1;
const people = 2;
type Sort = typeof everything | typeof spans | typeof people;

/** What is free of every capacity and left of every stock while a schedule is being made. */
export class Ledger {
  private readonly profiles: Profile[];
  private readonly stock: StockRoom;
  private readonly runs: Runs[];
  /** By kind of job, runs of its clock in which not even the shortest of the kind finds people enough to start. */
  private readonly full: Full[];
  /** What the last search ended for want of: a capacity, a stock; -1: neither. */
  private noCapacity = -1;
  private noStock = -1;

  constructor(
    private readonly problem: Problem,
    private readonly needs: Needs,
  ) {
    const chunks = new Chunks(problem.capacities.reduce((sum, c) => sum + c.times.length, 0) + 3 * problem.jobs);
    this.profiles = problem.capacities.map((c) => new Profile(chunks, c.times, c.levels));
    this.stock = new StockRoom(problem);
    this.runs = problem.clocks.map(runsOf);
    this.full = needs.kinds.map(() => new Full());
  }

  /** Why the last search ended at `never`. */
  get lacking(): Stuck["of"] {
    if (this.noStock >= 0) return { kind: "stock", index: this.noStock };
    return this.noCapacity >= 0 ? { kind: "capacity", index: this.noCapacity } : { kind: "calendar" };
  }

  /** Whether a stock that the job takes from has too little for it, whenever: only what is still to be placed can bring it. */
  lacksStock(j: number): boolean {
    this.noStock = -1;
    for (const m of this.needs.out[j]!) if (this.stock.leftAtLast(m.stock) < m.number) this.noStock = m.stock;
    return this.noStock >= 0;
  }

  /** The first start at or after `t` at which the clock runs and everything asked for is free. */
  search(j: number, t: number): number {
    this.noCapacity = -1;
    if (this.lacksStock(j)) return never;
    const p = this.problem;
    const runs = this.runs[p.clock[j]!]!;
    const amount = p.amount[j]!;
    const full = amount > 0 ? this.full[this.needs.kind[j]!]! : none;
    let from = this.outFrom(j, t);
    for (let run = full.next(runs.at(from)); runs.has(run); run = full.next(runs.at(from))) {
      let s = Math.max(from, runs.from(run));
      if (p.unbroken[j] === 1) {
        while (s + amount > runs.to(run) && s < p.horizon) {
          run = full.next(run + 1);
          if (!runs.has(run)) return never;
          s = runs.from(run);
        }
        if (s >= p.horizon) return never;
      }
      const next = this.shortFrom(j, run, s, amount, everything);
      if (next < 0) return s;
      if (next >= never) return never;
      if (amount > 0 && next >= runs.to(run) && this.isFull(j, run)) full.add(run);
      from = next;
    }
    return never;
  }

  /** Where so much work on the job's clock ends when it starts at `s`, a running minute; `never` when its clock never gathers the amount. */
  finishOf(j: number, s: number, amount = this.problem.amount[j]!): number {
    const runs = this.runs[this.problem.clock[j]!]!;
    let run = runs.at(s);
    let end = s + amount;
    while (end > runs.to(run)) {
      if (!runs.has(run + 1)) return never;
      end += runs.from(run + 1) - runs.to(run);
      run++;
    }
    return end;
  }

  /** As `short`, for all the time that so much work takes from `s` in a run. Most fail in that run: the rest is only looked at when it is free. */
  private shortFrom(j: number, run: number, s: number, amount: number, of: Sort): number {
    const runs = this.runs[this.problem.clock[j]!]!;
    const next = this.short(j, s, Math.min(runs.to(run), s + amount), of);
    if (next >= 0 || s + amount <= runs.to(run)) return next;
    const f = this.finishOf(j, s, amount);
    if (f >= never) return never;
    let later = of === everything ? this.short(j, s, f, spans) : -1;
    for (let r = run + 1; later < 0 && runs.from(r) < f; r++) {
      later = this.short(j, runs.from(r), Math.min(runs.to(r), f), of);
      if (runs.to(r) >= f) break;
    }
    return later;
  }

  /** Until when something asked for falls short in [from, to); -1: nothing does. */
  private short(j: number, from: number, to: number, of: Sort): number {
    const { needs } = this;
    let until = -1;
    for (let d = needs.at[j]!; d < needs.at[j + 1]! && until < never; d++) {
      if (of !== everything && (of === spans ? needs.span : needs.people)[d] === 0) continue;
      const next = this.profiles[needs.capacity[d]!]!.shortUntil(from, to, needs.number[d]!);
      if (next <= until) continue;
      until = next;
      this.noCapacity = needs.capacity[d]!;
    }
    return until;
  }

  /** Whether no job of this one's kind can start in the run. */
  private isFull(j: number, run: number): boolean {
    const runs = this.runs[this.problem.clock[j]!]!;
    const { shortest } = this.needs.kinds[this.needs.kind[j]!]!;
    for (let s = runs.from(run); s < runs.to(run); ) {
      if (this.problem.unbroken[j] === 1 && s + shortest > runs.to(run)) return true;
      s = this.shortFrom(j, run, s, shortest, people);
      if (s < 0) return false;
    }
    return true;
  }

  /** From when on everything the job takes out of stock is there for good. */
  private outFrom(j: number, t: number): number {
    let from = t;
    for (const m of this.needs.out[j]!) from = Math.max(from, this.stock.leftFrom(m.stock, from, m.number));
    return from;
  }

  /** Enters a job from `s` to `f` (1), or strikes it out again (-1). */
  hold(j: number, s: number, f: number, sign: 1 | -1): void {
    const { needs } = this;
    const runs = this.runs[this.problem.clock[j]!]!;
    for (let d = needs.at[j]!; d < needs.at[j + 1]!; d++) {
      const profile = this.profiles[needs.capacity[d]!]!;
      const number = sign * needs.number[d]!;
      if (needs.span[d] === 1) profile.take(s, f, number);
      else
        for (let r = runs.at(s); runs.from(r) < f; r++) {
          profile.take(Math.max(s, runs.from(r)), Math.min(runs.to(r), f), number);
          if (runs.to(r) >= f) break;
        }
    }
    for (const m of needs.out[j]!) sign === 1 ? this.stock.put(m.stock, s, -m.number) : this.stock.undo(m.stock, s, -m.number);
    for (const m of needs.back[j]!) sign === 1 ? this.stock.put(m.stock, f, m.number) : this.stock.undo(m.stock, f, m.number);
    if (sign === -1) this.openAgain(s, f);
  }

  /** What was full between `s` and `f` may have room again. */
  private openAgain(s: number, f: number): void {
    this.needs.kinds.forEach(({ clock }, kind) => {
      const runs = this.runs[clock]!;
      this.full[kind]!.remove(runs.at(s), runs.at(f));
    });
  }
}

/** For jobs that take no time: they need nobody at any minute. */
const none = new Full();
