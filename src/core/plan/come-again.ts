import type { ElapsedMinute, WayOut } from "../base";
import type { Build, Person } from "../build";
import { buildClocks } from "../pour";
import { type Problem, SerialPasses } from "../schedule";
import { bind } from "./bind";
import { type Bound, furthest } from "./bound";
import { crewsOf } from "./crews";
import { hoursEnd, lastOfClock } from "./hours-end";
import { extraDay, extraHours, openOn } from "./one-more-edits";
import { orderWithDates } from "./order";

/** On more days than these nobody is asked to come. */
const mostDays = 14;
/** How far it is looked for days on which they could. */
const ahead_min = 3 * 366 * 1440;

/**
 * Those whose hours end come again, on the days on which a plan needs them that could have them on any day of site work. Null where there is no plan even so,
 * where that is oftener than anybody is asked, or where their coming on just these days gives no dates.
 */
export function comeAgain(bound: Bound): WayOut | null {
  const { build, clocks } = bound;
  const ends = build.people.map(({ id }) => lastOfClock(clocks.person(id)));
  const people = build.people.filter((_, p) => ends[p] !== null);
  if (people.length === 0) return null;
  const from = Math.min(...ends.filter((end) => end !== null)) as ElapsedMinute;
  const calendars = [...new Set(people.map(({ calendar }) => calendar))];
  const dates = daysLacking(bound, people, open(build, calendars, siteDates(bound, from)));
  if (dates.length === 0 || dates.length > mostDays) return null;
  const tried = open(build, calendars, dates);
  if (orderWithDates(tried, buildClocks(tried)).result?.solution == null) return null;
  return {
    kind: "one-more",
    detail: { offer: "helper-day", of: calendars[0]!, who: people.map(({ id }) => id), number: 1, dates },
    edits: calendars.flatMap((id) => extraHours(build, id, dates).map(({ date, hours }) => extraDay(id, date, hours))),
  };
}

/** Local dates on which there is site work after a minute. */
function siteDates({ build, clocks }: Bound, from: ElapsedMinute): string[] {
  const { time } = clocks;
  const usual = clocks.work(build.usual);
  const found: string[] = [];
  const last = from + ahead_min;
  for (let t = usual.begin((from + 1) as ElapsedMinute); t < last; t = usual.begin(time.startOf(time.dayOf(t) + 1)))
    found.push(time.dateOf(time.dayOf(t)));
  return found;
}

/** The build with these calendars open on these dates too. */
const open = (build: Build, calendars: readonly string[], dates: readonly string[]): Build =>
  calendars.reduce((opened, id) => openOn(opened, id, extraHours(build, id, dates)), build);

/** Dates on which steps are worked on after their hours have ended, when nothing but those who are there for good has to be shared. */
function daysLacking({ build, access, clocks }: Bound, people: readonly Person[], opened: Build): string[] {
  const crews = crewsOf(build, clocks);
  const seen = Math.min(furthest, ahead_min + Math.max(0, ...people.map(({ id }) => lastOfClock(clocks.person(id))!)));
  const bound = bind(build, access, clocks, seen as ElapsedMinute, crews);
  const later = crewsOf(opened, buildClocks(opened));
  const ends = build.steps.map((_, s) => hoursEnd(bound, s));
  const leave = new Set<string>(people.map(({ id }) => id));
  const staying = crews.pools.map((pool) => pool.people.filter((id) => !leave.has(id)).length);

  const clock = bound.problem.clock.slice();
  const list = [...bound.problem.clocks];
  const demands = bound.problem.demands.slice();
  ends.forEach((end, s) => {
    if (end?.people) clock[s] = list.push(later.clock(s)) - 1;
  });
  for (let d = 0; d < demands.length; d += 3)
    if (ends[demands[d]!]?.people) demands[d + 2] = Math.min(demands[d + 2]!, staying[demands[d + 1]!] ?? demands[d + 2]!);
  const free: Problem = { ...bound.problem, clocks: list, clock, demands };
  const { solution } = new SerialPasses(free).solve(1, null);
  if (solution === null) return [];

  const { time } = clocks;
  const dates = new Set<string>();
  ends.forEach((end, s) => {
    if (!end?.people) return;
    const runs = list[clock[s]!]!;
    let t = runs.begin(Math.max(solution.start[s]!, end.lastAt + 1) as ElapsedMinute);
    for (; t < solution.finish[s]!; t = runs.begin(time.startOf(time.dayOf(t) + 1))) dates.add(time.dateOf(time.dayOf(t)));
  });
  return [...dates].sort();
}
