import type { ElapsedMinute } from "../base";
import type { Build, Step } from "../build";
import type { Clocks } from "../clock";
import { anybody } from "./crews";
import { type Able, handOver } from "./hand-over";
import { Roster, type Seat } from "./roster";
import type { Stretch } from "./stretches";

/** Who works on a step, all its stretches together; people by position. */
export interface Named {
  readonly people: readonly (readonly number[])[];
  /** Person by person, every seat, in time order. */
  readonly seats: readonly (readonly Seat[])[];
  /** Steps in which somebody hands over in the middle of a stretch. */
  readonly short: readonly number[];
}

const nobody: readonly number[] = [];

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
  const there = build.people.map((p) => clocks.person(p.id));
  const byFew = build.people.map((_, i) => i).sort((a, b) => build.people[a]!.roles.length - build.people[b]!.roles.length || a - b);
  const having = new Map<string, Uint8Array>();
  const whoHas = (role: string): Uint8Array => {
    let known = having.get(role);
    if (known === undefined) {
      known = Uint8Array.from(build.people, ({ roles }) => (role === anybody || roles.includes(role) ? 1 : 0));
      having.set(role, known);
    }
    return known;
  };
  const can = (i: number, role: string): boolean => whoHas(role)[i] === 1;
  const isThere = (i: number, from: number, to: number): boolean => from === to || there[i]!.runEnd(from as ElapsedMinute) >= to;
  const able: Able = (role, from, to) => byFew.filter((i) => can(i, role) && isThere(i, from, to));
  /** Who is named for this stretch so far, and who was for the one before. */
  const named = new Int32Array(build.people.length);
  const same = new Int32Array(build.people.length);
  /** The first of some people who is free for a role all through a stretch, besides the first `besides` of those named already. */
  const free = (list: ArrayLike<number>, count: number, { from, to, role }: Seat, besides: number): number | undefined => {
    const has = whoHas(role);
    for (let k = 0; k < count; k++) {
      const i = list[k]!;
      if (has[i] === 1 && !isAmong(named, besides, i) && isThere(i, from, to) && roster.isFree(i, from, to)) return i;
    }
    return undefined;
  };

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
      if (moved.includes(i) || !can(i, seat.role) || !isThere(i, seat.from, seat.to)) continue;
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
    const hands = specialFirst(step.hands);
    let before = 0;
    for (const s of stretches[job]!) {
      let now = 0;
      for (const { role, number } of hands) {
        for (let k = 0; k < number; k++) {
          const seat: Seat = { from: s[0], to: s[1], job, role };
          const i = free(same, before, seat, now) ?? free(byFew, byFew.length, seat, now);
          if (i !== undefined) {
            named[now++] = i;
            roster.add(i, seat);
          } else if (!squeeze(seat, [])) {
            for (const handed of handOver(roster, seat, able).jobs) short.add(handed);
          }
        }
      }
      same.set(named);
      before = now;
    }
  }
  const people: (readonly number[])[] = build.steps.map(() => nobody);
  // Person by person: one who is named already is the last.
  seats.forEach((list, i) => {
    for (const { job } of list) {
      const known = people[job]!;
      if (known.length === 0) people[job] = [i];
      else if (known[known.length - 1] !== i) people[job] = [...known, i];
    }
  });
  return {
    people,
    seats,
    short: [...short].sort((a, b) => a - b),
  };
}

function isAmong(list: Int32Array, count: number, i: number): boolean {
  for (let k = 0; k < count; k++) if (list[k] === i) return true;
  return false;
}

/** Those who can do one thing only before those who can do anything. */
function specialFirst(hands: Step["hands"]): Step["hands"] {
  if (hands.length < 2) return hands;
  return [...hands.filter((h) => h.role !== anybody), ...hands.filter((h) => h.role === anybody)];
}
