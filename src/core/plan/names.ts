import type { Clock } from "../base";
import type { Build, Step } from "../build";
import type { Clocks } from "../clock";
import { anybody } from "./crews";
import type { Stretch } from "./stretches";

/** Who works on a step, all its stretches together; people by position. */
export interface Named {
  readonly people: readonly (readonly number[])[];
  /** Person by person, when they begin which step, in time order. */
  readonly work: readonly (readonly { readonly at: number; readonly job: number }[])[];
  /** Steps for some stretch of which fewer people could be named than are asked for. */
  readonly short: readonly number[];
}

interface Seat {
  readonly from: number;
  readonly to: number;
  readonly job: number;
  readonly role: string;
}

/** Longest chain of people who change places for one seat. */
const mostMoves = 3;

/**
 * Names people to the stretches of steps, in the order in which the steps start: who did the last stretch of the same step goes on; of the others, who
 * has the fewest roles goes first, so that those who can do more stay free. Where nobody is left for a role, people
 * change places. The plan has made sure that enough people are there; only a hand-over within one stretch is not named.
 */
export function namesOf(build: Build, clocks: Clocks, order: Int32Array, stretches: readonly (readonly Stretch[])[]): Named {
  const seats: Seat[][] = build.people.map(() => []);
  const short: number[] = [];
  const there: Clock[] = build.people.map((p) => clocks.person(p.id));
  const byFew = build.people.map((_, i) => i).sort((a, b) => build.people[a]!.roles.length - build.people[b]!.roles.length || a - b);
  const can = (i: number, role: string): boolean => role === anybody || build.people[i]!.roles.includes(role);
  const isThere = (i: number, [from, to]: Stretch): boolean =>
    from === to || (there[i]!.begin(from) === from && there[i]!.runEnd(from) >= to);
  const free = (i: number, s: Stretch): boolean => isThere(i, s) && meeting(seats[i]!, s[0], s[1]).length === 0;

  const trail: (() => void)[] = [];
  const sit = (i: number, seat: Seat): void => {
    add(seats[i]!, seat);
    trail.push(() => remove(seats[i]!, seat));
  };
  const unseat = (i: number, seat: Seat): void => {
    remove(seats[i]!, seat);
    trail.push(() => add(seats[i]!, seat));
  };

  /** Seats somebody, sending whoever they would meet to other people in turn; changes nothing and says no where that does not work out. */
  const squeeze = (seat: Seat, moved: readonly number[]): boolean => {
    if (moved.length > mostMoves) return false;
    for (const i of byFew) {
      if (moved.includes(i) || !can(i, seat.role) || !isThere(i, [seat.from, seat.to] as unknown as Stretch)) continue;
      const met = meeting(seats[i]!, seat.from, seat.to);
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
    let before: number[] = [];
    for (const s of stretches[job]!) {
      const now: number[] = [];
      let missing = false;
      for (const role of rolesOf(step)) {
        const pick = (list: readonly number[]): number | undefined => list.find((i) => !now.includes(i) && can(i, role) && free(i, s));
        const seat: Seat = { from: s[0], to: s[1], job, role };
        const i = pick(before) ?? pick(byFew);
        if (i !== undefined) {
          now.push(i);
          add(seats[i]!, seat);
        } else if (!squeeze(seat, [])) missing = true;
      }
      if (missing && short[short.length - 1] !== job) short.push(job);
      before = now;
    }
  }
  const people: number[][] = build.steps.map(() => []);
  seats.forEach((list, i) => {
    for (const { job } of list) if (people[job]![people[job]!.length - 1] !== i) people[job]!.push(i);
  });
  return { people: people.map((p) => [...new Set(p)]), work: seats.map((list) => list.map(({ from, job }) => ({ at: from, job }))), short };
}

/** One role a place to fill, special ones first. */
function rolesOf(step: Step): string[] {
  const all = step.hands.flatMap((h) => Array.from({ length: h.number }, () => h.role));
  return [...all.filter((r) => r !== anybody), ...all.filter((r) => r === anybody)];
}

/** The seats that meet [from, to); a person's seats lie apart, in time order. */
function meeting(seats: readonly Seat[], from: number, to: number): Seat[] {
  const met: Seat[] = [];
  let k = seats.length - 1;
  while (k >= 0 && seats[k]!.from >= to) k--;
  for (; k >= 0 && seats[k]!.to > from; k--) met.push(seats[k]!);
  return met;
}

function add(seats: Seat[], seat: Seat): void {
  let k = seats.length;
  while (k > 0 && seats[k - 1]!.from > seat.from) k--;
  seats.splice(k, 0, seat);
}

function remove(seats: Seat[], seat: Seat): void {
  seats.splice(seats.lastIndexOf(seat), 1);
}
