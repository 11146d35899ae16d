import type { Clauses } from "./clauses";
import { type Clash, reasonLiterals } from "./reasons";
import type { Theory } from "./theory";
import { chosen, type Trail } from "./trail";

export interface Refutation {
  /** Statements used, ascending. */
  readonly statements: readonly number[];
  /** Assumed literals used, in the order they were assumed. */
  readonly assumptions: readonly number[];
}

/** Everything a clash rests on, back through learned clauses to the statements. All that was chosen must have been assumed. */
export function trace(clash: Clash, clauses: Clauses, trail: Trail, theory: Theory): Refutation {
  const statements = new Set<number>();
  const assumed: number[] = [];
  const seenClause = new Set<number>();
  const seenVariable = new Set<number>();
  const todo: number[] = [];
  const clause = (c: number): void => {
    if (!seenClause.has(c)) {
      seenClause.add(c);
      todo.push(2 * c);
    }
  };
  const variable = (v: number): void => {
    if (!seenVariable.has(v)) {
      seenVariable.add(v);
      todo.push(2 * v + 1);
    }
  };
  if (clash.clause >= 0) clause(clash.clause);
  for (const literal of clash.literals) variable(literal >> 1);
  for (let next = todo.pop(); next !== undefined; next = todo.pop()) {
    const which = next >> 1;
    if ((next & 1) === 0) {
      const statement = clauses.statement(which);
      if (statement >= 0) statements.add(statement);
      for (const parent of clauses.parents(which)) ((parent & 1) === 0 ? clause : variable)(parent >> 1);
    } else {
      const reason = trail.reasonOf(which);
      if (reason >= 0) clause(reason);
      else if (reason === chosen) assumed.push(which);
      for (const literal of reasonLiterals(which, clauses, trail, theory)) variable(literal >> 1);
    }
  }
  const place = (v: number) => trail.placeOf(v);
  return {
    statements: [...statements].sort((a, b) => a - b),
    assumptions: assumed.sort((a, b) => place(a) - place(b)).map((v) => trail.literals.at(place(v))),
  };
}

/** What it rests on that a literal fails which was to be assumed next. */
export function traceAssumed(literal: number, clauses: Clauses, trail: Trail, theory: Theory): Refutation {
  const { statements, assumptions } = trace({ clause: -1, literals: [literal] }, clauses, trail, theory);
  return { statements, assumptions: [...assumptions, literal] };
}
