import { drained } from "../../base";
import type { Build, Served } from "../../build";
import type { Clocks } from "../../clock";
import type { Problem, Solution } from "../../schedule";
import { engine } from "../engine";
import { lastOf } from "../last-of";
import { type Ordered, orderingWithDates } from "../order";
import { servedSteps } from "../served";

/** A plan that a search has come upon, as what a build has to say to be planned like that. */
export interface Found {
  readonly steps: readonly string[];
  readonly ordered: Ordered;
  readonly solution: Solution;
  readonly finish: number;
}

export const servedAs = (steps: readonly string[], rung: number): Served => ({ engine, rung, steps });

/** What comes of serving the steps of a build in the order in which they start here; null where that gives no dates. */
export function replayed(build: Build, clocks: Clocks, start: Int32Array, order: Int32Array): Found | null {
  return drained(replaying(build, clocks, start, order));
}

/** The same in pieces. */
export function replaying(build: Build, clocks: Clocks, start: Int32Array, order: Int32Array): Generator<void, Found | null> {
  return serving(build, clocks, servedSteps(build, start, order));
}

/** What comes of serving steps in this order, and those that are not named when they are needed or last. */
export function* serving(build: Build, clocks: Clocks, steps: readonly string[]): Generator<void, Found | null> {
  const ordered = yield* orderingWithDates({ ...build, served: servedAs(steps, 0) }, clocks);
  const solution = ordered.result?.solution ?? null;
  if (!ordered.served || solution === null) return null;
  return { steps, ordered, solution, finish: lastOf(solution.finish, build.steps.length) };
}

/** Whether two orders of one build bind alike: then what was learned of one holds for the other. */
export function sameOrder(a: Problem, b: Problem): boolean {
  const rows = (p: Problem): string =>
    [p.links.from, p.links.to, p.links.fromEnd, p.links.toEnd, p.links.least, p.links.most]
      .map((list) => list.subarray(0, p.links.count).join())
      .join("|");
  return a.links.count === b.links.count && rows(a) === rows(b);
}
