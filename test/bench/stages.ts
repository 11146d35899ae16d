import { access, lastChances } from "../../src/core/access";
import type { Build } from "../../src/core/build";
import { plan } from "../../src/core/plan";
import { bind } from "../../src/core/plan/bind";
import { crowdOf } from "../../src/core/plan/crowd";
import { datesFor } from "../../src/core/plan/dates";
import { holdersOf } from "../../src/core/plan/holders";
import { namesOf } from "../../src/core/plan/names";
import { siteDays } from "../../src/core/plan/site-days";
import { standsOf } from "../../src/core/plan/stands";
import { byStart, stretchesOf } from "../../src/core/plan/stretches";
import { turnsOf, withTurns } from "../../src/core/plan/turns";
import { buildClocks } from "../../src/core/pour";
import { latest, netOf, solve } from "../../src/core/schedule";

/** The stages of a plan, each on what the ones before it gave. */
export function stages(build: Build): [name: string, run: () => unknown][] {
  const clocks = buildClocks(build);
  const order = access(build);
  const { bound, result } = datesFor(build, order, clocks);
  const { problem } = bound;
  const solution = result.solution!;
  const sorted = byStart(problem, solution);
  const stretches = Array.from({ length: problem.jobs }, (_, j) => stretchesOf(problem, solution, j));
  const named = namesOf(build, clocks, sorted, stretches);
  const turns = turnsOf(bound, solution, sorted, named);
  const served = withTurns(problem, turns, problem.clocks.indexOf(clocks.elapsed));
  const net = netOf(served);
  const made = plan(build);
  return [
    ["order (access)", () => access(build)],
    ["bind", () => bind(build, order, clocks, (800 * 1440) as never)],
    ["schedule", () => solve(problem)],
    ["people's names", () => namesOf(build, clocks, sorted, stretches)],
    ["turns", () => turnsOf(bound, solution, sorted, named)],
    ["latest times", () => latest(served, netOf(served), made.finish)],
    ["holders", () => holdersOf(bound, served, net, turns, solution, sorted, crowdOf(problem, solution, stretches))],
    ["what stands", () => standsOf(build, clocks, bound.stores, solution)],
    ["last chances", () => lastChances(build, order)],
    ["site days", () => siteDays(bound, made.steps, made.deliveries, made.closings, made.visits)],
  ];
}
