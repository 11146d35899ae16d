import type { ElapsedMinute } from "../../base";
import type { Problem, Solution } from "../problem";
import { Engine } from "./engine";
import type { Model } from "./model";

/** Clashes until the search starts over, times the sequence of Luby, Sinclair & Zuckerman (1993). */
const restartUnit = 100;

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
  private untilRestart = restartUnit;
  private restarts = 0;
  private mostClauses = 4000;
  private opened = false;

  constructor(
    private readonly problem: Problem,
    private readonly model: Model,
    first: Solution | null,
  ) {
    this.engine = new Engine(model);
    const { finish, trail } = this.engine;
    this.bound = model.low[finish]!;
    this.target = model.high[finish]!;
    this.aim = new Int32Array(trail.variables);
    if (first !== null) this.take(first);
  }

  /** Goes on for so many units of work, or until done. */
  step(units: number): void {
    const until = this.work + units;
    if (!this.opened && units > 0) this.open();
    const { engine } = this;
    while (!this.done && this.work < until) {
      if (!engine.propagate()) {
        this.work++;
        this.clashes++;
        this.untilRestart--;
        if (!engine.recover()) this.close();
        continue;
      }
      if (engine.trail.depth === 0) this.settle();
      if (this.done) return;
      if (this.untilRestart <= 0 && engine.trail.depth > 0) this.restart();
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
    this.restarts++;
    this.untilRestart = restartUnit * luby(this.restarts);
    if (engine.clauses.count > this.mostClauses) {
      this.forget();
      this.mostClauses += 300;
    }
  }

  /** Half of the clauses that span more than two levels go, those that span most first, older ones among equals. */
  private forget(): void {
    const { clauses } = this.engine;
    const spans: number[] = [];
    for (let c = 3; c < clauses.end + 3; c += clauses.size(c) + 3) spans.push(clauses.cells[c - 2]!);
    spans.sort((a, b) => a - b);
    const middle = Math.max(2, spans[spans.length >> 1]!);
    let equal = spans.filter((s) => s === middle).length - Math.max(0, (spans.length >> 1) - spans.filter((s) => s < middle).length);
    this.engine.clauses.reduce((c) => {
      const spread = clauses.cells[c - 2]!;
      if (spread !== middle || middle === 2) return spread <= middle;
      return --equal < 0;
    });
  }

  private decide(): boolean {
    const { engine, model, aim } = this;
    const { trail, atoms, activity } = engine;
    const a = activity.next();
    if (a >= 0) {
      const x = atoms.variable[a]!;
      const literal = aim[x]! >= atoms.value[a]! ? 2 * a : 2 * a + 1;
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
    const p = this.problem;
    const finish = start.map((s, j) => p.clocks[p.clock[j]!]!.advance(s as ElapsedMinute, p.amount[j]!));
    this.work++;
    this.engine.backTo(0);
    this.take({ start, finish });
    if (!this.limit()) this.close();
  }

  private take(solution: Solution): void {
    this.best = solution;
    const { orders, finish } = this.engine;
    this.target = lastOf(solution.finish) - 1;
    this.aim.set(solution.start);
    this.aim[finish] = 0;
    orders.pairs.forEach((p, k) => {
      this.aim[orders.base + k] = solution.start[p.first]! < solution.start[p.second]! ? 1 : 0;
    });
  }
}

function lastOf(finish: Int32Array): number {
  return finish.reduce((a, b) => Math.max(a, b), 0);
}

/** 1 1 2 1 1 2 4 ... */
function luby(k: number): number {
  let size = 1;
  while (size < k + 1) size = 2 * size + 1;
  let at = k;
  while (size - 1 !== at) {
    size = (size - 1) >> 1;
    at %= size;
  }
  return (size + 1) >> 1;
}
