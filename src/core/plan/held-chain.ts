import type { ElapsedMinute } from "../base";
import type { Clocks } from "../clock";
import { fitStart, type Solution } from "../schedule";
import type { Bound } from "./bound";
import { chainOf } from "./chain";
import { crowdOf } from "./crowd";
import { type Held, holdersOf } from "./holders";
import type { ChainLink } from "./plan";
import { type Reading, readingOf } from "./reading";
import { servedFrom } from "./served";

/** What holds each step, and the chain, of a schedule in which everything is as early as it can be. */
export function heldChain(
  bound: Bound,
  clocks: Clocks,
  earlier: Solution,
): { readonly first: Reading; readonly held: readonly Held[]; readonly chain: readonly ChainLink[] } {
  const { build, problem } = bound;
  const first = readingOf(bound, clocks, earlier);
  const crowd = crowdOf(problem, earlier, first.stretches);
  const held = waiting(bound, earlier, holdersOf(bound, first.served, first.net, first.turns, earlier, first.order, crowd));
  return { first, held, chain: chainOf(earlier, held, build.steps.length) };
}

/** What holds each job, where steps wait for the sake of the build's aim. */
function waiting(bound: Bound, s: Solution, held: readonly Held[]): readonly Held[] {
  const from = servedFrom(bound);
  if (from === null) return held;
  return held.map((one, j) => {
    const date = from[j]! as ElapsedMinute;
    const free = one.ready < date || one.holder.kind === "window";
    const waits = free && date > bound.problem.release[j]! && s.start[j] === fitStart(bound.problem, j, date);
    return waits ? { holder: { kind: "aim", date }, ready: date } : one;
  });
}
