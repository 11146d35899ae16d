import { writtenId } from "../../core/base";
import type { Build, Pour } from "../../core/build";
import { siteTime } from "../../core/clock";
import { type Plan, stepTimes } from "../../core/plan";
import { type CureSheet, cureSheet } from "../../core/pour";
import type { RemovalWords } from "../../draw";
import { alsoSentence, bareSentence, groundWords, removalSentence, removalState, voice } from "../../words";
import { shownName } from "../state/names";

export interface Cured {
  readonly pour: Pour;
  readonly name: string;
  /** What comes off stands in the order of its dates. */
  readonly sheet: CureSheet;
}

/** The pours of a plan that has dates, in the order of their dates. */
export function curesOf(build: Build, plan: Plan): Cured[] {
  const dates = stepTimes(plan);
  if (dates === null) return [];
  return build.pours
    .map((pour, p) => {
      const sheet = cureSheet(build, p, dates);
      return { pour, name: shownName(pour), sheet: { ...sheet, removals: [...sheet.removals].sort((a, b) => a.planned - b.planned) } };
    })
    .sort((a, b) => a.sheet.placed - b.sheet.placed);
}

/** "2027-06-26": the local date of an instant. */
export const dateOf = (build: Build, t: number): string => siteTime(build.site.zone, build.start).local(t).date;

/** The pour to look at first: one that is placed and has something held that is still to come, else the next to be placed, else the last. */
export function firstCure(build: Build, cures: readonly Cured[], today: string): Cured | null {
  const isHeld = ({ sheet }: Cured): boolean =>
    dateOf(build, sheet.placed) < today && sheet.removals.some(({ hold, planned }) => hold && dateOf(build, planned) >= today);
  return cures.find(isHeld) ?? cures.find(({ sheet }) => dateOf(build, sheet.placed) >= today) ?? cures.at(-1) ?? null;
}

type Units = "us" | "metric";

/** What the drawing says of each removal: the grounds stand in the list below it. */
export function drawnWords(build: Build, { sheet }: Cured, units: Units): RemovalWords[] {
  const say = voice(build, units);
  return sheet.removals.map((removal) => ({
    name: shownName(build.steps[removal.step]),
    date: say.day(removal.planned),
    state: removalState(removal),
    grounds: [],
  }));
}

export interface StripRow {
  readonly key: string;
  readonly step: string;
  readonly name: string;
  readonly date: string;
  /** Id and name of its pour. */
  readonly pour: string;
  readonly of: string;
  /** Position of its entry among the removals as written. */
  readonly entry: number;
  readonly says: string;
  /** Every ground with its date, where there are more than the sentence names. */
  readonly grounds: string;
  readonly state: string;
  readonly hold: boolean;
}

/** Everything that comes off or goes on, of all pours, in the order of the plan. */
export function stripOrder(build: Build, cures: readonly Cured[], units: Units): StripRow[] {
  const say = voice(build, units);
  return cures
    .flatMap(({ pour, name, sheet }) =>
      sheet.removals.map((removal) => ({
        at: removal.planned,
        key: `${pour.id} ${removal.removal.entry ?? 1} ${copyOf(build.steps[removal.step]!.id)}`,
        step: build.steps[removal.step]!.id,
        name: shownName(build.steps[removal.step]),
        date: say.day(removal.planned),
        pour: pour.id,
        of: name,
        entry: (removal.removal.entry ?? 1) - 1,
        says: removalSentence(removal, build, pour.mix.strength_MPa, units),
        grounds: removal.grounds.length > 2 ? groundWords(removal, build, pour.mix.strength_MPa, units) : "",
        state: removalState(removal),
        hold: removal.hold,
      })),
    )
    .sort((a, b) => a.at - b.at)
    .map(({ at: _, ...row }) => row);
}

export interface AlsoRow {
  readonly key: string;
  readonly step: string;
  readonly name: string;
  readonly date: string;
  readonly says: string;
}

/** What waits for one pour by what steps and waits say themselves, in the order of the plan. */
export function alsoRows(build: Build, { sheet }: Cured, units: Units): AlsoRow[] {
  const say = voice(build, units);
  return sheet.also.map((one) => {
    const step = build.steps[one.step]!;
    return {
      key: `${step.id} ${one.amount}`,
      step: step.id,
      name: shownName(step),
      date: say.day(one.planned),
      says: alsoSentence(one, build, units),
    };
  });
}

const copyOf = (id: string): string => id.split("#")[1] ?? "";

export interface BareRow {
  readonly id: string;
  readonly name: string;
  readonly date: string;
  readonly says: string;
}

/** Steps that place concrete of a stated strength without a pour written for them; of a group the first copy. */
export function bareStrengths(build: Build, plan: Plan, units: Units): BareRow[] {
  const dates = stepTimes(plan);
  const written = new Set(build.pours.map(({ step }) => writtenId(step)));
  const seen = new Set<string>();
  return build.steps.flatMap((step, index) => {
    const id = writtenId(step.id);
    if (step.pour === null || written.has(id) || seen.has(id)) return [];
    seen.add(id);
    const start = dates?.start[index];
    return [
      {
        id: step.id,
        name: step.name,
        date: start === undefined ? "" : voice(build, units).day(start),
        says: bareSentence(build, index, units),
      },
    ];
  });
}
