import type { ElapsedMinute, Finding } from "../base";
import type { Build } from "../build";
import { alsoWaits } from "./cure-also";
import { coldFindings, coldOf } from "./cure-cold";
import { type CureContext, cureContext, later, type StepTimes } from "./cure-context";
import { dayFindings, floatingOf, workOf } from "./cure-day";
import { backfillFindings, coldDayFindings, lastOf, loadFindings, removalSheets } from "./cure-removals";
import { wetFindings, wetOf } from "./cure-wet";
import { found } from "./found";
import { strengthAt20 } from "./maturity";
import type { CureSheet } from "./result";

const day_min = 1440;

/** A curve is drawn for at least so long. */
const leastShown_days = 28;

/**
 * What follows for one pour once the plan says when it is placed: strength expected at the site, what is shown, what comes off when and why, wet cure, cold, and
 * when it is floated. Expected unless it says shown. `dates` are those of every step; a pour of a step without any is an error of ours: RangeError.
 */
export function cureSheet(build: Build, p: number, dates: StepTimes): CureSheet {
  const c = cureContext(build, p, dates);
  const removals = removalSheets(c);
  const wet = wetOf(c);
  const cold = coldOf(c);
  const work = workOf(c);
  const shown = shownOf(c);
  const least = Math.max(later(c.placed, leastShown_days * day_min), wet.until, ...shown.map(({ at }) => at));
  const until = lastOf(c, removals, least as ElapsedMinute);
  return {
    pour: p,
    placed: c.placed,
    until,
    days: daysOf(c, until),
    expected: curveOf(c, until, c.strength),
    at20: curveOf(c, until, strengthAt20(c.pour.mix.cement)),
    shown,
    removals,
    also: alsoWaits(c),
    wet,
    cold,
    floating: floatingOf(c, work),
    findings: [
      ...dayFindings(c, work),
      ...coldFindings(c, cold),
      ...wetFindings(c, wet),
      ...resultFindings(c, shown),
      ...loadFindings(c, removals),
      ...backfillFindings(c, removals),
      ...coldDayFindings(c, removals),
      ...(c.pour.mix.cement === "slow blend" ? [found(c.pour, "cure.slow-blend", "note", {}, "mix")] : []),
    ],
  };
}

function daysOf({ air, clocks, placed }: CureContext, until: ElapsedMinute): CureSheet["days"] {
  const { time } = clocks;
  const first = time.dayOf(placed);
  return Array.from({ length: time.dayOf(until) - first + 1 }, (_, i) => {
    const { low_C, high_C, source } = air.day(first + i);
    return { date: time.dateOf(first + i), from: time.startOf(first + i), low_C, high_C, source };
  });
}

/** Every half day of the first month, then every day, and the very end. */
function curveOf({ placed }: CureContext, until: ElapsedMinute, strength: CureContext["strength"]): CureSheet["expected"] {
  const times: ElapsedMinute[] = [];
  for (let age = 0; placed + age < until; age += age < leastShown_days * day_min ? day_min / 2 : day_min) times.push(later(placed, age));
  times.push(until);
  return times.map((at) => ({ at, share: strength.gathered(placed, at) }));
}

function shownOf({ pour, clocks, placed }: CureContext): CureSheet["shown"] {
  return pour.breaks
    .flatMap(({ at, strength_MPa, by }) => {
      const t = clocks.time.minuteOf(at);
      if (t === null || t <= placed) return [];
      return [{ at: t, share: Math.round((1000 * strength_MPa) / pour.mix.strength_MPa), strength_MPa, by }];
    })
    .sort((a, b) => a.at - b.at);
}

/** Results that lie under what is expected by so many thousandths say that the dates here come too early. Own bound. */
const under = 30;

function resultFindings(c: CureContext, shown: CureSheet["shown"]): Finding[] {
  const low = shown.flatMap(({ at, share }) => {
    const expected = c.strength.gathered(c.placed, at);
    return share < expected - under ? [found(c.pour, "cure.below-expected", "look", { at, share, expected }, "breaks")] : [];
  });
  const early = c.pour.breaks.filter(({ at }) => (c.clocks.time.minuteOf(at) ?? 0) <= c.placed).length;
  return early === 0 ? low : [...low, found(c.pour, "cure.result-before", "look", { results: early }, "breaks")];
}
