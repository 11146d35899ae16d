import type { Clock, ElapsedMinute } from "../base";
import { calendarRuns, type WorkSpec } from "./calendar";
import { awayOn, type PersonSpec, personRuns, spentDays } from "./crew";
import { elapsed } from "./elapsed";
import type { Gathering } from "./gathering";
import { OfficeClock } from "./office";
import { plainQuorum, type Quorum, textOf } from "./quorum";
import { atLeast, both, either, type Levels, levelsOf, type RunSource } from "./runs";
import { type SiteSpec, type SiteTime, siteTime } from "./site";
import { type SunDay, sunDays } from "./sun";
import { WorkingClock } from "./working";

/** The part of a build that its clocks are made from. */
export interface ClockSpecs {
  readonly site: SiteSpec;
  readonly start: string;
  readonly usual: string;
  readonly calendars: readonly (WorkSpec & { readonly cutOff_min: number | null })[];
  readonly people: readonly PersonSpec[];
}

/** What the concrete of a pour (its step's id) gathers after its finish: thousandths of its strength, or minutes of warmth. */
export interface PourClockName {
  readonly kind: "strength" | "warm";
  readonly pour: string;
}

/** A clock as a build refers to it; see build/model. */
type ClockName =
  | { readonly kind: "elapsed" }
  | { readonly kind: "working"; readonly calendar: string }
  | { readonly kind: "days"; readonly calendar: string }
  | PourClockName;

/**
 * The clocks of one build. Same question, same object; clocks of calendars and people that did not change are shared with the builds before.
 * An id that the build does not have is an error of ours, as references were checked when it was read: RangeError.
 */
export interface Clocks {
  readonly time: SiteTime;
  readonly elapsed: Clock;
  /** A calendar as written. */
  calendar(id: string): WorkingClock;
  /** A calendar as steps work on it: the usual one is also open on every day off that somebody spends. */
  work(id: string): WorkingClock;
  person(id: string): WorkingClock;
  /** While at least `number` of these people are there. */
  crew(people: readonly string[], number: number): WorkingClock;
  /** While a step on this calendar (as in `work`) has at least `number` of these people. */
  crewOn(calendar: string, people: readonly string[], number: number): WorkingClock;
  office(calendar: string): OfficeClock;
  /** Begins at the pour's finish. */
  pour(name: PourClockName): Gathering;
  of(name: ClockName): Clock;
  /** How many of these people are there, over [from, to). */
  there(people: readonly string[], from: ElapsedMinute, to: ElapsedMinute): Levels;
  sun(day: number): SunDay;
}

const shared = new Map<string, Clock>();
const mostShared = 512;

/** A short name for each key, as those of crews are made of many; a name is never given twice. */
const shortNames = new Map<string, string>();
let namesGiven = 0;

function shortOf(key: string): string {
  const known = shortNames.get(key);
  if (known !== undefined) return known;
  if (shortNames.size >= mostShared) shortNames.clear();
  const name = `#${namesGiven++}`;
  shortNames.set(key, name);
  return name;
}

/** The same answer while the same stretch is asked for. */
function lastAsked<A>(source: (from: number, to: number) => A): (from: number, to: number) => A {
  let [at, until] = [Number.NaN, Number.NaN];
  let answer: A;
  return (from, to) => {
    if (from !== at || to !== until) answer = source(from, to);
    [at, until] = [from, to];
    return answer;
  };
}

/**
 * Makes nothing until asked. @throws RangeError when the zone or the first day are none: `checkZone`, `readDate`.
 * @param pour where the clocks of pours come from, who know concrete; without it none can be asked for
 */
export function clocksOf(specs: ClockSpecs, pour: (name: PourClockName) => Gathering = noPour): Clocks {
  const { site, start } = specs;
  const time = siteTime(site.zone, start);
  const base = `${site.zone} ${site.latitude} ${site.longitude} ${start}`;
  const calendars = new Map(specs.calendars.map((spec) => [spec.id, spec]));
  const people = new Map(specs.people.map((spec) => [spec.id, spec]));
  const spent = [...new Set(specs.people.flatMap((person) => person.daysOffSpent))].sort();
  const spec = (id: string) => found(calendars.get(id), id);
  const own = new Map<string, Clock>();
  let sun: ((day: number) => SunDay) | null = null;
  const keys = new Map<string, string>();
  const keyOf = (id: string): string => {
    const key = keys.get(id) ?? shortOf(written(spec(id)));
    keys.set(id, key);
    return key;
  };

  const make = <C extends Clock>(what: string, key: () => string, fresh: () => C): C => {
    const mine = own.get(what);
    if (mine !== undefined) return mine as C;
    const full = `${base} ${what} ${key()}`;
    const clock = (shared.get(full) as C | undefined) ?? fresh();
    if (shared.size >= mostShared) shared.clear();
    shared.set(full, clock);
    own.set(what, clock);
    return clock;
  };
  const working = (what: string, key: () => string, id: string, source: () => RunSource) =>
    make(what, key, () => new WorkingClock(id, source()));

  const calendar = (id: string) =>
    working(
      `calendar ${id}`,
      () => keyOf(id),
      id,
      () => calendarRuns(spec(id), site, start),
    );
  const work = (id: string) =>
    id !== specs.usual || spent.length === 0
      ? calendar(id)
      : working(
          `work ${id}`,
          () => `${keyOf(id)} ${spent}`,
          id,
          () => either(calendar(id).runs, spentDays(spent, spec(id), site, start)),
        );
  const personKeys = new Map<string, string>();
  const personKey = (id: string): string => {
    let key = personKeys.get(id);
    if (key === undefined) {
      const { calendar, daysOffSpent, away } = found(people.get(id), id);
      key = away.length === 0 ? keyOf(calendar) : shortOf(written(awayOn(spec(calendar), away)));
      if (daysOffSpent.length > 0) key = `${key} ${daysOffSpent} ${keyOf(specs.usual)}`;
      personKeys.set(id, key);
    }
    return key;
  };
  const ownRuns = (who: PersonSpec): RunSource =>
    who.away.length === 0 ? calendar(who.calendar).runs : calendarRuns(awayOn(spec(who.calendar), who.away), site, start);
  const person = (id: string) => {
    const who = found(people.get(id), id);
    if (who.daysOffSpent.length + who.away.length === 0) return calendar(who.calendar);
    return working(
      `person ${id}`,
      () => personKey(id),
      id,
      () => personRuns(who, ownRuns(who), spec(specs.usual), site, start),
    );
  };
  /** The stretch that was asked for last, by `personKey` or calendar: crowds and crews of every size ask for the same. */
  const sources = new Map<string, RunSource>();
  const runsOf = (key: string, clock: () => WorkingClock): RunSource => {
    const runs = sources.get(key) ?? lastAsked(clock().runs);
    sources.set(key, runs);
    return runs;
  };
  /** How many of these people go by each calendar, days off that they spend included. */
  const calendarsOf = (ids: readonly string[]): Map<string, number> => {
    const numbers = new Map<string, number>();
    for (const id of ids) {
      const key = personKey(id);
      runsOf(key, () => person(id));
      numbers.set(key, (numbers.get(key) ?? 0) + 1);
    }
    return numbers;
  };
  const sourcesOf = (numbers: Quorum["people"]): RunSource[] =>
    [...numbers].flatMap(([key, number]) => new Array<RunSource>(number).fill(sources.get(key) as RunSource));
  const crowds = new Map<string, (from: number, to: number) => Levels>();
  const crowdOf = (ids: readonly string[]) => {
    const numbers = calendarsOf(ids);
    const key = textOf(numbers);
    const crowd = crowds.get(key) ?? lastAsked((from, to) => levelsOf(sourcesOf(numbers), from, to));
    crowds.set(key, crowd);
    return crowd;
  };
  const crew = (ids: readonly string[], number: number) => {
    const plain = plainQuorum(number, calendarsOf(ids));
    return working(
      `crew ${plain.text}`,
      () => "",
      plain.text,
      () => atLeast(plain.number, sourcesOf(plain.people)),
    );
  };
  const crewOn = (id: string, ids: readonly string[], number: number) => {
    const plain = plainQuorum(number, calendarsOf(ids));
    return working(
      `crew ${plain.text} on ${id}`,
      () => `${keyOf(id)} ${spent}`,
      `${plain.text} on ${id}`,
      () =>
        both(
          runsOf(`work ${id}`, () => work(id)),
          atLeast(plain.number, sourcesOf(plain.people)),
        ),
    );
  };
  const office = (id: string) =>
    make(
      `office ${id}`,
      () => keyOf(id),
      () => new OfficeClock(id, calendar(id).runs, time, spec(id).cutOff_min),
    );

  return {
    time,
    elapsed,
    calendar,
    work,
    person,
    crew,
    crewOn,
    office,
    pour,
    of: (name) => {
      if (name.kind === "elapsed") return elapsed;
      if (name.kind === "working") return work(name.calendar);
      if (name.kind === "days") return office(name.calendar);
      return pour(name);
    },
    there: (ids, from, to) => crowdOf(ids)(from, to),
    sun: (day) => {
      sun ??= sunDays(site, start);
      return sun(day);
    },
  };
}

function noPour({ kind, pour }: PourClockName): never {
  throw new RangeError(`no ${kind} of ${pour} here`);
}

function written(spec: WorkSpec & { readonly cutOff_min: number | null }): string {
  return JSON.stringify([spec.week, spec.off, [...spec.extra], spec.holidays, spec.daylightOnly, spec.cutOff_min]);
}

function found<T>(thing: T | undefined | null, id: string): T {
  if (thing === undefined || thing === null) throw new RangeError(`no ${id} in this build`);
  return thing;
}
