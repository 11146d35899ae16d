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
  /** Those of the selectors that hold before anything is decided and are not met by then. */
  #pending: Int32Array = new Int32Array(0);
  #first = 0;
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
    this.#kept.push(this.#first, this.#root, this.#place, this.#inGroup);
  }

  /** Back to how things were when level `level + 1` began. */
  goBack(level: number): void {
    const at = 4 * level;
    if (at >= this.#kept.length) return;
    this.#first = this.#kept[at] as number;
    this.#root = this.#kept[at + 1] as number;
    this.#place = this.#kept[at + 2] as number;
    this.#inGroup = this.#kept[at + 3] as number;
    this.#kept.length = at;
  }

  /** Leaves out for good what is met before anything is decided. Call at level 0 only. */
  settle(clauses: Clauses, trail: Trail): void {
    if (this.#settled === trail.length) return;
    this.#roots = unmet(this.#roots, clauses, trail);
    const pending = new IntList(this.#pending.length + 16);
    for (const clause of this.#pending) pending.push(clause);
    const { length } = trail;
    for (let place = Math.max(0, this.#settled); place < length; place++) {
      const literal = trail.literals.data[place] as number;
      const first = this.#firstOf(literal);
      const end = first < 0 ? -1 : (this.#groupStart[variableOf(literal) + 1] as number);
      for (let at = first; at < end; at++) pending.push(this.#group[at] as number);
    }
    this.#pending = unmet(pending.packed(), clauses, trail);
    this.#settled = trail.length;
    [this.#first, this.#root, this.#place, this.#inGroup] = [0, 0, trail.length, 0];
  }

  /** Where the group of a selector that holds begins; -1 where the literal is none. */
  #firstOf(literal: number): number {
    const variable = variableOf(literal);
    return (literal & 1) === 1 || variable + 1 >= this.#groupStart.length ? -1 : (this.#groupStart[variable] as number);
  }

  /** The first clause that matters and has no literal that holds; -1 when all are met. */
  next(clauses: Clauses, trail: Trail): number {
    for (; this.#first < this.#pending.length; this.#first++) {
      const clause = this.#pending[this.#first] as number;
      if (!met(clause, clauses, trail)) return clause;
    }
    for (; this.#place < trail.length; this.#place++, this.#inGroup = 0) {
      const literal = trail.literals.data[this.#place] as number;
      const first = this.#firstOf(literal);
      if (first < 0) continue;
      const size = (this.#groupStart[variableOf(literal) + 1] as number) - first;
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

function unmet(list: Int32Array, clauses: Clauses, trail: Trail): Int32Array {
  const left = new IntList(list.length);
  for (let i = 0; i < list.length; i++) if (!met(list[i] as number, clauses, trail)) left.push(list[i] as number);
  return left.packed();
}

function met(clause: number, clauses: Clauses, trail: Trail): boolean {
  const end = clauses.end(clause);
  const literals = clauses.literals.data;
  for (let at = clauses.first(clause); at < end; at++) if (trail.values[literals[at] as number] === 1) return true;
  return false;
}
