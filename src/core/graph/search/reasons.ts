import type { Clauses } from "./clauses";
import { fails } from "./problem";
import type { Theory } from "./theory";
import { byTheory, chosen, type Trail } from "./trail";

/** What cannot stand: a clause all of whose literals fail, or (clause -1) variables that hold and cannot all hold. */
export interface Clash {
  readonly clause: number;
  readonly literals: readonly number[];
}

export const ringClash = (variables: readonly number[]): Clash => ({ clause: -1, literals: variables.map(fails) });

export function clauseClash(clauses: Clauses, clause: number): Clash {
  return { clause, literals: literalsOf(clauses, clause, -1) };
}

/** The failing literals that gave a variable its value. Empty for one that was chosen. */
export function reasonLiterals(variable: number, clauses: Clauses, trail: Trail, theory: Theory): number[] {
  const reason = trail.reasonOf(variable);
  if (reason === chosen) return [];
  return reason === byTheory ? theory.why(variable, trail).map(fails) : literalsOf(clauses, reason, variable);
}

function literalsOf(clauses: Clauses, clause: number, except: number): number[] {
  const literals: number[] = [];
  for (let at = clauses.first(clause); at < clauses.end(clause); at++) {
    const literal = clauses.literal(at);
    if (literal >> 1 !== except) literals.push(literal);
  }
  return literals;
}
