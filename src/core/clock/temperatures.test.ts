import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { siteTime } from "./site";
import { type AirSpec, airOf } from "./temperatures";

const site = { zone: "America/New_York", latitude: 41.4, longitude: -73.9 };
const start = "2027-03-01";
const time = siteTime(site.zone, start);
const hudson = [-7, -6, -1, 5, 11, 16, 19, 18, 14, 7, 2, -4].map((low, i) => ({ low, high: low + 9 + (i % 3) }));
const air = (more: Partial<AirSpec> = {}, first = start) => airOf({ ...site, usualTemperatures_C: hudson, days_C: [], ...more }, first);
const day = (date: string) => time.dayOfDate(date) as number;

/** Degrees in each hour of a local date. */
function hours(of: ReturnType<typeof air>, date: string): number[] {
  const first = Math.round(time.startOf(day(date)) / 60);
  return [...of.hours_cC(first, first + 24)].map((hundredths) => hundredths / 100);
}

describe("the air at a site", () => {
  test("is the usual low and high in the middle of a month, and goes straight to the next between", () => {
    const january = air({}, "2027-01-01").day(15);
    expect(january.low_C).toBeCloseTo(-7, 1);
    expect(january.high_C).toBeCloseTo(2, 1);
    const change = air().day(day("2027-04-30"));
    expect(change.low_C).toBeCloseTo((5 + 11) / 2, 0);
    expect(change.source).toBe("usual");
    const all = Array.from({ length: 366 }, (_, n) => air().day(n).low_C);
    for (let n = 1; n < all.length; n += 1) expect(Math.abs((all[n] as number) - (all[n - 1] as number))).toBeLessThan(0.3);
  });

  test("is coldest about sunrise and warmest two hours after the sun's noon", () => {
    for (const [date, rises] of [
      ["2027-06-21", 5],
      ["2027-12-20", 7],
    ] as const) {
      const temperatures = hours(air(), date);
      const coldest = temperatures.indexOf(Math.min(...temperatures));
      const warmest = temperatures.indexOf(Math.max(...temperatures));
      expect(Math.abs(coldest - rises), date).toBeLessThanOrEqual(1);
      // 73.9 degrees west is four minutes behind its zone; in summer the clocks are an hour ahead of the sun.
      expect([13, 14, 15]).toContain(warmest);
      const { low_C, high_C } = air().day(day(date));
      expect(Math.min(...temperatures)).toBeGreaterThanOrEqual(low_C - 0.35);
      expect(Math.min(...temperatures)).toBeLessThan(low_C + 0.5);
      expect(Math.max(...temperatures)).toBeGreaterThan(high_C - 0.5);
      expect(Math.max(...temperatures)).toBeLessThanOrEqual(high_C + 0.01);
    }
  });

  test("a day that is forecast or measured takes the place of the usual one, and no other", () => {
    const days_C = [{ date: "2027-04-03", low: -3, high: 1, source: "forecast" as const }];
    const with3 = air({ days_C });
    expect(with3.day(day("2027-04-03"))).toEqual({ low_C: -3, high_C: 1, source: "forecast" });
    expect(Math.max(...hours(with3, "2027-04-03").slice(8, 15))).toBeLessThanOrEqual(1);
    expect(hours(with3, "2027-04-05")).toEqual(hours(air(), "2027-04-05"));
    expect(with3.lowest_C).toBe(-7);
    expect(air({ days_C: [{ ...days_C[0]!, low: -30 }] }).lowest_C).toBe(-30);
  });

  test("is 20 °C where nothing is given, and says that it is not known", () => {
    const unknown = air({ usualTemperatures_C: null });
    expect([unknown.known, air().known]).toEqual([false, true]);
    expect(new Set(unknown.hours_cC(-100, 9000))).toEqual(new Set([2000]));
    expect([unknown.lowest_C, unknown.highest_C]).toEqual([20, 20]);
  });

  test("follows the local date beside the date line and under the midnight sun", () => {
    for (const [zone, longitude, latitude] of [
      ["Pacific/Kiritimati", -157.4, 1.9],
      ["Pacific/Auckland", 174.8, -36.8],
      ["Arctic/Longyearbyen", 15.6, 78.2],
    ] as const) {
      const days_C = [{ date: "2027-06-10", low: 30, high: 40, source: "measured" as const }];
      const far = airOf({ zone, longitude, latitude, usualTemperatures_C: null, days_C }, "2027-06-01");
      const first = Math.round(siteTime(zone, "2027-06-01").startOf(9) / 60);
      const noon = far.hours_cC(first + 13, first + 14)[0] as number;
      expect(noon, zone).toBeGreaterThan(3500);
      expect(far.hours_cC(first - 24 + 13, first - 24 + 14)[0], zone).toBe(2000);
    }
  });

  const degree = fc.integer({ min: -50, max: 55 });
  const month = fc.tuple(degree, fc.integer({ min: 0, max: 25 })).map(([low, more]) => ({ low, high: low + more }));
  const year = fc.array(month, { minLength: 12, maxLength: 12 });

  test("never leaves what is given, has no gap, and says the same whatever stretch is asked for", () => {
    fc.assert(
      fc.property(
        year,
        fc.integer({ min: -90, max: 90 }),
        fc.integer({ min: -180, max: 180 }),
        fc.integer({ min: -9000, max: 20_000 }),
        fc.integer({ min: 1, max: 100 }),
        (usualTemperatures_C, latitude, longitude, from, count) => {
          const one = air({ usualTemperatures_C, latitude, longitude });
          const all = one.hours_cC(from, from + count);
          expect(all).toHaveLength(count);
          for (const hundredths of all) {
            expect(Number.isInteger(hundredths)).toBe(true);
            expect(hundredths).toBeGreaterThanOrEqual(100 * one.lowest_C);
            expect(hundredths).toBeLessThanOrEqual(100 * one.highest_C);
          }
          const half = count >> 1;
          expect([...one.hours_cC(from, from + half), ...one.hours_cC(from + half, from + count)]).toEqual([...all]);
        },
      ),
    );
  });

  test("a warmer low or high makes no hour colder", () => {
    fc.assert(
      fc.property(
        year,
        fc.nat(11),
        fc.integer({ min: 0, max: 15 }),
        fc.boolean(),
        fc.integer({ min: 0, max: 9000 }),
        (months, m, by, low, from) => {
          const warmer = months.map((usual, i) =>
            i !== m ? usual : low ? { ...usual, low: usual.low + by } : { ...usual, high: usual.high + by },
          );
          const [before, after] = [months, warmer].map((usualTemperatures_C) => air({ usualTemperatures_C }).hours_cC(from, from + 48));
          before!.forEach((hundredths, i) => {
            expect(after![i]).toBeGreaterThanOrEqual(hundredths);
          });
        },
      ),
    );
  });
});
