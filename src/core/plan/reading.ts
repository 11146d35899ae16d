import { type ElapsedMinute, never } from "../base";
import type { Clocks } from "../clock";
import { latest, type Net, netOf, type Problem, type Solution } from "../schedule";
import type { Bound } from "./bound";
import { lastOf } from "./last-of";
import { type Named, namesOf } from "./names";
import { byStart, type Stretch, stretchesOf } from "./stretches";
import { type Turn, turnsOf, withTurns } from "./turns";

/** A schedule with what follows from it: who does what, who is served after whom, and how late everything may be then. */
export interface Reading {
  readonly solution: Solution;
  /** Jobs by start. */
  readonly order: Int32Array;
  readonly stretches: readonly (readonly Stretch[])[];
  readonly named: Named;
  readonly turns: readonly Turn[];
  /** The problem with the turns as links. */
  readonly served: Problem;
  readonly net: Net;
  readonly finish: ElapsedMinute;
  readonly late: Solution;
}

export function readingOf(bound: Bound, clocks: Clocks, solution: Solution): Reading {
  const { build, problem } = bound;
  const steps = build.steps.length;
  const order = byStart(problem, solution);
  const stretches: (readonly Stretch[])[] = [];
  for (let j = 0; j < problem.jobs; j++) stretches.push(stretchesOf(problem, solution, j));
  const named = namesOf(build, clocks, order, stretches);
  const turns = turnsOf(bound, solution, order, named);
  const served = withTurns(problem, turns, problem.clocks.indexOf(clocks.elapsed));
  const net = netOf(served);
  const finish = lastOf(solution.finish, steps) as ElapsedMinute;
  return {
    solution,
    order,
    stretches,
    named,
    turns,
    served,
    net,
    finish,
    late: latest(within(served, solution, steps, finish), net, never),
  };
}

/** The problem with every step due by the build's finish, and every delivery by then or, where it comes later still, when it comes. */
function within(p: Problem, s: Solution, steps: number, finish: ElapsedMinute): Problem {
  return { ...p, due: p.due.map((due, j) => Math.min(due, j < steps ? finish : Math.max(finish, s.finish[j]!))) };
}
