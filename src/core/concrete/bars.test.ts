import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Bar,
  bar,
  barOwnSag_in,
  barSpan_in,
  barSpanForSag_in,
  bars,
  barUnderFoot,
  compressionLap_in,
  cover_in,
  development_in,
  faceCover_in,
  foot_lb,
  footSag_in,
  lap_in,
  ownSag_in,
  tieSpacing_in,
} from ".";

const b = (size: number) => bar(size) as Bar;
const sizes = fc.constantFrom(...bars);
const ends = fc.constantFrom("simple" as const, "held" as const);

describe("bars", () => {
  test("a size that is not made has no bar", () => {
    expect([12, 13, 2, 0].map(bar)).toEqual([null, null, null, null]);
    expect(b(18).diameter_in).toBe(2.257);
  });

  // Nominal cross section, mm2, and mass, kg/m: ISO 6935-2:2019, table 2; EN 10080:2005, table 6 (from memory).
  test.each([
    ["8 mm", 50.3, 0.395],
    ["10 mm", 78.5, 0.617],
    ["12 mm", 113, 0.888],
    ["16 mm", 201, 1.58],
    ["20 mm", 314, 2.47],
    ["25 mm", 491, 3.85],
    ["32 mm", 804, 6.31],
  ])("a metric bar of %s has %f mm2 and %f kg a metre", (size, area_mm2, mass_kg_m) => {
    const steel = bar(size) as Bar;
    expect(Math.abs(steel.area_in2 * 645.16 - area_mm2)).toBeLessThan(0.5);
    expect((steel.weight_lb_ft * 0.45359237) / 0.3048).toBeCloseTo(mass_kg_m, 9);
    // Nominal mass: the nominal section times 7,850 kg/m3, rounded.
    expect(Math.abs(steel.area_in2 * 645.16 * 7.85e-3 - mass_kg_m)).toBeLessThan(0.006);
  });

  test("a metric bar takes the cover and the development of the numbers beside it", () => {
    expect([bar("13 mm"), bar("12")]).toEqual([null, null]);
    expect(cover_in("weather or ground", "16 mm")).toBe(1.5);
    expect(cover_in("weather or ground", "20 mm")).toBe(2);
    const ratio = (size: string) => {
      const steel = bar(size) as Bar;
      return development_in(steel, 4000, 60_000, false) / steel.diameter_in;
    };
    expect(ratio("16 mm")).toBeCloseTo(development_in(b(5), 4000, 60_000, false) / b(5).diameter_in, 9);
    expect(ratio("20 mm")).toBeCloseTo(ratio("25 mm"), 9);
  });

  // ACI 318-14 25.4.2.2: fy / 25 to #6, fy / 20 from #7; from memory.
  test("from #7 on a bar is developed over a quarter more of its diameters, a top bar over 1.3 times as much", () => {
    const diameters = (size: number) => development_in(b(size), 4000, 60_000, false) / b(size).diameter_in;
    expect(diameters(7) / diameters(6)).toBeCloseTo(1.25, 9);
    expect(diameters(8)).toBeCloseTo(diameters(7), 9);
    expect(diameters(4)).toBeCloseTo(diameters(6), 9);
    expect(development_in(b(7), 4000, 60_000, true) / development_in(b(7), 4000, 60_000, false)).toBeCloseTo(1.3, 9);
  });

  test("no development and no lap is under 12 in", () => {
    expect(development_in(b(3), 4000, 40_000, false)).toBe(12);
    expect(lap_in(b(3), 10_000, 20_000, false)).toBeCloseTo(15.6, 9);
    expect(compressionLap_in(b(3), 60_000)).toBe(12);
    expect(compressionLap_in(b(4), 60_000)).toBe(15);
  });

  // ACI 318 25.7.2.1: 16 bars, 48 ties, the least side.
  test("each of the three may set the ties", () => {
    expect(tieSpacing_in(b(4), b(3), 20)).toBe(8);
    expect(tieSpacing_in(b(11), b(3), 30)).toBe(18);
    expect(tieSpacing_in(b(11), b(4), 12)).toBe(12);
  });

  test("cover on a face is 3 in against earth, whatever the exposure, else by it", () => {
    expect(faceCover_in(true, "inside slab or wall", 4)).toBe(3);
    expect(faceCover_in(false, "inside slab or wall", 4)).toBe(0.75);
    expect(faceCover_in(false, "weather or ground", 6)).toBe(2);
    expect(cover_in("inside slab or wall", 18)).toBe(1.5);
    expect(cover_in("inside beam or column", 18)).toBe(1.5);
  });
});

describe("a bar underfoot", () => {
  test("at the span it may have one of its limits is reached and none passed", () => {
    fc.assert(
      fc.property(sizes, ends, fc.constantFrom(40_000, 60_000), (one, held, yield_psi) => {
        const span = barSpan_in(one, yield_psi, held);
        const foot = barUnderFoot(one, span, foot_lb, held);
        const used = [foot.stress_psi / yield_psi, foot.sag_in / footSag_in, barOwnSag_in(one, span, held) / ownSag_in];
        expect(Math.max(...used)).toBeCloseTo(1, 9);
      }),
    );
  });

  // The trade's distances of chairs (common practice, no source).
  test("#4 spans about 24 in, #5 about 36, #6 about 48 held by its neighbours", () => {
    for (const [size, trade_in] of [
      [4, 24],
      [5, 36],
      [6, 48],
    ] as const) {
      const span = barSpan_in(b(size), 60_000, "held");
      expect(Math.abs(span - trade_in) / trade_in).toBeLessThan(0.2);
    }
  });

  test("held ends carry farther, and a large bar is bounded by its own sag or the foot's", () => {
    fc.assert(
      fc.property(sizes, (one) => {
        expect(barSpan_in(one, 60_000, "held")).toBeGreaterThanOrEqual(barSpan_in(one, 60_000, "simple"));
        for (const held of ["simple", "held"] as const)
          expect(barOwnSag_in(one, barSpanForSag_in(one, 0.2, held), held)).toBeCloseTo(0.2, 9);
      }),
    );
  });
});
