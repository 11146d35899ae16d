import { digraph } from "../digraph";
import { topologicalOrder } from "../order";
import type { ClauseProblem } from "./problem";

/** Nodes in an order that suits the arcs that must hold, so that taking them in costs little. */
export function startOrder(problem: ClauseProblem, active: (clause: number) => boolean): Int32Array | null {
  const units: number[] = [];
  for (let c = 0; c < problem.statement.length; c++) {
    const first = problem.start[c] as number;
    const literal = problem.literals[first] as number;
    if (problem.start[c + 1] === first + 1 && (literal & 1) === 0 && (problem.from[literal >> 1] as number) >= 0 && active(c)) {
      units.push(literal >> 1);
    }
  }
  const ends = (list: Int32Array) => Int32Array.from(units, (v) => list[v] as number);
  return topologicalOrder(digraph(problem.nodes, ends(problem.from), ends(problem.to)));
}
