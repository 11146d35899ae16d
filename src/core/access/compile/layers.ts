import { type ClauseProblem, IntList } from "../../graph";
import type { Program } from "./program";

/** The order layer: bare precedences only; what binds time alone counts as true, unless a refusal speaks of it. Variables are the program's atoms. */
export function orderLayer(program: Program): ClauseProblem {
  const variable = (atom: number): number => orderVariable(program, atom);
  const problem = problemOf(program, variable, (atom) => countsAsTrue(program, atom));
  return { ...withRefusals(program, problem), time: null };
}

/** The variable that an atom is in the order layer: itself without amounts, or itself where a refusal speaks of it. */
export const orderVariable = (program: Program, atom: number): number =>
  program.isSelector(atom) || program.live.has(atom) ? atom : program.bare.at(atom);

export const countsAsTrue = (program: Program, atom: number): boolean =>
  !program.isSelector(atom) && !program.orders(atom) && !program.live.has(atom);

function withRefusals(program: Program, problem: Omit<ClauseProblem, "time">): Omit<ClauseProblem, "time"> {
  const { refusals } = program;
  if (refusals.length === 0) return problem;
  const start = [...problem.start];
  for (const { literals } of refusals) start.push((start[start.length - 1] as number) + literals.length);
  const added = (list: Int32Array, more: readonly number[]): Int32Array => Int32Array.from([...list, ...more]);
  return {
    ...problem,
    start: Int32Array.from(start),
    literals: added(
      problem.literals,
      refusals.flatMap(({ literals }) => literals),
    ),
    statement: added(
      problem.statement,
      refusals.map(({ fact }) => fact),
    ),
    guard: added(
      problem.guard,
      refusals.map(() => -1),
    ),
  };
}

/** @param met options that count as true, so that a clause with one is left out */
export function problemOf(
  program: Program,
  variable: (atom: number) => number,
  met: (atom: number) => boolean,
): Omit<ClauseProblem, "time"> {
  const start = new IntList(program.clauses + 1);
  const literals = new IntList(2 * program.options.length);
  const statement = new IntList(program.clauses);
  const guard = new IntList(program.clauses);
  start.push(0);
  for (let c = 0; c < program.clauses; c++) {
    const before = literals.length;
    const end = program.clauseStart.at(c + 1);
    let at = program.clauseStart.at(c);
    for (; at < end && !met(program.options.at(at)); at++) literals.push(2 * variable(program.options.at(at)));
    if (at < end) {
      literals.length = before;
      continue;
    }
    const selector = program.guard.at(c);
    if (selector >= 0) literals.push(2 * selector + 1);
    guard.push(selector);
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
  };
}

/** Ends of precedences; -1 for selectors and for links that only bind time. */
function precedences(program: Program, ends: IntList): Int32Array {
  const list = ends.packed();
  for (let atom = 0; atom < list.length; atom++) if (program.bare.at(atom) < 0) list[atom] = -1;
  return list;
}
