import type { Clock } from "../base";
import type { Build, Step } from "../build";
import type { Clocks } from "../clock";
import { anybody } from "./crews";
import { type Able, handOver } from "./hand-over";
import { Roster, type Seat } from "./roster";
import type { Stretch } from "./stretches";

/** Who works on a step, all its stretches together; people by position. */
export interface Named {
  readonly people: readonly (readonly number[])[];
  /** Person by person, when they begin which step, in time order. */
  readonly work: readonly (readonly { readonly at: number; readonly job: number }[])[];
  /** Person by person, every seat. */
  readonly seats: readonly (readonly Seat[])[];
  /** Steps in which somebody hands over in the middle of a stretch. */
  readonly short: readonly number[];
}

/** Longest chain of people who change places for one seat. */
const mostMoves = 3;

/**
 * Names people to the stretches of steps, in the order in which the steps start: who did the last stretch of the same step goes on; of the others, who
 * has the fewest roles goes first, so that those who can do more stay free. Where nobody is left for a role, people change places; where nobody can stay to the
 * end of a stretch, they hand over in the middle of it. The plan has made sure that at every minute enough people are there.
 */
export function namesOf(build: Build, clocks: Clocks, order: Int32Array, stretches: readonly (readonly Stretch[])[]): Named {
  const roster = new Roster(build.people.length);
  const { seats } = roster;
  const short = new Set<number>();
  const there: Clock[] = build.people.map((p) => clocks.person(p.id));
  const byFew = build.people.map((_, i) => i).sort((a, b) => build.people[a]!.roles.length - build.people[b]!.roles.length || a - b);
  const can = (i: number, role: string): boolean => role === anybody || build.people[i]!.roles.includes(role);
  const isThere = (i: number, [from, to]: Stretch): boolean =>
    from === to || (there[i]!.begin(from) === from && there[i]!.runEnd(from) >= to);
  const free = (i: number, s: Stretch): boolean => isThere(i, s) && roster.meeting(i, s[0], s[1]).length === 0;

  const able: Able = (role, from, to) => byFew.filter((i) => can(i, role) && isThere(i, [from, to] as unknown as Stretch));

  const trail: (() => void)[] = [];
  const sit = (i: number, seat: Seat): void => {
    roster.add(i, seat);
    trail.push(() => roster.remove(i, seat));
  };
  const unseat = (i: number, seat: Seat): void => {
    roster.remove(i, seat);
    trail.push(() => roster.add(i, seat));
  };

  /** Seats somebody, sending whoever they would meet to other people in turn; changes nothing and says no where that does not work out. */
  const squeeze = (seat: Seat, moved: readonly number[]): boolean => {
    if (moved.length > mostMoves) return false;
    for (const i of byFew) {
      if (moved.includes(i) || !can(i, seat.role) || !isThere(i, [seat.from, seat.to] as unknown as Stretch)) continue;
      const met = roster.meeting(i, seat.from, seat.to);
      if (met.some((x) => x.job === seat.job)) continue;
      const mark = trail.length;
      for (const x of met) unseat(i, x);
      sit(i, seat);
      if (met.every((x) => squeeze(x, [...moved, i]))) return true;
      while (trail.length > mark) trail.pop()!();
    }
    return false;
  };

  for (const job of order) {
    const step = job < build.steps.length ? build.steps[job]! : null;
    if (step === null || step.hands.length === 0 || build.people.length === 0) continue;
    const roles = rolesOf(step);
    let before: number[] = [];
    for (const s of stretches[job]!) {
      const now: number[] = [];
      for (const role of roles) {
        const pick = (list: readonly number[]): number | undefined => list.find((i) => !now.includes(i) && can(i, role) && free(i, s));
        const seat: Seat = { from: s[0], to: s[1], job, role };
        const i = pick(before) ?? pick(byFew);
        if (i !== undefined) {
          now.push(i);
          roster.add(i, seat);
        } else if (!squeeze(seat, [])) {
          for (const handed of handOver(roster, seat, able).jobs) short.add(handed);
        }
      }
      before = now;
    }
  }
  const people: number[][] = build.steps.map(() => []);
  // Person by person: one who is named already is the last.
  seats.forEach((list, i) => {
    for (const { job } of list) if (people[job]![people[job]!.length - 1] !== i) people[job]!.push(i);
  });
  return {
    people,
    work: seats.map((list) => list.map(({ from, job }) => ({ at: from, job }))),
    seats,
    short: [...short].sort((a, b) => a - b),
  };
}

/** One role a place to fill, special ones first. */
function rolesOf(step: Step): string[] {
  const out: string[] = [];
  for (const special of [true, false])
    for (const { role, number } of step.hands) if ((role !== anybody) === special) for (let k = 0; k < number; k++) out.push(role);
  return out;
}
