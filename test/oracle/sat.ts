import Logic from "logic-solver";
import type { Build } from "../../src/core/build";
import { type Formula, formulaOf } from "./formula";

export interface SatAnswers {
  readonly possible: boolean;
  /** Whether some order has a before b. */
  readonly may: (a: number, b: number) => boolean;
}

/**
 * The order layer handed to a general-purpose solver (logic-solver, MiniSat): one variable a pair of steps, every three steps transitive.
 * Gaps that are not order count as true.
 */
export function sat(build: Build): SatAnswers {
  const solver = new Logic.Solver();
  const n = build.steps.length;
  const before = (a: number, b: number) => (a < b ? `${a}<${b}` : `-${b}<${a}`);
  for (let a = 0; a < n; a++)
    for (let b = 0; b < n; b++)
      for (let c = 0; c < n; c++) if (a !== b && b !== c && a !== c) solver.require(Logic.or(before(b, a), before(c, b), before(a, c)));
  const term = (f: Formula): Logic.Term => {
    if ("all" in f) return Logic.and(f.all.map(term));
    if ("any" in f) return Logic.or(f.any.map(term));
    return f.order ? before(f.from, f.to) : Logic.TRUE;
  };
  solver.require(term(formulaOf(build)));
  const possible = solver.solve() !== null;
  return { possible, may: (a, b) => possible && solver.solveAssuming(before(a, b)) !== null };
}
