import type { Build } from "../build";
import { ClauseSearch } from "../graph";
import { findingOfOne, oneBlock } from "./blocks/blocks";
import { ask, compile } from "./compile/compile";
import { orderLayer } from "./compile/layers";
import type { May } from "./result";

const mostWork = 2_000_000;

/**
 * Whether some order has step `before` done before step `after` starts; order only, no dates.
 * @param work most work spent on the question, in steps of the search
 * @returns yes; no, with a minimal set of statements that forbid it; or how much was tried without an answer
 */
export function may(build: Build, before: number, after: number, work = mostWork): May {
  const program = compile(build);
  ask(program, before, after);
  const problem = orderLayer(program);
  const search = new ClauseSearch(problem);
  const answer = search.solve([], work);
  if (answer === "yes") return { verdict: "yes" };
  if (answer === "budget") return { verdict: "not-found", tried: work };
  const finding = findingOfOne(program, oneBlock(program, problem, search.refutation.statements, { left: 5 * work }));
  return finding === undefined ? { verdict: "not-found", tried: work } : { verdict: "no", finding };
}
