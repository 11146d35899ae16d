import type { Build, HandsNeed, Step } from "../build";
import { both, type Clocks, WorkingClock } from "../clock";

/** Everybody can be asked for as this. */
export const anybody = "hands";

/** A set of people that some step's needs could be met from only together, by Hall's condition. */
export interface Pool {
  readonly people: readonly string[];
  readonly roles: readonly string[];
}

/** What the people of a build mean for its steps, by position: who there is for a role, the pools that bind, and the clock of every step. */
export interface Crews {
  readonly pools: readonly Pool[];
  /** How many people a step asks for. */
  hands(step: number): number;
  /** Number that a step takes from each pool, in the order of `pools`; zeros where it takes none. */
  demand(step: number): readonly number[];
  /** When the step can be worked on: its calendar while enough people are there. */
  clock(step: number): WorkingClock;
  /** Roles of which the step asks for more than the build has. */
  short(step: number): readonly { readonly role: string; readonly wanted: number; readonly have: number }[];
}

/** More pools than this are left out; naming people then shows what does not fit. */
const mostPools = 64;

/**
 * A demand for several roles can be met exactly when for every set of roles the people who have any of them are as many as are asked for (Hall 1935).
 * It is enough to look at the distinct unions of the roles' people. A build without people is planned by its calendars alone.
 */
export function crewsOf(build: Build, clocks: Clocks): Crews {
  const everyone = build.people.map((p) => p.id as string);
  const having = new Map<string, readonly string[]>([[anybody, everyone]]);
  for (const step of build.steps) {
    for (const { role } of step.hands) {
      if (!having.has(role))
        having.set(
          role,
          everyone.filter((_, i) => build.people[i]!.roles.includes(role)),
        );
    }
  }
  const people = (role: string): readonly string[] => having.get(role) ?? [];
  const pools = everyone.length === 0 ? [] : unions([...having.keys()].map(people)).map((set) => poolOf(set, having));
  const alike = new AskedFor(pools);
  const asked = build.steps.map((step) => alike.of(step));
  const hands = (s: number): number => asked[s]!.total;
  const demand = (s: number): readonly number[] => asked[s]!.demand;

  const clock = (s: number): WorkingClock => {
    const step = build.steps[s]!;
    const { total, clocks: known } = asked[s]!;
    if (everyone.length === 0 || (total === 0 && !step.notAlone)) return clocks.work(step.calendar);
    let made = known.get(step.calendar);
    if (made === undefined) {
      made = crewClock(step, clocks, ownSets(step, people, everyone));
      known.set(step.calendar, made);
    }
    return made;
  };

  const short = (s: number) => {
    const same = asked[s]!;
    same.short ??= shortOf(build.steps[s]!);
    return same.short;
  };

  const shortOf = (step: Step): ReturnType<Crews["short"]> => {
    if (everyone.length === 0) return [];
    const byRole = step.hands.map(({ role, number }) => ({ role, wanted: number, have: people(role).length }));
    const all = { role: anybody, wanted: Math.max(sum(step.hands), step.notAlone ? 2 : 0), have: everyone.length };
    const unmet = [...byRole, all].filter((r) => r.wanted > r.have);
    if (unmet.length > 0) return unmet.slice(0, 1);
    return ownSets(step, people, everyone)
      .filter((s) => s.number > s.people.length)
      .map((s) => ({ role: s.roles.join(", "), wanted: s.number, have: s.people.length }))
      .slice(0, 1);
  };

  return { pools, hands, demand, clock, short };
}

/** What steps that ask for the same people have in common. */
interface Asked {
  readonly demand: readonly number[];
  readonly total: number;
  /** By calendar. */
  readonly clocks: Map<string, WorkingClock>;
  short: ReturnType<Crews["short"]> | null;
}

/** Steps by the people they ask for and whether anybody may be alone at it. Most ask for one role. */
class AskedFor {
  readonly #byRole = new Map<string, Asked[]>();
  readonly #byRoles = new Map<string, Asked>();

  constructor(readonly pools: readonly Pool[]) {}

  of({ hands, notAlone }: Step): Asked {
    if (hands.length !== 1) return this.#ofRoles(hands, notAlone);
    const { role, number } = hands[0]!;
    let known = this.#byRole.get(role);
    if (known === undefined) {
      known = [];
      this.#byRole.set(role, known);
    }
    const at = 2 * number + (notAlone ? 1 : 0);
    known[at] ??= this.#fresh(hands);
    return known[at];
  }

  #ofRoles(hands: readonly HandsNeed[], notAlone: boolean): Asked {
    const key = `${hands.map((h) => `${h.number} ${h.role}`).join(",")}|${notAlone}`;
    let known = this.#byRoles.get(key);
    if (known === undefined) {
      known = this.#fresh(hands);
      this.#byRoles.set(key, known);
    }
    return known;
  }

  #fresh(hands: readonly HandsNeed[]): Asked {
    const demand = this.pools.map((pool) => sum(hands.filter((h) => pool.roles.includes(h.role))));
    return { demand, total: sum(hands), clocks: new Map(), short: null };
  }
}

interface OwnSet {
  readonly roles: readonly string[];
  readonly people: readonly string[];
  readonly number: number;
}

/** The sets of people of which so many must be there for the step alone; "not alone" asks for a second person on site, whatever they do. */
function ownSets(step: Step, having: (role: string) => readonly string[], everyone: readonly string[]): OwnSet[] {
  const needs = step.hands.filter((h) => h.number > 0 && h.role !== anybody);
  const sets: OwnSet[] = [];
  for (const set of unions(needs.map((h) => having(h.role)))) {
    const inside = needs.filter((h) => having(h.role).every((id) => set.includes(id)));
    sets.push({ roles: inside.map((h) => h.role), people: set, number: sum(inside) });
  }
  const all = Math.max(sum(step.hands), step.notAlone ? 2 : 0);
  if (all > 0 && !sets.some((s) => s.people.length === everyone.length && s.number >= all))
    sets.push({ roles: [anybody], people: everyone, number: all });
  return sets;
}

function crewClock(step: Step, clocks: Clocks, sets: readonly OwnSet[]): WorkingClock {
  const each = [...new Set(sets.map((s) => clocks.crewOn(step.calendar, s.people, s.number)))].sort((a, b) => (a.id < b.id ? -1 : 1));
  if (each.length === 1) return each[0]!;
  const known = joint.get(each[0]!) ?? [];
  const same = known.find((j) => j.each.length === each.length && j.each.every((c, i) => c === each[i]));
  if (same !== undefined) return same.clock;
  const clock = new WorkingClock(each.map((c) => c.id).join(" and "), both(...each.map((c) => c.runs)));
  joint.set(each[0]!, [...known, { each, clock }]);
  return clock;
}

/** Clocks of several sets at once, kept as long as the clocks they are made of: those are shared between plans, and so are these. */
const joint = new WeakMap<WorkingClock, readonly { readonly each: readonly WorkingClock[]; readonly clock: WorkingClock }[]>();

/** The distinct unions of some sets, small ones first; order inside as in the largest. */
function unions(sets: readonly (readonly string[])[]): (readonly string[])[] {
  const found = new Map<string, readonly string[]>();
  for (const set of sets) {
    const before = [...found.values()];
    for (const other of [[] as readonly string[], ...before]) {
      const union = [...new Set([...other, ...set])].sort();
      if (found.size < mostPools) found.set(union.join("\n"), union);
    }
  }
  return [...found.values()].sort((a, b) => a.length - b.length);
}

function poolOf(people: readonly string[], having: ReadonlyMap<string, readonly string[]>): Pool {
  const inside = new Set(people);
  return { people, roles: [...having].filter(([, who]) => who.every((id) => inside.has(id))).map(([role]) => role) };
}

function sum(needs: readonly HandsNeed[]): number {
  let total = 0;
  for (const need of needs) total += need.number;
  return total;
}
