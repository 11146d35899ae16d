import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { buildWith, pourOf } from "../../../test/fixtures/pour-model";
import { type ElapsedMinute, never } from "../base";
import type { Build, Pour } from "../build";
import { fitHyperbola, fittedCurve, gainCurve } from "../concrete";
import { ageRate, buildClocks, siteClock, strengthAt20, strengthAtSite } from "./maturity";

const zero = 0 as ElapsedMinute;
const day = 1440;
const month = (low: number, high: number) => ({ low: `${low} °C`, high: `${high} °C` });
const site = { zone: "America/New_York", latitude: 42.4, longitude: -76.5, units: "us" };

/** A build whose site has the same low and high all year, and one pour. */
function at(low: number, high = low, pour: Partial<Pour> = {}, more: object = {}): Build {
  const steps = [{ id: "pour-porch", sort: "pour", work: "6 h", hands: 6 }];
  return buildWith([pourOf(pour)], {}, { steps, site: { ...site, usualTemperatures: new Array(12).fill(month(low, high)), ...more } });
}
const clockOf = (build: Build) => strengthAtSite(build, build.pours[0]!, build.pours[0]!.mix.cement);
const days = (build: Build, thousandths: number) => clockOf(build).advance(zero, thousandths) / day;

describe("strength at a constant 20 °C", () => {
  test.each([
    // ACI 209R-92 table 2.2.1 ratios and EN 1992-1-1 class S at ages in days, to three places (computed from the printed constants).
    ["I", 1, 206],
    ["I", 3, 458],
    ["I", 7, 704],
    ["I", 14, 881],
    ["I", 28, 1007],
    ["I", 90, 1118],
    ["II", 7, 704],
    ["III", 1, 311],
    ["III", 3, 593],
    ["III", 7, 801],
    ["III", 28, 998],
    ["blend", 1, 196],
    ["blend", 3, 458],
    ["blend", 7, 684],
    ["blend", 28, 1000],
    ["slow blend", 14, 854],
  ] as const)("cement %s has after %i days %i thousandths", (cement, age, ratio) => {
    const clock = strengthAt20(cement);
    expect(Math.abs(clock.gathered(zero, (age * day) as ElapsedMinute) - ratio)).toBeLessThanOrEqual(1);
    expect(Math.abs(clock.advance(zero, ratio) - age * day)).toBeLessThanOrEqual(0.02 * age * day);
    expect(strengthAt20(cement)).toBe(clock);
  });

  test("is that of a site with 20 °C day and night, and of one that gives no temperatures", () => {
    const bare = buildWith([pourOf()]);
    for (const build of [at(20), bare])
      for (let n = 0; n <= 1150; n += 7) expect(clockOf(build).advance(zero, n)).toBe(strengthAt20("I").advance(zero, n));
    expect(buildClocks(bare).pour({ kind: "warm", pour: "pour-porch" }).advance(zero, 1234)).toBe(1234);
  });

  test("is never reached where the curve ends: 1/0.85 and 1/0.92 of the 28 day strength", () => {
    expect(strengthAt20("I").advance(zero, 1150)).not.toBe(never);
    expect(strengthAt20("I").advance(zero, 1176)).toBe(never);
    expect(strengthAt20("III").advance(zero, 1087)).toBe(never);
    expect(strengthAt20("III").retreat(zero, 1087)).toBe(-never);
    expect(strengthAt20("I").limit(zero, 1200)).toBe(never);
  });
});

describe("strength at the site's temperatures", () => {
  test("500 of 3000 psi takes 0.78 days at 20 °C and 1.42 at 10, 70 % 6.9 and 12.6 days, 75 % 8.3 (worked by hand from both formulas)", () => {
    expect(days(at(20), 167)).toBeCloseTo(0.78, 2);
    expect(days(at(10), 167)).toBeCloseTo(1.42, 2);
    expect(days(at(20), 700)).toBeCloseTo(6.91, 2);
    expect(days(at(10), 700)).toBeCloseTo(12.6, 1);
    expect(days(at(20), 750)).toBeCloseTo(8.28, 2);
  });

  test("seven days at 10 °C count as 3.83 at 20 °C, at 5 °C as 2.79 (computed from ASTM C1074)", () => {
    for (const [air_C, counted] of [
      [10, 3.83],
      [5, 2.79],
      [0, 7 * 0.287],
      [40, 7 * 2.972],
    ] as const) {
      const age = siteClock(at(air_C), null, "age");
      expect(age.gathered(zero, (7 * day) as ElapsedMinute) / 1000 / day).toBeCloseTo(counted, 1);
    }
  });

  test("twelve stretches of six hours give 2.493 days of age at 20 °C (worked series, computed from ASTM C1074)", () => {
    const series = [15, 20, 25, 25, 20, 15, 12, 10, 10, 12, 15, 15];
    const units = series.reduce((sum, t) => sum + 360 * ageRate(100 * t), 0);
    expect(Math.abs(units / 1000 / day - 2.493)).toBeLessThanOrEqual(0.005);
  });

  test("nothing is gained below -10 °C, and what never comes is told as never", () => {
    expect(days(at(-25, -12), 100)).toBe(never / day);
    expect(ageRate(-1000)).toBe(0);
    expect(ageRate(-999)).toBeGreaterThan(0);
  });

  test("kept warm at first it is earlier than bare and later than warm for good, and forecasts count", () => {
    const kept = days(at(2, 6, { cure: { ...pourOf().cure, held_C: 13, heldFor_min: 3 * day } }), 300);
    expect(kept).toBeLessThan(days(at(2, 6), 300));
    expect(kept).toBeGreaterThanOrEqual(days(at(13), 300));
    const warmSpell = { days: ["06", "07", "08"].map((d) => ({ date: `2027-03-${d}`, low: "15 °C", high: "25 °C", source: "forecast" })) };
    expect(days(at(2, 6, {}, warmSpell), 300)).toBeLessThan(days(at(2, 6), 300));
  });

  test("a step that only says its strength has the same clock as a pour with that cement", () => {
    const usualTemperatures = new Array(12).fill(month(5, 15));
    const build = buildOf({ site: { ...site, usualTemperatures }, steps: [{ id: "cast", sort: "pour", pour: { strength: "3000 psi" } }] });
    const clock = buildClocks(build).of({ kind: "strength", pour: build.steps[0]!.id });
    expect(clock.advance(zero, 700)).toBe(strengthAtSite(build, null, "I").advance(zero, 700));
    expect(clock.advance(zero, 700)).toBeGreaterThan(strengthAt20("I").advance(zero, 700));
    expect(() => buildClocks(build).of({ kind: "strength", pour: "nobody" as never })).toThrow(RangeError);
  });

  test("warm minutes count at 50 °F and above only", () => {
    const warm = (build: Build) =>
      buildClocks(build)
        .pour({ kind: "warm", pour: "pour-porch" })
        .advance(zero, 3 * day);
    expect(warm(at(10))).toBe(3 * day);
    expect(warm(at(9, 9))).toBe(never);
    expect(warm(at(4, 16))).toBeGreaterThan(5 * day);
    expect(warm(at(4, 16, { cure: { ...pourOf().cure, held_C: 13, heldFor_min: 3 * day } }))).toBe(3 * day);
  });

  const degree = fc.integer({ min: -40, max: 25 });
  test("warmer never cures later, whatever the pour, and no figure is ever none", () => {
    fc.assert(
      fc.property(
        degree,
        fc.nat(20),
        fc.nat(15),
        fc.constantFrom("I", "II", "III", "blend", "slow blend" as const),
        fc.integer({ min: 1, max: 1200 }),
        fc.integer({ min: 0, max: 400_000 }),
        fc.option(fc.tuple(fc.integer({ min: -5, max: 30 }), fc.integer({ min: 1, max: 14_000 })), { nil: null }),
        (low, range, by, cement, n, from, held) => {
          const cure = { ...pourOf().cure, held_C: held?.[0] ?? null, heldFor_min: held?.[1] ?? null };
          const mix = { ...pourOf().mix, cement: cement as Pour["mix"]["cement"] };
          const [cold, warm] = [at(low, low + range, { cure, mix }), at(low + by, low + range + by, { cure, mix })];
          const t = from as ElapsedMinute;
          for (const what of ["strength", "warm"] as const) {
            const [first, then] = [cold, warm].map((build) => buildClocks(build).pour({ kind: what, pour: "pour-porch" }));
            const [late, early] = [first!.advance(t, n), then!.advance(t, n)];
            expect(early).toBeLessThanOrEqual(late);
            if (early < never) expect(early - t).toBeGreaterThanOrEqual(then!.shortest(n));
            for (const figure of [late, early, first!.limit(t, n), first!.gathered(t, (t + 40_000) as ElapsedMinute), then!.reading(t)])
              expect(Number.isInteger(figure)).toBe(true);
            if (late < never) {
              expect(first!.gathered(t, late)).toBeGreaterThanOrEqual(n);
              expect(first!.retreat(late, n)).toBeGreaterThanOrEqual(t);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("own results", () => {
  const shown = (...pairs: [number, number][]) => pairs.map(([age_days, share]) => ({ age_days, share }));

  test("a hyperbola comes back from points on it", () => {
    const on = (t: number): [number, number] => [t, (1.1 * 0.2 * t) / (1 + 0.2 * t)];
    const fit = fitHyperbola(shown(on(1), on(3), on(7), on(28)))!;
    expect([fit.ultimate, fit.k_per_day].map((figure) => Math.round(1e6 * figure) / 1e6)).toEqual([1.1, 0.2]);
    expect(fitHyperbola(shown(on(3)))).toBeNull();
    expect(fitHyperbola(shown([3, 0.4], [3, 0.5]))).toBeNull();
    expect(fitHyperbola(shown([3, 0.5], [7, 0.2]))).toBeNull();
  });

  test("one result lowers the curve by its ratio, and never raises it", () => {
    const published = gainCurve("I");
    const low = fittedCurve(published, shown([7, 0.5]));
    expect(low.share(7)).toBeCloseTo(0.5, 9);
    expect(low.share(28)).toBeCloseTo((0.5 / published.share(7)) * published.share(28), 9);
    const high = fittedCurve(published, shown([7, 0.9]));
    expect(high.share(7)).toBe(published.share(7));
  });

  test("two above it raise it, as far as the last of them goes; one above and one below do not", () => {
    const published = gainCurve("I");
    const strong = fittedCurve(published, shown([3, 0.6], [7, 0.85]));
    expect(strong.share(3)).toBeCloseTo(0.6, 9);
    expect(strong.share(7)).toBeCloseTo(0.85, 9);
    expect(strong.share(10)).toBeCloseTo(0.85, 9);
    expect(strong.share(28)).toBe(published.share(28));
    const mixed = fittedCurve(published, shown([3, 0.6], [7, 0.6]));
    for (let t = 0.5; t < 60; t += 0.5) expect(mixed.share(t)).toBeLessThanOrEqual(published.share(t) + 1e-12);
  });

  test("curve and age are each other's inverse, and both only rise", () => {
    const result = fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 50, max: 1300 }));
    fc.assert(
      fc.property(
        fc.array(result, { maxLength: 4 }),
        fc.constantFrom("I", "III", "blend" as const),
        fc.integer({ min: 1, max: 1200 }),
        (results, cement, n) => {
          const curve = fittedCurve(gainCurve(cement as "I"), shown(...results.map(([t, s]): [number, number] => [t, s / 1000])));
          const age = curve.age_days(n / 1000);
          if (age === null) return;
          expect(Number.isFinite(age) && age >= 0).toBe(true);
          expect(curve.share(age * (1 + 1e-9))).toBeGreaterThanOrEqual(n / 1000 - 1e-6);
          expect(curve.share(age * 0.999)).toBeLessThanOrEqual(n / 1000 + 1e-9);
          const before = curve.age_days((n - 1) / 1000);
          expect(before).not.toBeNull();
          expect(before!).toBeLessThanOrEqual(age + 1e-9);
        },
      ),
    );
  });

  test("count for the dates only where the pour has a fixed one, from the earliest it can be finished", () => {
    const breaks = [{ at: "2027-03-27T16:00", strength_MPa: 0.5 * 27.58, by: "lab" }];
    const loose = at(20, 20, { breaks });
    const fixed = { ...loose, steps: loose.steps.map((step) => ({ ...step, fixed: "2027-03-20T10:00" })) };
    expect(days(loose, 700)).toBe(days(at(20), 700));
    expect(days(fixed, 700)).toBeGreaterThan(days(loose, 700));
    expect(clockOf(fixed).gathered(zero, (7 * day) as ElapsedMinute)).toBe(500);
    const early = { ...fixed, pours: [{ ...fixed.pours[0]!, breaks: [{ ...breaks[0]!, at: "2027-03-20T11:00" }] }] };
    expect(days(early, 700)).toBe(days(loose, 700));
  });

  test("that are one's own guess bring nothing forward, and hold back where they are low", () => {
    const result = (on: string, share: number, by: string) => ({ at: `2027-03-${on}T16:00`, strength_MPa: share * 27.58, by });
    const given = (by: string, ...shares: [number, number]) => {
      const loose = at(20, 20, { breaks: [result("23", shares[0], by), result("27", shares[1], by)] });
      return { ...loose, steps: loose.steps.map((step) => ({ ...step, fixed: "2027-03-20T10:00" as never })) };
    };
    const usual = days(at(20), 700);
    expect(days(given("lab", 0.65, 0.9), 700)).toBeLessThan(usual);
    expect(days(given("own guess", 0.65, 0.9), 700)).toBe(usual);
    expect(days(given("own guess", 0.3, 0.5), 700)).toBeGreaterThan(usual);
  });
});
