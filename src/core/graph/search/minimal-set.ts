import type { ClauseProblem } from "./problem";
import { restrict } from "./restrict";
import { ClauseSearch } from "./search";

/**
 * From statements that cannot hold together to some of them of which none can be left out. Leaves one out at a time; where what is left is still
 * refuted, only what that refutation used is kept.
 * @param core statements of a refutation; @param tryOut the order in which to try to do without them
 * @returns ascending
 */
export function minimalSet(problem: ClauseProblem, core: readonly number[], tryOut: readonly number[]): number[] {
  const asked = new Set(core);
  const small = restrict(problem, (statement) => asked.has(statement));
  const size = small.statement.reduce((most, s) => Math.max(most, s), -1) + 1;
  let left = shrunk(small, size, [...asked]);
  for (const statement of tryOut) {
    if (!left.includes(statement)) continue;
    const fewer = left.filter((s) => s !== statement);
    left = refuted(small, size, fewer) ?? left;
  }
  return left.sort((a, b) => a - b);
}

/** Refutes again with only what the last refutation used, for as long as that makes it smaller. */
function shrunk(problem: ClauseProblem, size: number, core: number[]): number[] {
  for (let left = core; ; ) {
    const next = refuted(problem, size, left);
    if (next === null || next.length >= left.length) return left;
    left = next;
  }
}

/** Those of the statements that a refutation of them uses; null when they can hold together. */
function refuted(problem: ClauseProblem, size: number, statements: readonly number[]): number[] | null {
  const without = new Uint8Array(size).fill(1);
  for (const s of statements) without[s] = 0;
  const search = new ClauseSearch(problem, without);
  return search.solve() === "no" ? [...search.refutation.statements] : null;
}
