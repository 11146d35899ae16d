import type { Finding } from "../base";
import type { Build } from "../build";
import { ClauseSearch, restrict } from "../graph";
import { findBlocks, findingsOf } from "./blocks/blocks";
import type { AccessCode } from "./blocks/finding";
import { compile } from "./compile/compile";
import { orderLayer } from "./compile/layers";
import { type TimeBounds, timeLayer } from "./compile/time-layer";

/** possible: some order suits the times. refuted: none does, whatever is chosen. not-found: the work allowed was spent first. */
export type TimeVerdict =
  | { readonly verdict: "possible"; readonly start: Float64Array }
  | { readonly verdict: "refuted"; readonly findings: readonly Finding[] }
  | { readonly verdict: "not-found" };

const mostWork = 5_000_000;

/**
 * Refutes order and times together: over all ways of settling what is open, not only those an order has chosen. Uses bounds that hold on every date, so a
 * refutation is final, while "possible" only says that these bounds leave a way.
 * @param work most work spent on order and times together, in steps of the search
 * @returns for "possible" a start for each step in minutes since the epoch, under the bounds alone
 */
export function refuteWithTimes(build: Build, bounds: TimeBounds, work = mostWork): TimeVerdict {
  const program = compile(build);
  const problem = timeLayer(program, bounds);
  const search = new ClauseSearch(problem);
  const answer = search.solve([], work);
  if (answer === "budget") return { verdict: "not-found" };
  if (answer === "no") {
    const order = orderLayer(program);
    const found = findBlocks(program, problem, search);
    const told = findingsOf(program, found);
    const findings = found.blocks.map(({ facts }, i) => {
      const alone = new ClauseSearch(restrict(order, (fact) => facts.includes(fact))).solve([], work) === "no";
      return { ...(told[i] as Finding), ...(alone ? {} : { code: "access.late" satisfies AccessCode }) };
    });
    return { verdict: "refuted", findings };
  }
  const epoch = search.instant(2 * program.steps);
  return { verdict: "possible", start: Float64Array.from(build.steps, (_, s) => search.instant(2 * s) - epoch) };
}
