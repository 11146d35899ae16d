import type { ElapsedMinute } from "../../base";
import type { Case, Fault } from "./fault";
import { ableAt, canFill, changes, presentAt, runsAt } from "./presence";

/** Stretches in which each step is really worked on: inside its dates, on its calendar, with people enough there. */
export function workedStretches(c: Case): [number, number][][] {
  return c.build.steps.map((step, s) => {
    const out: [number, number][] = [];
    if (step.done !== null) return [[c.start[s]!, c.finish[s]!]];
    const marks = changes(c, step, c.start[s]!, c.finish[s]!);
    marks.forEach((a, k) => {
      const b = marks[k + 1] ?? c.finish[s]!;
      if (b <= a || !ableAt(c, step, a)) return;
      const last = out[out.length - 1];
      if (last !== undefined && last[1] === a) last[1] = b;
      else out.push([a, b]);
    });
    return out;
  });
}

/** Every step has exactly its work between its dates, begins and ends with work, and keeps its own dates. */
export function checkWork(c: Case, worked: readonly (readonly [number, number])[][]): Fault[] {
  const out: Fault[] = [];
  c.build.steps.forEach((step, s) => {
    const start = c.start[s]!;
    const finish = c.finish[s]!;
    const bad = (rule: string, at = start): void => void out.push({ rule, step: step.id, at });
    const sum = worked[s]!.reduce((total, [a, b]) => total + b - a, 0);
    if (start < 0) bad("before-the-build");
    if (step.done !== null) {
      if (start !== minuteDone(c, step.done.start, 0) || finish !== Math.max(start, minuteDone(c, step.done.finish, 1439))) bad("done");
      return;
    }
    if (c.build.resumes !== null && start < c.clocks.time.minuteOf(c.build.resumes)!) bad("resumes");
    if (!ableAt(c, step, start)) bad("start-outside-its-time");
    if (sum !== step.work.likely_min) bad("work");
    if (finish > start && !ableAt(c, step, finish - 1)) bad("finish-outside-its-time", finish);
    if (step.unbroken && finish - start !== sum) bad("broken-off");
    if (step.notBefore !== null && start < c.clocks.time.minuteOf(step.notBefore)!) bad("not-before");
    if (step.deadline !== null && finish > ending(c, step.deadline)) bad("deadline", finish);
    if (step.fixed !== null && !startsOn(c, start, step.fixed)) bad("fixed");
    for (const id of step.needs)
      if (c.arrives[c.build.at.delivery.get(id)!]! > start) out.push({ rule: "needs", step: step.id, of: id, at: start });
  });
  for (const booking of c.build.bookings) {
    const start = c.start[c.build.at.step.get(booking.step)!]!;
    if (booking.date !== null && !startsOn(c, start, booking.date))
      out.push({ rule: "booking", step: booking.step, of: booking.id, at: start });
    if (booking.date !== null || booking.booked || booking.lead === null || c.build.steps[c.build.at.step.get(booking.step)!]!.done)
      continue;
    if (start < c.clocks.of(booking.lead.on).advance(goesOn(c), booking.lead.amount))
      out.push({ rule: "notice", step: booking.step, of: booking.id, at: start });
  }
  c.build.deliveries.forEach((d, i) => {
    const at = c.arrives[i]!;
    const bad = (rule: string): void => void out.push({ rule, of: d.id, at });
    if (!runsAt(c.clocks.calendar(d.calendar), at)) bad("delivery-outside-its-time");
    if (d.promised !== null && at < c.clocks.time.minuteOf(d.promised)!) bad("promised");
    if (d.promised !== null || d.lead === null) return;
    if (at < c.clocks.of(d.lead.on).advance(d.ordered ? (0 as ElapsedMinute) : goesOn(c), d.lead.amount)) bad("lead");
  });
  return out;
}

const goesOn = ({ build, clocks }: Case): ElapsedMinute =>
  (build.resumes === null ? 0 : Math.max(0, clocks.time.minuteOf(build.resumes)!)) as ElapsedMinute;

/** A minute of what was written of a done step; a date alone is from its midnight to its last minute. */
const minuteDone = (c: Case, moment: string, more: number): number =>
  Math.max(0, c.clocks.time.minuteOf(moment)! + (moment.includes("T") ? 0 : more));

function ending(c: Case, moment: string): number {
  return moment.includes("T") ? c.clocks.time.minuteOf(moment)! : c.clocks.time.startOf(c.clocks.time.dayOfDate(moment)! + 1);
}

function startsOn(c: Case, start: number, moment: string): boolean {
  return moment.includes("T") ? start === c.clocks.time.minuteOf(moment)! : c.clocks.time.dateOf(c.clocks.time.dayOf(start)) === moment;
}

/** At every instant at which anybody starts, everybody asked for by all steps at work can be somebody who is there. */
export function checkPeople(c: Case, worked: readonly (readonly [number, number])[][]): Fault[] {
  if (c.build.people.length === 0) return [];
  const out: Fault[] = [];
  const instants = new Set<number>();
  worked.forEach((list, s) => {
    for (const [a, b] of list) for (const t of changes(c, c.build.steps[s]!, a, b)) instants.add(t);
  });
  for (const t of instants) {
    const needs = c.build.steps.flatMap((step, s) => (worked[s]!.some(([a, b]) => a <= t && t < b) ? step.hands : []));
    if (!canFill(c, needs, presentAt(c, t))) out.push({ rule: "people", at: t });
  }
  return out;
}
