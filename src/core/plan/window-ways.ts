import { type ElapsedMinute, never, type WayOut, writtenId } from "../base";
import { isCure } from "../build";
import { clocksOf } from "../clock";
import { earliest, latest, type NetworkPart, netOf, type Problem } from "../schedule";
import { askedFor } from "./asked";
import type { Bound, DateOf } from "./bound";
import { comeAgain } from "./come-again";
import { bookedFrom, comesFrom, goesOn } from "./comes";
import { fromMoment } from "./moments";
import { type DateKey, datedSteps, dateEdits, movedTogether } from "./moved-dates";
import { datesOnSite } from "./one-more-dates";
import { extraDay, extraHours, openOn, otherDay } from "./one-more-edits";
import { before } from "./passed";

/**
 * Ways out of dates that cannot hold: each single change is made to the whole network and kept only when the network then has times. A date is moved to
 * the first day on which it works; a wait that somebody wrote is dropped; whoever goes by a calendar of their own comes on one day more. `lacksPeople`: they
 * cannot hold because the hours of people end, who may come again.
 */
export function windowWaysOut(bound: Bound, witness: readonly NetworkPart[], lacksPeople: boolean): WayOut[] {
  const again = lacksPeople ? comeAgain(bound) : null;
  const out: WayOut[] = again === null ? [] : [again];
  const tried = new Set<string>();
  for (const part of witness) {
    const way =
      part.kind === "link"
        ? dropped(bound, part)
        : part.kind === "job"
          ? visited(bound, witness, part.job)
          : moved(bound, part.kind, part.job);
    if (way === null) continue;
    const key = JSON.stringify(way.edits);
    if (tried.has(key)) continue;
    tried.add(key);
    out.push(way);
  }
  return out;
}

function dropped(bound: Bound, part: Extract<NetworkPart, { readonly kind: "link" }>): WayOut | null {
  const row = bound.row[part.link]!;
  if (row < 0) return null;
  const { id } = bound.access.statements[bound.access.arcs.reason[row]!]!;
  const wait = bound.build.waits.find((w) => w.id === id && !w.plain);
  if (wait === undefined || (part.side === "least" && isCure(wait.least))) return null;
  const { links } = bound.problem;
  const least = links.least.slice();
  const most = links.most.slice();
  // What is written once for all copies of a group is dropped for all of them.
  const { reason } = bound.access.arcs;
  const alike = (r: number): boolean => r >= 0 && writtenId(bound.access.statements[reason[r]!]!.id ?? "") === writtenId(wait.id);
  for (let l = 0; l < links.count; l++) {
    if (!alike(bound.row[l]!)) continue;
    if (part.side === "least") least[l] = -1;
    else most[l] = -1;
  }
  if (!holds({ ...bound.problem, links: { ...links, least, most } })) return null;
  const path = ["waits", `id=${writtenId(wait.id)}`];
  const both = wait.least !== null && wait.most !== null;
  return { kind: "drop-wait", detail: { wait: wait.id, side: part.side }, edits: [{ path: both ? [...path, part.side] : path }] };
}

const keyOf: Partial<Record<DateOf, DateKey>> = { "not-before": "notBefore", deadline: "deadline", fixed: "fixed" };

function moved(bound: Bound, kind: "release" | "due" | "fixed", job: number): WayOut | null {
  const { build } = bound;
  const of = (kind === "release" ? bound.releaseOf : kind === "due" ? bound.dueOf : bound.fixedOf)[job]!;
  if (job >= build.steps.length) {
    if (of === "lead") return ordered(bound, job);
    const to = of === "promised" ? inTime(bound, job) : null;
    if (to === null) return null;
    const { id } = build.deliveries[job - build.steps.length]!;
    return { kind: "move-date", detail: { delivery: id, to }, edits: [{ path: ["deliveries", `id=${id}`, "promised"], value: to }] };
  }
  if (of === "notice") return booked(bound, job);
  if (of === "booking") {
    const to = suits(bound, kind, [job], of);
    const { id } = build.bookings.find((b) => b.step === build.steps[job]!.id && b.date !== null)!;
    if (to === null) return before(bound.problem, job) === null ? null : { kind: "one-more", detail: otherDate(id), edits: [otherDay(id)] };
    return { kind: "move-date", detail: { booking: id, to }, edits: [{ path: ["bookings", `id=${id}`, "date"], value: to }] };
  }
  const key = keyOf[of];
  if (key === undefined) return null;
  const [own = [], ...more] = movedTogether(build, job, key);
  // Copies that are fixed stay on different days; a latest date can be one for all.
  for (const steps of key === "deadline" ? [own, ...more] : [own]) {
    const to = suits(bound, kind, steps, of);
    if (to !== null)
      return { kind: "move-date", detail: { ...datedSteps(build, steps, job), key, to }, edits: dateEdits(build, steps, key, to) };
  }
  return null;
}

const otherDate = (booking: string): WayOut["detail"] => ({ offer: "other-date", of: booking, who: [], number: 1, dates: [] });

/** The last day on which a delivery comes in time for what the network asks, no earlier than it can still be asked for; null: there is none. */
function inTime({ build, problem, clocks }: Bound, job: number): string | null {
  const free: Problem = { ...problem, release: problem.release.with(job, goesOn(build, clocks)) };
  const net = netOf(free);
  const early = earliest(free, net);
  if (early.broken >= 0) return null;
  const last = latest(free, net, never).start[job]!;
  return clocks.time.dateOf(clocks.time.dayOf((last >= never ? early.start[job]! : last) as ElapsedMinute));
}

/** What is not ticked as ordered may have been: then it comes as much sooner as work goes on after the first day. */
function ordered({ build, clocks, problem }: Bound, job: number): WayOut | null {
  const delivery = build.deliveries[job - build.steps.length]!;
  const comes = comesFrom(build, clocks, { ...delivery, ordered: true });
  if (delivery.ordered || comes === null) return null;
  return holds({ ...problem, release: problem.release.with(job, comes.at) }) ? askedFor({ list: "deliveries", id: delivery.id }) : null;
}

/** The same of what is not ticked as booked: of several for one step, the one that comes last. */
function booked({ build, clocks, problem }: Bound, job: number): WayOut | null {
  const { id, notBefore } = build.steps[job]!;
  const from = build.bookings.map((one) => (one.step === id ? (bookedFrom(build, clocks, one) ?? 0) : 0));
  const at = from.indexOf(problem.release[job]! as ElapsedMinute);
  if (at < 0) return null;
  const others = Math.max(goesOn(build, clocks), notBefore === null ? 0 : fromMoment(clocks, notBefore), ...from.toSpliced(at, 1));
  return holds({ ...problem, release: problem.release.with(job, others) })
    ? askedFor({ list: "bookings", id: build.bookings[at]!.id })
    : null;
}

/** The first day on which the network has times for these jobs, without that date of theirs; null: it has none. */
function suits(bound: Bound, kind: "release" | "due" | "fixed", jobs: readonly number[], of: DateOf): string | null {
  const { problem, clocks } = bound;
  const free: Problem = { ...problem, release: problem.release.slice(), due: problem.due.slice(), fixed: problem.fixed.slice() };
  for (const job of jobs) {
    free.fixed[job] = -1;
    if (of === "fixed" || of === "booking" || kind === "due") free.due[job] = never;
    if (kind !== "due") free.release[job] = 0;
  }
  const times = earliest(free, netOf(free));
  if (times.broken >= 0) return null;
  const late = kind === "due" && of === "deadline";
  const at = (
    late ? Math.max(...jobs.map((job) => times.finish[job]!)) : Math.min(...jobs.map((job) => times.start[job]!))
  ) as ElapsedMinute;
  // An hour is kept where the builder wrote one and it is what the network asks for; else the date says enough.
  return kind === "fixed" ? clocks.time.momentOf(at) : clocks.time.dateOf(clocks.time.dayOf(late ? at - 1 : at));
}

/** Most days that are tried, and how long after the dates of the witness where it has no latest one. */
const mostDays = 14;
const beyond_min = 28 * 1440;

/** One day more of those who do a step by a calendar that is not the usual one and ask nobody else for it: the first on which the network has times. */
function visited({ build, problem, clocks }: Bound, witness: readonly NetworkPart[], job: number): WayOut | null {
  const calendar = build.steps[job]?.calendar ?? build.usual;
  const at = problem.clock[job]!;
  if (calendar === build.usual || problem.clocks[at] !== clocks.work(calendar)) return null;
  const dates = witness.flatMap((part) => (part.kind === "due" || part.kind === "fixed" ? [problem[part.kind][part.job]!] : []));
  const release = Math.max(0, ...witness.flatMap((part) => (part.kind === "release" ? [problem.release[part.job]!] : [])));
  const until = (dates.length > 0 ? Math.max(...dates) : release + beyond_min) as ElapsedMinute;
  for (const { date, hours } of extraHours(build, calendar, datesOnSite(build, until, "")).slice(0, mostDays)) {
    const open = clocksOf(openOn(build, calendar, [{ date, hours }])).work(calendar);
    if (!holds({ ...problem, clocks: problem.clocks.with(at, open) })) continue;
    const detail = { offer: "visit-day", of: calendar, who: [], number: 1, dates: [date] };
    return { kind: "one-more", detail, edits: [extraDay(calendar, date, hours)] };
  }
  return null;
}

function holds(p: Problem): boolean {
  return earliest(p, netOf(p)).broken < 0;
}
