import { IntList } from "../int-list";
import type { ClauseProblem, TimeLayer } from "./problem";

/** The clauses of some statements alone, variables and nodes numbered anew, so that the cost is that of those clauses. Statements keep their numbers. */
export function restrict(problem: ClauseProblem, keeps: (statement: number) => boolean): ClauseProblem {
  const start = new IntList();
  const literals = new IntList();
  const statement = new IntList();
  const guard = new IntList();
  const variables: number[] = [];
  const numberOf = new Map<number, number>();
  const renamed = (variable: number): number => {
    let known = numberOf.get(variable);
    if (known === undefined) {
      known = variables.length;
      numberOf.set(variable, known);
      variables.push(variable);
    }
    return known;
  };
  start.push(0);
  for (let c = 0; c < problem.statement.length; c++) {
    const of = problem.statement[c] as number;
    if (!keeps(of)) continue;
    for (let at = problem.start[c] as number; at < (problem.start[c + 1] as number); at++) {
      const literal = problem.literals[at] as number;
      literals.push(2 * renamed(literal >> 1) + (literal & 1));
    }
    start.push(literals.length);
    statement.push(of);
    const selector = problem.guard[c] as number;
    guard.push(selector < 0 ? -1 : renamed(selector));
  }
  return {
    ...ends(problem, variables),
    variables: variables.length,
    start: start.packed(),
    literals: literals.packed(),
    statement: statement.packed(),
    guard: guard.packed(),
    time: problem.time === null ? null : timesOf(problem.time, variables),
  };
}

function ends(problem: ClauseProblem, variables: readonly number[]): Pick<ClauseProblem, "nodes" | "from" | "to"> {
  const nodes = [...new Set(variables.flatMap((v) => [problem.from[v] as number, problem.to[v] as number]))]
    .filter((u) => u >= 0)
    .sort((a, b) => a - b);
  const numberOf = new Map(nodes.map((u, i) => [u, i]));
  const renamed = (list: Int32Array) => Int32Array.from(variables, (v) => numberOf.get(list[v] as number) ?? -1);
  return { nodes: nodes.length, from: renamed(problem.from), to: renamed(problem.to) };
}

function timesOf(time: TimeLayer, variables: readonly number[]): TimeLayer {
  const start = [0];
  const arcs: number[] = [];
  for (const v of variables) {
    for (let a = time.start[v] as number; a < (time.start[v + 1] as number); a++) arcs.push(a);
    start.push(arcs.length);
  }
  for (let a = time.start[time.start.length - 1] as number; a < time.from.length; a++) arcs.push(a);
  return {
    nodes: time.nodes,
    start: Int32Array.from(start),
    from: Int32Array.from(arcs, (a) => time.from[a] as number),
    to: Int32Array.from(arcs, (a) => time.to[a] as number),
    delay: Float64Array.from(arcs, (a) => time.delay[a] as number),
  };
}
