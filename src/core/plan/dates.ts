import type { Access } from "../access";
import { drained, type ElapsedMinute } from "../base";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import { earliest, justified, netOf, type Result, SerialPasses, solve } from "../schedule";
import { bind } from "./bind";
import { type Bound, furthest } from "./bound";
import { type Crews, crewsOf } from "./crews";
import { lastOf } from "./last-of";
import { servedFrom, servedKey } from "./served";

const day_min = 1440;
/** As far as calendars are made at first (see core/clock). */
const firstLook_min = 400 * day_min;

/** What a build is turned into, and what came of it. */
export interface Dated {
  readonly bound: Bound;
  readonly result: Result;
}

/**
 * Dates for an order. People are counted as far ahead as the work is likely to take, and further only when the
 * plan does not fit in that. `served`: by the order in which the build says steps are served, or not at all.
 */
export function datesFor(build: Build, access: Access, clocks: Clocks, served = false): Dated {
  return drained(dating(build, access, clocks, served));
}

/** The same in pieces. */
export function* dating(build: Build, access: Access, clocks: Clocks, served = false): Generator<void, Dated> {
  const crews = crewsOf(build, clocks);
  for (let seen = firstGuess(build, clocks, crews); ; ) {
    const bound = bind(build, access, clocks, seen as ElapsedMinute, crews);
    yield;
    const result = served ? servedDates(bound) : yield* freshDates(bound);
    const { stuck } = result;
    const people = stuck?.of.kind === "capacity" && bound.problem.capacities[stuck.of.index]!.kind === "people";
    // A job with a fixed date finds nobody there on that date, however far one looks.
    if (!people || bound.problem.fixed[stuck!.job]! >= 0 || seen >= furthest) return { bound, result };
    seen = Math.min(furthest, Math.max(4 * seen, 2 * result.bound));
  }
}

/** Rounds in which everything is served again in the order of how late it may be. */
const mostRounds = 2;

/** By one priority or in the order as written, whichever is done first; what further priorities would gain, and more, the rounds do. */
function* freshDates({ build, problem }: Bound): Generator<void, Result> {
  const passes = new SerialPasses(problem);
  const result = passes.solve(1, null);
  if (result.status !== "planned") return result;
  yield;
  const steps = build.steps.length;
  const urgent = result.solution!;
  const written = passes.schedule(problem.rank);
  const first = written !== null && lastOf(written.finish, steps) < lastOf(urgent.finish, steps) ? written : urgent;
  yield;
  return { ...result, solution: justified(passes, first, steps, mostRounds) };
}

/** By the order in which the build says steps are served, with what it says waits on purpose; how early everything could be is told without. */
function servedDates(bound: Bound): Result {
  const { build, problem } = bound;
  const key = servedKey(build, problem);
  const release = servedFrom(bound);
  if (release === null) return solve(problem, key);
  const early = earliest(problem, netOf(problem));
  return { ...solve({ ...problem, release }, key), earliest: early, bound: 0 as ElapsedMinute };
}

/** Three times as long as all the work takes when everybody who is there in a year works all the time. */
function firstGuess(build: Build, clocks: Clocks, crews: Crews): number {
  const year = (364 * day_min) as ElapsedMinute;
  let there = 0;
  for (const person of build.people) there += clocks.person(person.id).reading(year);
  let work = 0;
  for (let s = 0; s < build.steps.length; s++) work += crews.hands(s) * build.steps[s]!.work.likely_min;
  const years = there === 0 ? 0 : (3 * work) / there;
  return Math.min(furthest, Math.max(firstLook_min, Math.ceil(years * year)));
}
