import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  actOnEvaporation_si,
  actOnEvaporation_us,
  evaporation_si,
  evaporation_us,
  formTrench_ft,
  onceDug,
  pitVolume,
  type Soil,
  slope,
  topWidth_ft,
  trenchRules,
  trenchVolume_ft3_ft,
} from ".";

const soils: Soil[] = ["rock", "A", "B", "C"];
const length = fc.double({ min: 0.1, max: 50, noNaN: true });

describe("trenches", () => {
  // 29 CFR 1926 Subpart P, Appendix A: ground that was dug before is no Type A.
  test("ground once dug is B at best, and no worse for it than it was", () => {
    expect(soils.map(onceDug)).toEqual(["rock", "B", "B", "C"]);
  });

  test("stable rock needs no protection at any depth, all else from 5 ft", () => {
    expect(soils.map((soil) => trenchRules(5, soil).protect)).toEqual([false, true, true, true]);
    expect(soils.some((soil) => trenchRules(4.99, soil).protect)).toBe(false);
    expect(trenchRules(25, "rock")).toEqual({ protect: false, ladder: true, engineer: true, spoilBack_ft: 2 });
  });

  test("both sides lean out by the slope; the volume of a foot is depth times mean width", () => {
    expect(soils.map((soil) => topWidth_ft(8, 3, soil))).toEqual([3, 15, 19, 27]);
    expect(trenchVolume_ft3_ft(8, 3, "A")).toBe(8 * 9);
    expect(trenchVolume_ft3_ft(8, 3, "rock")).toBe(24);
  });

  test("a form needs itself, its braces and room to work on both sides", () => {
    expect(formTrench_ft(1.5, 0)).toBe(5.5);
    expect(formTrench_ft(1.5, 3, 1)).toBe(9.5);
  });
});

describe("the volume of a pit", () => {
  test("upright it is a box, square with sides to a point below it the difference of two pyramids", () => {
    expect(pitVolume(4, 3, 2, 0)).toBeCloseTo(24, 12);
    // A floor of 2 x 2 whose sides run out 1 for 1 over 3: a pyramid of base 8 and height 4 less its tip of base 2 and height 1.
    expect(pitVolume(2, 2, 3, 1)).toBeCloseTo((64 * 4 - 4 * 1) / 3, 9);
    expect(pitVolume(0, 0, 3, 0.5)).toBeCloseTo((3 * 3 * 3) / 3, 9);
  });

  test("is what thin level layers add up to", () => {
    fc.assert(
      fc.property(length, length, fc.double({ min: 0.1, max: 6, noNaN: true }), fc.constantFrom(...soils), (long, wide, deep, soil) => {
        const layers = 400;
        let sum = 0;
        for (let i = 0; i < layers; i += 1) {
          const out = (slope[soil] * deep * (i + 0.5)) / layers;
          sum += ((long + 2 * out) * (wide + 2 * out) * deep) / layers;
        }
        expect(pitVolume(long, wide, deep, slope[soil]) / sum).toBeCloseTo(1, 4);
      }),
    );
  });
});

// ACI 305R: act at 0.2 lb/ft2/h, 1 kg/m2/h, half of it where the concrete bleeds little.
describe("evaporation", () => {
  test("a slab that bleeds little is protected at half the rate", () => {
    expect([actOnEvaporation_us(false), actOnEvaporation_us(true)]).toEqual([0.2, 0.1]);
    expect([actOnEvaporation_si(false), actOnEvaporation_si(true)]).toEqual([1, 0.5]);
  });

  test("warm damp air over cold concrete takes no water, and gives none either", () => {
    expect(evaporation_us(50, 90, 100, 10)).toEqual({ value: 0 });
    expect(evaporation_si(10, 30, 100, 10)).toEqual({ value: 0 });
  });

  test("drier air, more wind, warmer concrete: never less; the two published forms agree within a tenth", () => {
    const degrees = fc.double({ min: 10, max: 35, noNaN: true });
    fc.assert(
      fc.property(degrees, degrees, fc.integer({ min: 10, max: 90 }), fc.integer({ min: 10, max: 40 }), (c, a, r, v) => {
        const si = (concrete: number, humidity: number, wind: number) => {
          const found = evaporation_si(concrete, a, humidity, wind);
          if (!("value" in found)) throw new Error("refused");
          return found.value;
        };
        const rate = si(c, r, v);
        expect(si(c + 1, r, v)).toBeGreaterThanOrEqual(rate);
        expect(si(c, r - 5, v)).toBeGreaterThanOrEqual(rate);
        expect(si(c, r, v + 5)).toBeGreaterThanOrEqual(rate);
        const us = evaporation_us(c * 1.8 + 32, a * 1.8 + 32, r, v / 1.609344);
        if (rate > 0.1) expect("value" in us && (us.value * 4.8824) / rate).toBeCloseTo(1.04, 1);
      }),
    );
  });
});
