import type { ElapsedMinute } from "../base";
import type { Build } from "../build";
import { type Later, type Net, putLater, type Solution } from "../schedule";
import type { Bound } from "./bound";
import type { Held } from "./holders";
import type { Holder } from "./plan";
import type { Reading } from "./reading";
import { servedFrom } from "./served";

/** A step comes later only where that is worth a week: what lies open or is out for a few days is not moved about. Common practice, no source. */
const worth_min = 7 * 1440;

/** A plan in which some steps are later than they could be. */
export interface Tail {
  readonly solution: Solution;
  /** Why, by step. */
  readonly why: ReadonlyMap<number, Holder>;
}

/**
 * Puts steps later with nothing else moved. What was pulled forward from its date in the kept plan goes back there. Steps whose effect only waits are put as late
 * as is safe: those that open the ground, those that take stock or hired things out until something is taken down, those that close a place or a way. Safe is
 * a site day to spare: the step ends before the day on which it would have to begin at the latest. What has moved may make room for what comes before it, so it
 * goes on until nothing moves: then none of them alone could come later still. Null where nothing is to be moved.
 * @param first everything as early as it can be; nobody's turn comes later either
 */
export function tailOf(bound: Bound, first: Reading, held: readonly Held[]): Tail | null {
  // A plan with an aim has its days chosen.
  if (servedFrom(bound) !== null) return null;
  const why = new Map<number, Holder>();
  let solution = first.solution;
  for (let next: Solution | null = solution; next !== null; ) {
    solution = next;
    const jobs = mayBeLater(bound, first, solution, held, why);
    next = jobs.length === 0 ? null : putLater(first.served, first.net, solution, jobs);
  }
  if (solution === first.solution) return null;
  return { solution, why: new Map([...why].filter(([j]) => solution.start[j] !== first.solution.start[j])) };
}

/** Steps of a schedule that are to come later, as far as they can; `why` is told of each. */
function mayBeLater(bound: Bound, { late, net }: Reading, s: Solution, held: readonly Held[], why: Map<number, Holder>): Later[] {
  const { build, problem } = bound;
  const { time } = bound.clocks;
  const jobs: Later[] = [];
  build.steps.forEach((step, j) => {
    if (step.done !== null || late.start[j]! <= s.start[j]! || held[j]!.holder.kind === "on-purpose") return;
    const kept = keptStart(bound, j);
    if (kept > s.start[j]!) {
      const then = problem.clocks[problem.clock[j]!]!.advance(kept as ElapsedMinute, problem.amount[j]!);
      jobs.push({ job: j, finishBy: Math.min(then, late.finish[j]!) as ElapsedMinute, least_min: 1 });
      why.set(j, { kind: "kept", date: kept as ElapsedMinute });
      return;
    }
    if (why.get(j)?.kind === "kept") return;
    if (late.start[j]! - s.start[j]! < worth_min || !onlyWaits(build, j)) return;
    const to = firstAfter(bound, net, s, j);
    if (to < 0 || s.start[to]! - s.finish[j]! < worth_min) return;
    why.set(j, { kind: "on-purpose", job: to });
    jobs.push({ job: j, finishBy: time.startOf(time.dayOf(late.start[j]!)) as ElapsedMinute, least_min: worth_min });
  });
  return jobs;
}

/** When the kept plan has the step start; -1 where it does not have it. */
function keptStart({ build, clocks: { time } }: Bound, j: number): number {
  const kept = build.kept?.steps.get(build.steps[j]!.id);
  return kept === undefined ? -1 : (time.minuteOf(kept.start) ?? -1);
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
