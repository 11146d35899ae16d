import type { ElapsedMinute } from "../base";
import type { Build } from "../build";
import { type Later, type Net, type Problem, putLater, type Solution } from "../schedule";
import type { Bound } from "./bound";
import type { Held } from "./holders";

/** A step comes later only where that is worth a week: what lies open or is out for a few days is not moved about. Common practice, no source. */
const worth_min = 7 * 1440;

/** A plan in which what only waits is put late, and for the sake of what. */
export interface Tail {
  readonly solution: Solution;
  /** By step that was put later: the step that it waits for. */
  readonly late: ReadonlyMap<number, number>;
}

/**
 * Steps whose effect only waits are put as late as is safe with nothing else moved: those that open the ground, those that take stock or hired things out until
 * something is taken down, those that close a place or a way. Safe is a site day to spare: the step ends before the day on which it would have to
 * begin at the latest. Null where nothing is to be moved, as in most builds: what is left then is the plan as it was.
 * @param served with who is served after whom as links, so that nobody's turn comes later; @param late latest times in it
 */
export function tailOf(bound: Bound, served: Problem, net: Net, s: Solution, late: Solution, held: readonly Held[]): Tail | null {
  const { build } = bound;
  const { time } = bound.clocks;
  const jobs: Later[] = [];
  const next = new Map<number, number>();
  build.steps.forEach((step, j) => {
    if (late.start[j]! - s.start[j]! < worth_min || !onlyWaits(build, j) || step.done !== null || held[j]!.holder.kind === "on-purpose")
      return;
    const to = firstAfter(bound, net, s, j);
    if (to < 0 || s.start[to]! - s.finish[j]! < worth_min) return;
    next.set(j, to);
    jobs.push({ job: j, finishBy: time.startOf(time.dayOf(late.start[j]!)) as ElapsedMinute, least_min: worth_min });
  });
  if (jobs.length === 0) return null;
  const solution = putLater(served, net, s, jobs);
  if (solution === null) return null;
  return { solution, late: new Map([...next].filter(([j]) => solution.start[j] !== s.start[j])) };
}

/** Of the steps that wait for this one by the build itself, the one that starts first; -1: none. */
function firstAfter({ build, problem }: Bound, net: Net, s: Solution, j: number): number {
  let first = -1;
  for (let k = net.adj.outAt[j]!; k < net.adj.outAt[j + 1]!; k++) {
    const link = net.adj.out[k]!;
    const to = problem.links.to[link]!;
    if (link >= problem.links.count || problem.links.least[link]! < 0 || to >= build.steps.length) continue;
    if (first < 0 || s.start[to]! < s.start[first]!) first = to;
  }
  return first;
}

function onlyWaits(build: Build, s: number): boolean {
  const step = build.steps[s]!;
  if (step.sort === "pour" || step.pour !== null) return false;
  return step.puts.some((id) => {
    const piece = build.pieces[build.at.piece.get(id)!]!;
    return piece.sort === "hole" || piece.uses.some(({ number, loss }) => loss < number) || piece.closes.length > 0;
  });
}
