import { solutionOf } from "../job";
import { lastOf } from "../last-of";
import type { Problem, Solution } from "../problem";
import type { Passes } from "../search/passes";
import { fewLevels, head } from "./clauses";
import { Engine } from "./engine";
import type { Model } from "./model";
import { Runs } from "./runs";

/** Clauses of no more levels than these are kept while they were used among the last so many clashes. */
const someLevels = 6;
const lately = 10_000;
/** How fast clashes fade, and what guides most runs. A search that passes find schedules for has to refute: it does so sooner as its clauses want. */
const alone = { fading: 0.95, most: "best" } as const;
const besidePasses = { fading: 0.85, most: "wanted" } as const;
/** Passes of generation between two runs, for each clash so far. */
const passShare = 0.5;
/** So many clauses are there before some are forgotten, and so many more the next time. */
const mostClauses = 4000;
const moreClauses = 300;

/**
 * Branch and bound on the finish of all by clause learning, a few clashes at a time. What it says is true whenever it stops: a schedule, a bound below
 * which none can be, and `done` when the two meet or nothing can be at all. Deterministic: work is counted in clashes and schedules found.
 */
export class ProofSearch {
  done = false;
  best: Solution | null = null;
  bound: number;
  /** Clashes and schedules so far. */
  work = 0;
  clashes = 0;
  private readonly engine: Engine;
  private readonly aim: Int32Array;
  private target: number;
  private readonly runs = new Runs();
  private readonly manners: typeof alone | typeof besidePasses;
  private mostClauses = mostClauses;
  private opened = false;
  /** Between two runs, passes until there have been as many as is their share. */
  private passed = 0;
  private passing = false;

  constructor(
    private readonly problem: Problem,
    private readonly model: Model,
    first: Solution | null,
    private readonly passes: Passes | null = null,
  ) {
    this.manners = passes === null ? alone : besidePasses;
    this.engine = new Engine(model, this.manners.fading);
    const { finish, trail } = this.engine;
    this.bound = model.low[finish]!;
    this.target = model.high[finish]!;
    this.aim = new Int32Array(trail.variables);
    if (first !== null) this.take(first);
  }

  /** Goes on for so many units of work or so many rounds of propagation, or until done. Where it pauses has no say in what it finds. */
  step(units: number, rounds = Number.POSITIVE_INFINITY): void {
    const until = this.work + units;
    if (!this.opened && units > 0) this.open();
    const { engine } = this;
    for (let round = 0; !this.done && this.work < until && round < rounds; round++) {
      if (this.passing) {
        this.pass();
        continue;
      }
      if (!engine.propagate()) {
        this.work++;
        this.clashes++;
        this.runs.left--;
        if (!engine.recover()) this.close();
        continue;
      }
      if (engine.trail.depth === 0) this.settle();
      if (this.done) return;
      if (this.runs.left <= 0 && engine.trail.depth > 0) this.restart();
      else if (!this.decide()) this.found();
    }
  }

  private open(): void {
    this.opened = true;
    if (!this.limit() || !this.engine.propagate(true)) this.close();
  }

  private close(): void {
    this.done = true;
    if (this.best !== null) this.bound = lastOf(this.best.finish);
  }

  private settle(): void {
    const { trail, finish } = this.engine;
    trail.settle();
    this.bound = Math.max(this.bound, trail.low(finish));
  }

  /** Only what finishes before the best so far is of interest. */
  private limit(): boolean {
    const { trail, finish } = this.engine;
    return trail.raise(2 * finish + 1, -this.target, 0, 0, 0);
  }

  private restart(): void {
    const { engine } = this;
    engine.backTo(0);
    this.passing = this.best !== null && this.passes !== null && this.passed < passShare * this.clashes;
    // Where only a finish at the bound is still looked for, there more likely is one: then most runs keep to the best schedule.
    this.runs.next(this.bound === this.target ? "best" : this.manners.most);
    if (engine.clauses.count > this.mostClauses) {
      this.forget();
      this.mostClauses += moreClauses;
    }
  }

  /**
   * Clauses of few levels stay, those of some while they are in use, and of the rest the half that was used last (three tiers after Oh 2015, "Between SAT and
   * UNSAT", SAT 2015, from memory).
   */
  private forget(): void {
    const { clauses } = this.engine;
    const { cells, now } = clauses;
    const stays = (c: number): boolean => cells[c - 2]! <= fewLevels || (cells[c - 2]! <= someLevels && cells[c - 1]! >= now - lately);
    const uses: number[] = [];
    for (let c = head; c < clauses.end + head; c += clauses.size(c) + head) if (!stays(c)) uses.push(cells[c - 1]!);
    uses.sort((a, b) => a - b);
    const middle = uses[uses.length >> 1] ?? 0;
    clauses.reduce((c) => stays(c) || cells[c - 1]! > middle);
  }

  /**
   * The undecided atom that had most to do with clashes, as it is in the best schedule (solution-guided: Demirovic, Chu & Stuckey 2018, from memory) or
   * else as more clauses want it; where none is left, the job that can start first starts then. False when everything is decided.
   */
  private decide(): boolean {
    const { engine, model, aim } = this;
    const { trail, atoms, activity } = engine;
    const { manner } = this.runs;
    if (manner === "bound" && trail.depth === 0 && trail.low(engine.finish) < trail.high(engine.finish)) {
      trail.decide(2 * engine.finish + 1, -trail.low(engine.finish));
      return true;
    }
    const a = activity.next();
    if (a >= 0) {
      const literal = manner !== "best" ? activity.wanted(a) : aim[atoms.variable[a]!]! >= atoms.value[a]! ? 2 * a : 2 * a + 1;
      trail.decide(atoms.side[literal]!, atoms.bound[literal]!);
      return true;
    }
    let pick = -1;
    for (let x = 0; x <= model.jobs; x++) {
      if (trail.low(x) === trail.high(x)) continue;
      if (pick < 0 || trail.low(x) < trail.low(pick) || (trail.low(x) === trail.low(pick) && trail.high(x) < trail.high(pick))) pick = x;
    }
    if (pick < 0) return false;
    trail.decide(2 * pick + 1, -trail.low(pick));
    return true;
  }

  private found(): void {
    const { trail } = this.engine;
    const start = Int32Array.from({ length: this.model.jobs }, (_, j) => trail.low(j));
    this.work++;
    this.engine.backTo(0);
    this.take(solutionOf(this.problem, start));
    if (!this.limit()) this.close();
  }

  private pass(): void {
    const { passes, better, level } = this.passes!.next(this.best!);
    this.passed += passes;
    this.work += passes;
    this.passing = this.passed < passShare * this.clashes;
    if (level !== null) this.guide(level);
    if (better === null) return;
    this.take(better);
    if (!this.limit()) this.close();
  }

  private take(solution: Solution): void {
    this.best = solution;
    this.target = lastOf(solution.finish) - 1;
    this.guide(solution.start);
  }

  /** From now on runs around the best schedule keep to this one, which is as good (one of several elite ones: Beck 2007, JAIR 29:49-77, from memory). */
  private guide(start: Int32Array): void {
    const { orders, finish } = this.engine;
    this.aim.set(start);
    this.aim[finish] = 0;
    orders.pairs.forEach((p, k) => {
      this.aim[orders.base + k] = start[p.first]! < start[p.second]! ? 1 : 0;
    });
  }
}
