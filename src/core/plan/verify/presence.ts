import type { ElapsedMinute } from "../../base";
import type { HandsNeed, Step } from "../../build";
import type { Case } from "./fault";

/** Every person there at a minute, by position. */
export function presentAt(c: Case, t: number): number[] {
  return c.build.people.flatMap((person, i) => (runsAt(c.clocks.person(person.id), t) ? [i] : []));
}

export function runsAt(clock: { reading(t: ElapsedMinute): number }, t: number): boolean {
  return clock.reading((t + 1) as ElapsedMinute) > clock.reading(t as ElapsedMinute);
}

/** True when these people can fill all places that the needs ask for, each one place: matching by augmenting paths (Kuhn 1955). */
export function canFill(c: Case, needs: readonly HandsNeed[], present: readonly number[]): boolean {
  const seats = needs.flatMap((n) => Array.from({ length: n.number }, () => n.role));
  const seatOf = new Map<number, number>();
  const sit = (seat: number, tried: Set<number>): boolean => {
    for (const person of present) {
      if (tried.has(person) || !(seats[seat] === "hands" || c.build.people[person]!.roles.includes(seats[seat]!))) continue;
      tried.add(person);
      const held = seatOf.get(person);
      if (held === undefined || sit(held, tried)) {
        seatOf.set(person, seat);
        return true;
      }
    }
    return false;
  };
  return seats.every((_, seat) => sit(seat, new Set()));
}

/** Whether a step can be worked on at a minute, alone on site but for whom it asks: on its calendar, with people enough. */
export function ableAt(c: Case, step: Step, t: number): boolean {
  if (!runsAt(c.clocks.work(step.calendar), t)) return false;
  if (c.build.people.length === 0) return true;
  const present = presentAt(c, t);
  return canFill(c, step.hands, present) && (!step.notAlone || present.length >= 2);
}

/** Every minute in [from, to) at which a calendar or a person begins or stops, with `from` itself. */
export function changes(c: Case, step: Step, from: number, to: number): number[] {
  const times = new Set<number>([from]);
  const sources = [c.clocks.work(step.calendar), ...c.build.people.map((p) => c.clocks.person(p.id))];
  for (const source of sources) for (const t of source.runs(from, to)) if (t < to) times.add(t);
  return [...times].sort((a, b) => a - b);
}
