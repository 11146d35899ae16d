import type { ElapsedMinute } from "../base";
import { type Build, isVouched, type Pour, type PourCement } from "../build";
import {
  type Air,
  airOf,
  type Clocks,
  clocksOf,
  elapsed,
  type GainTable,
  type Gathering,
  gainClock,
  heldClock,
  type PourClockName,
  RateClock,
  siteTime,
} from "../clock";
import { ageFactor, fittedCurve, type GainCurve, gainCurve, type Shown } from "../concrete";

/** Age is counted in thousandths of a minute at 20 °C, so that rates at other temperatures are whole numbers too. */
const age_units = 1000;

/** Units a minute at whole hundredths of a degree, worked out once each. */
const coldest_cC = -1000;
const ageRates = new Int32Array(7001).fill(-1);

/** ASTM C1074 with Q = 5000 K, whole units a minute at hundredths of a degree. That of a blend can differ (from memory). */
export function ageRate(concrete_cC: number): number {
  const i = concrete_cC - coldest_cC;
  const known = ageRates[i];
  if (known !== undefined && known >= 0) return known;
  const rate = Math.round(age_units * ageFactor(concrete_cC / 100, 20));
  if (known !== undefined) ageRates[i] = rate;
  return rate;
}

/** Warm: 50 °F and above, as the table of ACI 347 counts its days. */
const warm_C = 10;

/** Rates hour by hour, none below `floor`. */
function warmRatesOf(air_cC: Int32Array, floor: number): Int32Array {
  const rates = new Int32Array(air_cC.length);
  for (let i = 0, hours = rates.length; i < hours; i += 1) rates[i] = floor > 0 || (air_cC[i] as number) >= 100 * warm_C ? 1 : 0;
  return rates;
}

function ageRatesOf(air_cC: Int32Array, floor: number): Int32Array {
  const rates = new Int32Array(air_cC.length);
  for (let i = 0, hours = rates.length; i < hours; i += 1) {
    // Most are known and above the floor.
    const known = ageRates[(air_cC[i] as number) - coldest_cC] as number;
    rates[i] = known >= floor ? known : Math.max(floor, ageRate(air_cC[i] as number));
  }
  return rates;
}

/** More than this the curve never reaches in a builder's lifetime; thousandths of the specified strength. */
const mostShare = 1200;
const longest_days = 3660;

/** Units of age until n thousandths are expected, each rounded up when the table is made. */
export function gainTable(id: string, curve: GainCurve): GainTable {
  const needed: number[] = [];
  for (let n = 0; n <= mostShare; n += 1) {
    const age = curve.age_days(n / 1000);
    if (age === null || age > longest_days) break;
    needed.push(Math.max(needed[n - 1] ?? 0, Math.ceil(age_units * 1440 * age - 1e-3)));
  }
  return { id, needed: Float64Array.from(needed) };
}

const airs = new WeakMap<Build["site"], Map<string, Air>>();

/** The air at a build's site. */
export function siteAir(build: Build): Air {
  const known = airs.get(build.site) ?? new Map<string, Air>();
  airs.set(build.site, known);
  const air = known.get(build.start) ?? airOf(build.site, build.start);
  known.set(build.start, air);
  return air;
}

const made = new Map<string, Gathering>();
const mostMade = 256;

/** Clocks that did not change are shared between builds, so a plan after an edit pays nothing twice. */
function once<G extends Gathering>(key: string, fresh: () => G): G {
  const known = made.get(key);
  if (known !== undefined) return known as G;
  const clock = fresh();
  if (made.size >= mostMade) made.clear();
  made.set(key, clock);
  return clock;
}

function rateClock(air: Air, what: "age" | "warm", least_C: number | null): RateClock {
  const ratesOf = what === "age" ? ageRatesOf : warmRatesOf;
  const at = (air_C: number): number => ratesOf(Int32Array.of(Math.round(100 * air_C)), 0)[0] as number;
  const floor = least_C === null ? 0 : at(least_C);
  const id = `${what} at ${air.key}${least_C === null ? "" : ` kept at ${least_C}`}`;
  const of = (from: number, to: number): Int32Array => ratesOf(air.hours_cC(from, to), floor);
  return once(id, () => new RateClock(id, { of, least: Math.max(floor, at(air.lowest_C)), most: Math.max(floor, at(air.highest_C)) }));
}

/** Age (thousandths of a minute at 20 °C) or warm minutes that a pour gathers at the site, kept warm at first where its cure says so. */
export function siteClock(build: Build, pour: Pour | null, what: "age" | "warm"): Gathering {
  const air = siteAir(build);
  const bare = rateClock(air, what, null);
  const { held_C, heldFor_min } = pour?.cure ?? { held_C: null, heldFor_min: null };
  if (held_C === null || heldFor_min === null || heldFor_min <= 0) return bare;
  const id = `${what} at ${air.key} kept at ${held_C} for ${heldFor_min}`;
  return once(id, () => heldClock(id, rateClock(air, what, held_C), bare, Math.round(heldFor_min)));
}

/** Age at a constant 20 °C: every minute counts for itself. */
const at20: Gathering = new RateClock("age at 20", {
  of: (from, to) => new Int32Array(Math.max(0, to - from)).fill(age_units),
  least: age_units,
  most: age_units,
});

/** Thousandths of the specified strength expected after a pour's finish at a constant 20 °C. */
export function strengthAt20(cement: PourCement): Gathering {
  const id = `strength at 20 of ${cement}`;
  return once(id, () => gainClock(gainTable(id, gainCurve(cement)), at20));
}

/** Thousandths of the specified strength expected after a pour's finish at the site, lowered or confirmed by its results where the pour has its date; a guess only lowers. */
export function strengthAtSite(build: Build, pour: Pour | null, cement: PourCement): Gathering {
  const base = siteClock(build, pour, "age");
  const shown = pour === null ? [] : shownOf(build, pour, base);
  const results = shown.map(({ age_days, share, vouched }) => `${age_days} ${share}${vouched ? "" : " guessed"}`).join(", ");
  const id = `strength of ${cement}${results === "" ? "" : ` by ${results}`}, ${base.id}`;
  return once(id, () => {
    const curve = shown.length === 0 ? gainCurve(cement) : fittedCurve(gainCurve(cement), ...parted(shown));
    return gainClock(gainTable(id, curve), base);
  });
}

interface Result extends Shown {
  /** Somebody else stands for it. */
  readonly vouched: boolean;
}

const parted = (results: readonly Result[]): [Shown[], Shown[]] => [
  results.filter(({ vouched }) => vouched),
  results.filter(({ vouched }) => !vouched),
];

/**
 * Results as ages and shares. An age needs the pour's date: only a step with a fixed date has one that is not the plan's own answer. It counts from
 * the earliest finish that date allows, as an older age for the same strength is the careful side. Results before that are left out.
 */
function shownOf(build: Build, pour: Pour, base: Gathering): Result[] {
  if (pour.breaks.length === 0) return [];
  const step = build.steps[build.at.step.get(pour.step) ?? -1];
  const time = siteTime(build.site.zone, build.start);
  const starts = step?.fixed == null ? null : time.minuteOf(step.fixed);
  if (step === undefined || starts === null || !(pour.mix.strength_MPa > 0)) return [];
  const from = (starts + step.work.likely_min) as ElapsedMinute;
  return pour.breaks.flatMap(({ at, strength_MPa, by }) => {
    const t = time.minuteOf(at);
    if (t === null || t <= from) return [];
    return [{ age_days: base.gathered(from, t) / age_units / 1440, share: strength_MPa / pour.mix.strength_MPa, vouched: isVouched(by) }];
  });
}

/** The pour of a step where one is written; null where the step only says its strength, or none. */
function pourOfStep(build: Build, step: string): Pour | null {
  return build.pours.find((pour) => pour.step === step) ?? null;
}

/** The clocks of a build, those of its pours included: what a plan goes by. An id that pours nothing is an error of ours: RangeError. */
export function buildClocks(build: Build): Clocks {
  const own = new Map<string, Gathering>();
  return clocksOf(build, (name: PourClockName) => {
    const key = `${name.kind} ${name.pour}`;
    const clock = own.get(key) ?? clockOf(build, name);
    own.set(key, clock);
    return clock;
  });
}

function clockOf(build: Build, { kind, pour: step }: PourClockName): Gathering {
  const pour = pourOfStep(build, step);
  if (kind === "warm") {
    if (build.at.step.get(step) === undefined) throw new RangeError(`no ${step} in this build`);
    return siteAir(build).known || siteAir(build).lowest_C < warm_C ? siteClock(build, pour, "warm") : elapsed;
  }
  const cement = pour?.mix.cement ?? build.steps[build.at.step.get(step) ?? -1]?.pour?.cement;
  if (cement === undefined) throw new RangeError(`no pour ${step} in this build`);
  return strengthAtSite(build, pour, cement);
}
