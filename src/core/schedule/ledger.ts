import { type ElapsedMinute, never } from "../base";
import { finishOf, fitStart } from "./job";
import type { Needs } from "./needs";
import type { Problem, Stuck } from "./problem";
import { Profile } from "./profile";
import { StockRoom } from "./stock";

/** What is free of every capacity and left of every stock while a schedule is being made. */
export class Ledger {
  /** Why the last search ended at `never`. */
  lacking: Stuck["of"] = { kind: "calendar" };
  private readonly profiles: Profile[];
  private readonly stock: StockRoom;

  constructor(
    private readonly problem: Problem,
    private readonly needs: Needs,
  ) {
    this.profiles = problem.capacities.map((c) => new Profile(c.times, c.levels));
    this.stock = new StockRoom(problem);
  }

  /** The first start at or after `t` at which the clock runs and everything asked for is free. */
  search(j: number, t: number): number {
    const p = this.problem;
    const clock = p.clocks[p.clock[j]!]!;
    const amount = p.amount[j]!;
    this.lacking = { kind: "calendar" };
    let from = this.outFrom(j, t);
    if (from >= never) return never;
    for (;;) {
      const s = fitStart(p, j, from as ElapsedMinute);
      if (s >= never) return never;
      // Most tries fail in the first stretch: the rest of the job is only worked out when that is free.
      const end = Math.min(clock.runEnd(s), s + amount) as ElapsedMinute;
      let next = this.short(j, s, end, 0);
      if (next < 0 && s + amount > end) {
        const f = finishOf(p, j, s);
        if (f >= never) return never;
        next = this.short(j, s, f, 1);
        for (let a = clock.begin(end); a < f && next < 0; a = clock.begin(clock.runEnd(a)))
          next = this.short(j, a, Math.min(clock.runEnd(a), f), 0);
      }
      if (next < 0) return s;
      if (next >= never) return never;
      from = next;
    }
  }

  /** Until when something asked for falls short in [from, to), of what is held through pauses (1) or all (0); -1: nothing does. */
  private short(j: number, from: number, to: number, onlySpans: 0 | 1): number {
    const { needs } = this;
    for (let d = needs.at[j]!; d < needs.at[j + 1]!; d++) {
      if (onlySpans === 1 && needs.span[d] === 0) continue;
      const next = this.profiles[needs.capacity[d]!]!.shortUntil(from, to, needs.number[d]!);
      if (next >= 0) {
        this.lacking = { kind: "capacity", index: needs.capacity[d]! };
        return next;
      }
    }
    return -1;
  }

  /** From when on everything the job takes out of stock is there for good; `never` when only something still to be placed can bring it. */
  private outFrom(j: number, t: number): number {
    let from = t;
    for (const m of this.needs.out[j]!) {
      from = Math.max(from, this.stock.leftFrom(m.stock, from, m.number));
      if (from >= never) this.lacking = { kind: "stock", index: m.stock };
    }
    return from;
  }

  /** Enters a job from `s` to `f` (1), or strikes it out again (-1). */
  hold(j: number, s: number, f: number, sign: 1 | -1): void {
    const p = this.problem;
    const { needs } = this;
    const clock = p.clocks[p.clock[j]!]!;
    for (let d = needs.at[j]!; d < needs.at[j + 1]!; d++) {
      const profile = this.profiles[needs.capacity[d]!]!;
      const number = sign * needs.number[d]!;
      if (needs.span[d] === 1) profile.take(s, f, number);
      else
        for (let a = s; a < f; a = clock.begin(clock.runEnd(a as ElapsedMinute))) {
          profile.take(a, Math.min(clock.runEnd(a as ElapsedMinute), f), number);
        }
    }
    for (const m of needs.out[j]!) sign === 1 ? this.stock.put(m.stock, s, -m.number) : this.stock.undo(m.stock, s, -m.number);
    for (const m of needs.back[j]!) sign === 1 ? this.stock.put(m.stock, f, m.number) : this.stock.undo(m.stock, f, m.number);
  }
}
