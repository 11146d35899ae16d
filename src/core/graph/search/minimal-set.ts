import type { ClauseProblem } from "./problem";
import { restrict } from "./restrict";
import { ClauseSearch } from "./search";

/** Work that may still be spent, shared by several questions; every search made costs its clauses besides. */
export interface WorkLeft {
  left: number;
}

/**
 * From statements that cannot hold together to some of them of which none can be left out. Leaves one out at a time; where what is left is still
 * refuted, only what that refutation used is kept.
 * @param core statements of a refutation; @param tryOut the order in which to try to do without them
 * @param work when it is spent, what is left of the core is the answer: refuted, but perhaps more than is needed
 * @returns ascending
 */
export function minimalSet(
  problem: ClauseProblem,
  core: readonly number[],
  tryOut: readonly number[],
  work: WorkLeft = { left: Number.POSITIVE_INFINITY },
): number[] {
  const asked = new Set(core);
  const small = restrict(problem, (statement) => asked.has(statement));
  const size = small.statement.reduce((most, s) => Math.max(most, s), -1) + 1;
  let left = shrunk(small, size, [...asked], work);
  for (const statement of tryOut) {
    if (!left.includes(statement)) continue;
    if (work.left <= 0) break;
    const fewer = left.filter((s) => s !== statement);
    left = refuted(small, size, fewer, work) ?? left;
  }
  return left.sort((a, b) => a - b);
}

/** Refutes again with only what the last refutation used, for as long as that makes it smaller. */
function shrunk(problem: ClauseProblem, size: number, core: number[], work: WorkLeft): number[] {
  for (let left = core; ; ) {
    const next = work.left > 0 ? refuted(problem, size, left, work) : null;
    if (next === null || next.length >= left.length) return left;
    left = next;
  }
}

/** Those of the statements that a refutation of them uses; null when they can hold together, or the work was spent before that was known. */
function refuted(problem: ClauseProblem, size: number, statements: readonly number[], work: WorkLeft): number[] | null {
  const without = new Uint8Array(size).fill(1);
  for (const s of statements) without[s] = 0;
  const search = new ClauseSearch(problem, without);
  const answer = search.solve([], work.left);
  work.left -= search.spent + problem.statement.length;
  return answer === "no" ? [...search.refutation.statements] : null;
}
