import Logic from "logic-solver";
import type { ElapsedMinute } from "../../src/core/base";
import type { Problem, WitnessPart } from "../../src/core/schedule";
import { nameOf } from "./brute";

/**
 * A small problem for a general solver of propositional logic: a variable for every minute in which a job can start or end, and one for every part of the
 * problem that has to hold. Of clocks only readings are used.
 */
export class SatProblem {
  /** Several problems may share a solver, each with a name of its own: to make one takes longer than to solve a problem. */
  constructor(
    private readonly p: Problem,
    private readonly solver: Logic.Solver,
    private readonly name: string,
  ) {
    for (let j = 0; j < p.jobs; j++) this.job(j);
    for (let l = 0; l < p.links.count; l++) this.link(l);
    p.capacities.forEach((_, c) => void this.capacity(c));
    p.stocks.forEach((_, s) => void this.stock(s));
  }

  /** Whether the parts can hold together, with everything finished by `finish`. */
  canBe(parts: readonly WitnessPart[], finish: number = this.p.horizon): boolean {
    return this.solver.solveAssuming(this.asked(parts, finish)) !== null;
  }

  /** The earliest finish at which the parts can hold together, by asking for less until there is none; -1: they cannot. */
  finish(parts: readonly WitnessPart[]): number {
    let best = -1;
    const ending = `${this.name} f `;
    for (let limit: number = this.p.horizon; limit >= 0; limit = best - 1) {
      const found = this.solver.solveAssuming(this.asked(parts, limit)) as { getTrueVars(): string[] } | null;
      if (found === null) break;
      best = found.getTrueVars().reduce((last, name) => (name.startsWith(ending) ? Math.max(last, Number(name.split(" ")[3])) : last), 0);
    }
    return best;
  }

  private asked(parts: readonly WitnessPart[], finish: number): Logic.Term {
    const late: Logic.Term[] = [];
    if (finish < this.p.horizon) for (let j = 0; j < this.p.jobs; j++) late.push(Logic.not(this.after(j, 1, finish + 1)));
    return Logic.and(...parts.map((part) => this.part(nameOf(part))), ...late);
  }

  /** A job starts, or ends, at a minute. */
  private is(job: number, end: number, t: number): Logic.Term {
    return `${this.name} ${end === 0 ? "s" : "f"} ${job} ${t}`;
  }

  /** A job starts, or ends, at a minute or later. */
  private after(job: number, end: number, t: number): Logic.Term {
    return t > this.p.horizon ? Logic.FALSE : `after ${this.is(job, end, t)}`;
  }

  private before(job: number, end: number, t: number): Logic.Term {
    return Logic.not(this.after(job, end, t));
  }

  /** The part of the problem with this name holds. */
  private part(name: string): Logic.Term {
    return `part ${this.name} ${name}`;
  }

  private when(conditions: readonly Logic.Term[], then: Logic.Term): void {
    this.solver.require(Logic.implies(Logic.and(...conditions), then));
  }

  private gathered(clock: number, from: number, to: number): number {
    const c = this.p.clocks[clock]!;
    return c.reading(to as ElapsedMinute) - c.reading(from as ElapsedMinute);
  }

  private job(j: number): void {
    const { p } = this;
    const minutes = Array.from({ length: p.horizon + 1 }, (_, t) => t);
    for (const end of [0, 1]) {
      this.solver.require(Logic.exactlyOne(...minutes.map((t) => this.is(j, end, t))), this.after(j, end, 0));
      for (const t of minutes)
        this.solver.require(Logic.equiv(this.after(j, end, t), Logic.or(this.is(j, end, t), this.after(j, end, t + 1))));
    }
    for (const t of minutes) {
      this.when([this.is(j, 0, t)], this.after(j, 1, t));
      const whole = [this.part(`job ${j}`), this.is(j, 0, t)];
      const end = minutes.find((u) => u >= t && this.gathered(p.clock[j]!, t, u) >= p.amount[j]!);
      const running = this.gathered(p.clock[j]!, t, t + 1) > 0;
      const fits = running && end !== undefined && (p.unbroken[j] === 0 || end - t === p.amount[j]);
      this.when(whole, fits ? this.is(j, 1, end) : Logic.FALSE);
    }
    this.when([this.part(`release ${j}`)], this.after(j, 0, p.release[j]!));
    if (p.due[j]! < p.horizon) this.when([this.part(`due ${j}`)], this.before(j, 1, p.due[j]! + 1));
    if (p.fixed[j]! >= 0) this.when([this.part(`fixed ${j}`)], p.fixed[j]! <= p.horizon ? this.is(j, 0, p.fixed[j]!) : Logic.FALSE);
  }

  private link(l: number): void {
    const { links, horizon } = this.p;
    const [from, to, fromEnd, toEnd, clock] = [links.from[l]!, links.to[l]!, links.fromEnd[l]!, links.toEnd[l]!, links.clock[l]!];
    for (let t = 0; t <= horizon; t++) {
      const there = this.is(from, fromEnd, t);
      if (links.least[l]! >= 0) {
        let u = t;
        while (u <= horizon && this.gathered(clock, t, u) < links.least[l]!) u++;
        this.when([this.part(`least ${l}`), there], this.after(to, toEnd, u));
      }
      if (links.most[l]! >= 0) {
        let u = t;
        while (u <= horizon && this.gathered(clock, t, u) <= links.most[l]!) u++;
        this.when([this.part(`most ${l}`), there], this.before(to, toEnd, u));
      }
    }
  }

  private capacity(c: number): void {
    const { p } = this;
    const { kind, holds, times, levels } = p.capacities[c]!;
    for (let t = 0; t < p.horizon; t++) {
      const users: Logic.Term[] = [];
      const numbers: number[] = [];
      for (let d = 0; d < p.demands.length; d += 3) {
        const j = p.demands[d]!;
        const number = p.demands[d + 2]!;
        if (p.demands[d + 1] !== c) continue;
        const through = holds === "span" || (kind === "alone" && number >= levels.reduce((a, b) => Math.max(a, b), 0));
        if (!through && this.gathered(p.clock[j]!, t, t + 1) === 0) continue;
        users.push(Logic.and(this.part(`job ${j}`), this.before(j, 0, t + 1), this.after(j, 1, t + 1)));
        numbers.push(number);
      }
      const there =
        levels[
          Math.max(
            0,
            times.reduce((at, from, k) => (from <= t ? k : at), 0),
          )
        ]!;
      if (users.length > 0)
        this.when([this.part(`capacity ${c}`)], Logic.lessThanOrEqual(Logic.weightedSum(users, numbers), Logic.constantBits(there)));
    }
  }

  /** At every minute what was in hand, has arrived or is back must be at least what ever went out. */
  private stock(s: number): void {
    const { p } = this;
    const { inHand, arrivals } = p.stocks[s]!;
    const spans = p.spans.filter((x) => x.stock === s);
    if (spans.length === 0) return;
    for (let t = 0; t <= p.horizon; t++) {
      const begun = (j: number): Logic.Term => this.before(j, 0, t + 1);
      const ended = (j: number): Logic.Term => this.before(j, 1, t + 1);
      const back = spans.filter((x) => x.back >= 0);
      const come = [...arrivals.map((a) => ended(a.job)), ...back.map((x) => Logic.and(begun(x.out), ended(x.back)))];
      const numbers = [...arrivals.map((a) => a.number), ...back.map((x) => x.number - x.loss)];
      const out = Logic.weightedSum(
        spans.map((x) => begun(x.out)),
        spans.map((x) => x.number),
      );
      const there =
        come.length === 0 ? Logic.constantBits(inHand) : Logic.sum(Logic.constantBits(inHand), Logic.weightedSum(come, numbers));
      this.when([this.part(`stock ${s}`)], Logic.lessThanOrEqual(out, there));
    }
  }
}
