import type { ClauseProblem } from "../../graph";
import type { Program } from "./program";

/** The order layer: bare precedences only; what binds time alone counts as true, unless a refusal speaks of it. Variables are the program's atoms. */
export function orderLayer(program: Program): ClauseProblem {
  return { ...withRefusals(program, problemOf(program, orderVariables(program))), time: null };
}

/** By atom, the variable it is in the order layer: itself without amounts, or itself where a refusal speaks of it; -1 where it counts as true. */
export function orderVariables(program: Program): Int32Array {
  const variables = program.bare.packed();
  const from = program.from.data;
  for (let atom = 0; atom < variables.length; atom++) if ((from[atom] as number) < 0) variables[atom] = atom;
  for (const atom of program.live) variables[atom] = atom;
  return variables;
}

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

/** @param variables by atom; -1 for an option that counts as true, so that a clause with one is left out */
export function problemOf(program: Program, variables: Int32Array): Omit<ClauseProblem, "time"> {
  const all = program.clauses;
  const clauseStart = program.clauseStart.data;
  const options = program.options.data;
  const guards = program.guard.data;
  const facts = program.fact.data;
  const start = new Int32Array(all + 1);
  const literals = new Int32Array(program.options.length + all);
  const statement = new Int32Array(all);
  const guard = new Int32Array(all);
  let clauses = 0;
  for (let c = 0; c < all; c++) {
    const end = clauseStart[c + 1] as number;
    let length = start[clauses] as number;
    let at = clauseStart[c] as number;
    for (; at < end; at++) {
      const variable = variables[options[at] as number] as number;
      if (variable < 0) break;
      literals[length++] = 2 * variable;
    }
    if (at < end) continue;
    const selector = guards[c] as number;
    if (selector >= 0) literals[length++] = 2 * selector + 1;
    guard[clauses] = selector;
    statement[clauses++] = facts[c] as number;
    start[clauses] = length;
  }
  const from = program.from.packed();
  const to = program.to.packed();
  const bare = program.bare.data;
  // Selectors, and links that only bind time, have no ends.
  for (let atom = 0; atom < from.length; atom++) if ((bare[atom] as number) < 0) from[atom] = to[atom] = -1;
  return {
    nodes: program.nodes,
    variables: program.atoms,
    from,
    to,
    start: start.slice(0, clauses + 1),
    literals: literals.slice(0, start[clauses]),
    statement: statement.slice(0, clauses),
    guard: guard.slice(0, clauses),
  };
}
