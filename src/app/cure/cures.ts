import type { Build, Pour } from "../../core/build";
import { siteTime } from "../../core/clock";
import { type Plan, stepTimes } from "../../core/plan";
import { type CureSheet, cureSheet } from "../../core/pour";
import type { RemovalWords } from "../../draw";
import { groundWords, removalSentence, removalState, voice } from "../../words";
import { shownName } from "../state/names";

export interface Cured {
  readonly pour: Pour;
  readonly name: string;
  readonly sheet: CureSheet;
}

/** The pours of a plan that has dates, in the order of their dates. */
export function curesOf(build: Build, plan: Plan): Cured[] {
  const dates = stepTimes(plan);
  if (dates === null) return [];
  return build.pours
    .map((pour, p) => ({ pour, name: shownName(pour), sheet: cureSheet(build, p, dates) }))
    .sort((a, b) => a.sheet.placed - b.sheet.placed);
}

type Units = "us" | "metric";

/** What the drawing says of each removal. */
export function drawnWords(build: Build, { pour, sheet }: Cured, units: Units): RemovalWords[] {
  const say = voice(build, units);
  return sheet.removals.map((removal) => ({
    name: shownName(build.steps[removal.step]),
    date: say.day(removal.planned),
    state: removalState(removal),
    grounds: [groundWords(removal, build, pour.mix.strength_MPa, units)],
  }));
}

export interface StripRow {
  readonly key: string;
  readonly step: string;
  readonly name: string;
  readonly date: string;
  readonly pour: string;
  readonly says: string;
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
        key: `${pour.id} ${removal.removal.sort} ${removal.step}`,
        step: build.steps[removal.step]!.id,
        name: shownName(build.steps[removal.step]),
        date: say.day(removal.planned),
        pour: name,
        says: removalSentence(removal, build, pour.mix.strength_MPa, units),
        state: removalState(removal),
        hold: removal.hold,
      })),
    )
    .sort((a, b) => a.at - b.at)
    .map(({ at: _, ...row }) => row);
}

/** "2027-06-26": the local date of an instant. */
export const dateOf = (build: Build, t: number): string => siteTime(build.site.zone, build.start).local(t).date;
