import { IntList } from "../int-list";
import type { Clauses } from "./clauses";
import { type ClauseProblem, variableOf } from "./problem";
import type { Trail } from "./trail";

/**
 * Which clauses are still to be met: first those of the selectors that hold, in the order they came to hold, then the ones without a guard in
 * document order. Remembers per level how far it got, so that going back costs nothing.
 */
export class Agenda {
  #roots: Int32Array;
  readonly #groupStart: Int32Array;
  readonly #group: Int32Array;
  #root = 0;
  #place = 0;
  #inGroup = 0;
  /** How long the trail was when last settled. */
  #settled = -1;
  readonly #kept: number[] = [];

  constructor(problem: ClauseProblem, active: (clause: number) => boolean) {
    const { guard } = problem;
    const roots = new IntList(guard.length);
    const start = new Int32Array(problem.variables + 1);
    for (let clause = 0; clause < guard.length; clause++) {
      if (!active(clause)) continue;
      const selector = guard[clause] as number;
      if (selector < 0) roots.push(clause);
      else start[selector + 1] = (start[selector + 1] as number) + 1;
    }
    for (let v = 0; v < problem.variables; v++) start[v + 1] = (start[v + 1] as number) + (start[v] as number);
    const next = start.slice();
    this.#group = new Int32Array(start[problem.variables] as number);
    for (let clause = 0; clause < guard.length; clause++) {
      const selector = guard[clause] as number;
      if (selector < 0 || !active(clause)) continue;
      const at = next[selector] as number;
      next[selector] = at + 1;
      this.#group[at] = clause;
    }
    this.#groupStart = start;
    this.#roots = roots.packed();
  }

  /** Call when a level begins. */
  keep(): void {
    this.#kept.push(this.#root, this.#place, this.#inGroup);
  }

  /** Back to how things were when level `level + 1` began. */
  goBack(level: number): void {
    if (3 * level >= this.#kept.length) return;
    this.#root = this.#kept[3 * level] as number;
    this.#place = this.#kept[3 * level + 1] as number;
    this.#inGroup = this.#kept[3 * level + 2] as number;
    this.#kept.length = 3 * level;
  }

  /** Leaves out for good what is met before anything is decided. Call at level 0 only. */
  settle(clauses: Clauses, trail: Trail): void {
    if (this.#settled === trail.length) return;
    this.#settled = trail.length;
    this.#roots = this.#roots.filter((clause) => !met(clause, clauses, trail));
    this.#root = 0;
  }

  /** The first clause that matters and has no literal that holds; -1 when all are met. */
  next(clauses: Clauses, trail: Trail): number {
    for (; this.#place < trail.length; this.#place++, this.#inGroup = 0) {
      const literal = trail.literals.at(this.#place);
      const variable = variableOf(literal);
      if ((literal & 1) === 1 || variable + 1 >= this.#groupStart.length) continue;
      const first = this.#groupStart[variable] as number;
      const size = (this.#groupStart[variable + 1] as number) - first;
      for (; this.#inGroup < size; this.#inGroup++) {
        const clause = this.#group[first + this.#inGroup] as number;
        if (!met(clause, clauses, trail)) return clause;
      }
    }
    for (; this.#root < this.#roots.length; this.#root++) {
      const clause = this.#roots[this.#root] as number;
      if (!met(clause, clauses, trail)) return clause;
    }
    return -1;
  }
}

function met(clause: number, clauses: Clauses, trail: Trail): boolean {
  for (let at = clauses.first(clause); at < clauses.end(clause); at++) if (trail.value(clauses.literal(at)) === 1) return true;
  return false;
}
