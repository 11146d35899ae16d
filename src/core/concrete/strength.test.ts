import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ageAci,
  ageFactor,
  ageFactorEn,
  coldRow,
  countedDays,
  enGain,
  type GainCement,
  gainAci,
  gainCurve,
  gainEn,
  isCold,
  mixed_F,
  protection_days,
  soffit_days,
  soffitShoresStay_days,
  sum_h,
  temperatureTime_C_h,
  withoutEvidence_days,
} from ".";

const cements: GainCement[] = ["I", "II", "III", "blend", "slow blend"];
const ages = fc.double({ min: 0.01, max: 365, noNaN: true });

describe("strength with age", () => {
  test("nothing before placing, no age for no strength", () => {
    for (const cement of cements) {
      const { share, age_days } = gainCurve(cement);
      expect([share(-1), share(0), age_days(-0.1), age_days(0)]).toEqual([0, 0, 0, 0]);
      expect(share(1e-6)).toBeGreaterThanOrEqual(0);
      expect(age_days(0.01)).toBeGreaterThan(0);
    }
    expect([gainAci("III", -2), gainEn(0.25, -2), ageAci("I", -1)]).toEqual([0, 0, 0]);
  });

  test("only rises, and the age at which a share is reached is the age it was taken at", () => {
    fc.assert(
      fc.property(fc.constantFrom(...cements), ages, (cement, age) => {
        const { share, age_days } = gainCurve(cement);
        expect(share(age * 1.01)).toBeGreaterThan(share(age));
        expect(age_days(share(age)) as number).toBeCloseTo(age, 4);
      }),
    );
  });

  test("a share above what the curve tends to is never reached", () => {
    // ACI 209R-92: 1 / 0.85 for Type I, 1 / 0.92 for Type III; EN 1992-1-1: e^0.38 for class S.
    const ends: [GainCement, number][] = [
      ["I", 1 / 0.85],
      ["II", 1 / 0.85],
      ["III", 1 / 0.92],
      ["blend", Math.exp(0.38)],
      ["slow blend", Math.exp(0.38)],
    ];
    for (const [cement, end] of ends) {
      const { age_days } = gainCurve(cement);
      expect(age_days(end - 0.001)).toBeGreaterThan(1000);
      expect(age_days(end + 0.001)).toBeNull();
    }
    expect(ageAci("I steam", 1 / 0.95 + 1e-9)).toBeNull();
    expect([ageAci("I", 1 / 0.85), ageAci("III", 1 / 0.92)]).toEqual([null, null]);
  });

  test("a curve goes by the cement: III is early, a blend late until 28 days", () => {
    for (const age of [1, 3, 7, 14]) {
      const share = (cement: GainCement) => gainCurve(cement).share(age);
      expect(share("III")).toBe(gainAci("III", age));
      expect([share("I"), share("II")]).toEqual([gainAci("I", age), gainAci("I", age)]);
      expect([share("blend"), share("slow blend")]).toEqual([gainEn(enGain.S, age), gainEn(enGain.S, age)]);
      expect(share("III")).toBeGreaterThan(share("I"));
      expect(share("blend")).toBeLessThanOrEqual(share("I") + 0.0001);
    }
  });
});

describe("maturity", () => {
  test("nothing is gained at the datum or under it, nothing at -10 °C, nothing below 0 by EN", () => {
    expect([temperatureTime_C_h(0, 5, 0), temperatureTime_C_h(-5, 5, 0), temperatureTime_C_h(-5, 2, -10)]).toEqual([0, 0, 10]);
    expect([ageFactor(-10, 20), ageFactor(-11, 23)]).toEqual([0, 0]);
    expect(ageFactor(-9.9, 20)).toBeGreaterThan(0);
    expect([ageFactorEn(-0.1), ageFactorEn(-20)]).toEqual([0, 0]);
    expect(ageFactorEn(0)).toBeGreaterThan(0.36);
  });

  test("a smaller activation makes warmth and cold count less", () => {
    expect(ageFactor(40, 20, 4000)).toBeLessThan(ageFactor(40, 20));
    expect(ageFactor(5, 20, 4000)).toBeGreaterThan(ageFactor(5, 20));
    expect(ageFactor(23, 23, 4000)).toBe(1);
  });

  test("no stretch, no sum", () => {
    expect(sum_h([], 6, () => 1)).toBe(0);
    expect(sum_h([10, 20], 6, (c) => c / 10)).toBe(18);
  });
});

// ACI 306R Table 5.1, from memory: under 12, under 36, under 72 in and thicker.
describe("cold weather", () => {
  test.each([
    [11.9, 55, 50],
    [12, 50, 40],
    [35.9, 50, 40],
    [36, 45, 30],
    [71.9, 45, 30],
    [72, 40, 20],
  ])("a section of %d in is held at %d °F and may fall %d", (least_in, held_F, drop_F) => {
    expect(coldRow(least_in)).toEqual({ held_F, drop_F });
  });

  test("mixed 5 °F warmer above 30 °F of air, 10 from 0 to 30, 15 below", () => {
    expect([31, 30, 0, -1].map((air_F) => mixed_F(36, air_F))).toEqual([50, 55, 55, 60]);
  });

  test("days of protection, fewer where the set is accelerated; under full load by strength", () => {
    expect(protection_days("no load, not exposed", false)).toBe(2);
    expect(protection_days("no load, not exposed", true)).toBe(1);
    expect(protection_days("no load, exposed", true)).toBe(2);
    expect(protection_days("partial load, exposed", true)).toBe(4);
    expect([protection_days("full load", false), protection_days("full load", true)]).toEqual([null, null]);
  });

  test("it is cold below 40 °F", () => {
    expect([39.9, 40].map(isCold)).toEqual([true, false]);
  });
});

// ACI 347 table and its footnote, as printed in the trade article.
describe("forms off", () => {
  test.each([
    ["beam", 9.99, 7],
    ["beam", 10, 14],
    ["beam", 20, 14],
    ["beam", 20.01, 21],
    ["slab", 9.99, 4],
    ["slab", 10, 7],
    ["slab", 20, 7],
    ["slab", 20.01, 10],
  ] as const)("a %s of %d ft stays %d days; half where the shores stay", (kind, span_ft, days) => {
    expect(soffit_days(kind, span_ft, false)).toEqual({ days, halvedWithShores: true });
    const half = kind === "slab" && span_ft < 10 ? 3 : days / 2;
    expect(soffitShoresStay_days(kind, span_ft, false)).toBe(half);
  });

  test("what stands to carry more live load than dead, arches and pan joists are not halved", () => {
    expect(soffitShoresStay_days("slab", 15, true)).toBe(soffit_days("slab", 15, true).days);
    expect(soffitShoresStay_days("beam", 5, true)).toBe(4);
    expect(soffitShoresStay_days("arch", 15, false)).toBe(14);
    expect(soffitShoresStay_days("pan joist", 15, false)).toBe(3);
    expect(soffit_days("pan joist", 15, false, 30.1)).toEqual({ days: 4, halvedWithShores: false });
    expect(soffit_days("arch", 30, true)).toEqual({ days: 7, halvedWithShores: false });
  });

  test("a day counts from 50 °F on; without evidence the longest of table, curve and 28 days", () => {
    expect(countedDays([49.99, 50, 50.01])).toBe(2);
    expect([withoutEvidence_days(7, 9), withoutEvidence_days(30, 9), withoutEvidence_days(7, 40)]).toEqual([28, 30, 40]);
  });
});
