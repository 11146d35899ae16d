import type { DocumentEdit, ElapsedMinute } from "../base";
import type { Build } from "../build";
import { clocksOf } from "../clock";
import { isRegular } from "./aims/regular";
import { datesBeside, datesOnSite } from "./one-more-dates";
import { dayOff, extraDays, freshHelper, moreOf, otherDay } from "./one-more-edits";

/**
 * day-off: a day more on site, on a day off work. helper-day: those who come now and then come once more (or somebody comes who is not there at all).
 * visit-day: an inspector, a pump or a trade comes on one more day. other-date: what is booked for a date may come on another. stock, equipment: a set more.
 */
export type OfferKind = "day-off" | "helper-day" | "visit-day" | "other-date" | "stock" | "equipment";

/** One way to have one more; without a date where there is no date to choose. */
export interface Choice {
  readonly date: string | null;
  readonly edits: readonly DocumentEdit[];
}

/** Something a builder could have one more of. `id`: its calendar, booking, stock or equipment; empty for a day off. */
export interface Offer {
  readonly kind: OfferKind;
  readonly id: string;
  /** People who would come. */
  readonly who: readonly string[];
  /** How many more: 1, or a set, which is what the piece that takes most of it takes. */
  readonly number: number;
  /** Every way to have one more in this build, which may have one more already. */
  choices(build: Build): readonly Choice[];
}

/** Everything a build could have one more of until its finish; document order inside a kind. @param from earliest local date; empty: any */
export function offersOf(build: Build, finish: ElapsedMinute, from: string): Offer[] {
  const onSite = datesOnSite(build, finish, from);
  return [
    ...daysOff(build, finish, from),
    ...helperDays(build, finish, onSite),
    ...visitDays(build, onSite),
    ...otherDates(build),
    ...things(build),
  ];
}

/** Those who have days off to spend; where the build names no such days, those who are there most of the time. All of them take it together. */
function daysOff(build: Build, finish: ElapsedMinute, from: string): Offer[] {
  const clocks = clocksOf(build);
  const budgeted = build.people.filter((p) => p.daysOffBudget > 0);
  const who = (budgeted.length > 0 ? budgeted : build.people.filter((p) => isRegular(build, clocks, p.id, finish))).map((p) => p.id);
  if (who.length === 0) return [];
  const choices = (now: Build): Choice[] => {
    const takers = who.map((id) => now.people[now.at.person.get(id)!]!);
    const away = new Set(takers.flatMap((p) => [...p.daysOffSpent, ...now.calendars[now.at.calendar.get(p.calendar)!]!.off]));
    const free = datesBeside(now, finish, from).filter((date) => !away.has(date));
    return free.map((date) => ({ date, edits: takers.map((p) => dayOff(p, date)) }));
  };
  return [{ kind: "day-off", id: "", who, number: 1, choices }];
}

function helperDays(build: Build, finish: ElapsedMinute, onSite: readonly string[]): Offer[] {
  if (build.people.length === 0) return [];
  const clocks = clocksOf(build);
  const helpers = build.people.filter((p) => p.daysOffBudget === 0 && !isRegular(build, clocks, p.id, finish));
  const calendars = helpers.length === 0 ? [freshHelper.calendar] : [...new Set(helpers.map((p) => p.calendar))];
  return calendars.map((id) => ({
    kind: "helper-day",
    id,
    who: helpers.filter((p) => p.calendar === id).map((p) => p.id),
    number: 1,
    choices: (now) =>
      now.at.calendar.has(id) ? extraDays(now, id, onSite) : onSite.map((date) => ({ date, edits: freshHelper(now, date) })),
  }));
}

/** Calendars of inspections and of steps that somebody is booked for: site days on which they do not come. */
function visitDays(build: Build, onSite: readonly string[]): Offer[] {
  const booked = new Set<string>(build.bookings.map((b) => b.step));
  const calendars = new Set<string>();
  for (const step of build.steps)
    if (step.done === null && step.calendar !== build.usual && (step.sort === "inspection" || booked.has(step.id)))
      calendars.add(step.calendar);
  return [...calendars].map((id) => ({ kind: "visit-day", id, who: [], number: 1, choices: (now) => extraDays(now, id, onSite) }));
}

function otherDates(build: Build): Offer[] {
  return build.bookings
    .filter((b) => b.date !== null && build.steps[build.at.step.get(b.step)!]!.done === null)
    .map(({ id }) => ({
      kind: "other-date",
      id,
      who: [],
      number: 1,
      choices: (now) => (now.bookings[now.at.booking.get(id)!]!.date === null ? [] : [{ date: null, edits: [otherDay(id)] }]),
    }));
}

/** Stock that comes back when a piece is taken down, and equipment that more than one thing asks for. */
function things(build: Build): Offer[] {
  const set = new Map<string, number>();
  const askers = new Map<string, number>();
  const back = new Set<string>();
  for (const piece of build.pieces) {
    for (const { of, number, loss } of piece.uses) {
      set.set(of, Math.max(set.get(of) ?? 0, number));
      askers.set(of, (askers.get(of) ?? 0) + 1);
      if (piece.down >= 0 && loss < number) back.add(of);
    }
  }
  for (const step of build.steps) if (step.done === null) for (const { of } of step.equipment) askers.set(of, (askers.get(of) ?? 0) + 1);
  const offer = (kind: "stock" | "equipment", id: string): Offer => {
    const number = set.get(id) ?? 1;
    return { kind, id, who: [], number, choices: (now) => [{ date: null, edits: [moreOf(now, kind, id, number)] }] };
  };
  return [
    ...build.stock.filter((s) => back.has(s.id)).map((s) => offer("stock", s.id)),
    ...build.equipment.filter((e) => (askers.get(e.id) ?? 0) > 1).map((e) => offer("equipment", e.id)),
  ];
}
