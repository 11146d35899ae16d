import { type ClauseProblem, IntList } from "../../graph";
import type { Program } from "./program";

/** The order layer: bare precedences only; what binds time alone counts as true. Variables are the program's atoms. */
export function orderLayer(program: Program): ClauseProblem {
  const { clauses } = program;
  const start = new IntList(clauses + 1);
  const literals = new IntList(2 * program.literals.length);
  const statement = new IntList(clauses);
  const guard = new IntList(clauses);
  start.push(0);
  for (let c = 0; c < clauses; c++) {
    const first = program.clauseStart.at(c);
    const end = program.clauseStart.at(c + 1);
    if (bindsTimeOnly(program, first, end)) continue;
    for (let at = first; at < end; at++) literals.push(orderLiteral(program, program.literals.at(at)));
    close(program, c, literals, guard);
    start.push(literals.length);
    statement.push(program.fact.at(c));
  }
  return {
    nodes: program.nodes,
    variables: program.atoms,
    from: precedences(program, program.from),
    to: precedences(program, program.to),
    start: start.packed(),
    literals: literals.packed(),
    statement: statement.packed(),
    guard: guard.packed(),
    time: null,
  };
}

/** The literal as the order layer knows it: without amounts. */
export function orderLiteral(program: Program, literal: number): number {
  const atom = literal >> 1;
  return program.isSelector(atom) ? literal : 2 * program.bare.at(atom) + (literal & 1);
}

const timeOnly = (program: Program, atom: number): boolean => !program.isSelector(atom) && !program.orders(atom);

function bindsTimeOnly(program: Program, first: number, end: number): boolean {
  for (let at = first; at < end; at++) if (timeOnly(program, program.literals.at(at) >> 1)) return true;
  return false;
}

/** Ends a clause with its negated guard. */
export function close(program: Program, clause: number, literals: IntList, guard: IntList): void {
  const selector = program.guard.at(clause);
  if (selector >= 0) literals.push(2 * selector + 1);
  guard.push(selector);
}

/** Ends of precedences; -1 for selectors and for links that only bind time. */
export function precedences(program: Program, ends: IntList): Int32Array {
  const list = ends.packed();
  for (let atom = 0; atom < list.length; atom++) if (program.bare.at(atom) < 0) list[atom] = -1;
  return list;
}
