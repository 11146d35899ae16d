import { digraph } from "../digraph";
import { IntList } from "../int-list";
import { topologicalOrder } from "../order";
import type { ClauseProblem } from "./problem";

/** Nodes in an order that suits the arcs that must hold, so that taking them in costs little. */
export function startOrder(problem: ClauseProblem, active: (clause: number) => boolean): Int32Array | null {
  const units = new IntList(256);
  for (let c = 0; c < problem.statement.length; c++) {
    const first = problem.start[c] as number;
    const literal = problem.literals[first] as number;
    if (problem.start[c + 1] === first + 1 && (literal & 1) === 0 && (problem.from[literal >> 1] as number) >= 0 && active(c)) {
      units.push(literal >> 1);
    }
  }
  const from = new Int32Array(units.length);
  const to = new Int32Array(units.length);
  for (let i = 0; i < units.length; i++) {
    from[i] = problem.from[units.at(i)] as number;
    to[i] = problem.to[units.at(i)] as number;
  }
  return topologicalOrder(digraph(problem.nodes, from, to));
}
