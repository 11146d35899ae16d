import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ElapsedMinute, never, notEver } from "../base";
import { gainClock } from "./gain";
import { strengthClock, strengthGain } from "./strength";

const zero = 0 as ElapsedMinute;
const day = 1440;

describe("strength at a constant 20 C", () => {
  test.each([
    // ACI 209R-92 table 2.2.1 ratios at ages in days, as printed to three places (from memory, recomputed by hand).
    ["I", 1, 206],
    ["I", 3, 458],
    ["I", 7, 704],
    ["I", 14, 881],
    ["I", 28, 1007],
    ["I", 90, 1118],
    ["III", 1, 311],
    ["III", 3, 593],
    ["III", 7, 801],
    ["III", 28, 998],
  ] as const)("cement %s has after %i days %i thousandths", (cement, age, ratio) => {
    const clock = strengthClock(cement);
    expect(Math.abs(clock.reading((age * day) as ElapsedMinute) - ratio)).toBeLessThanOrEqual(1);
    expect(Math.abs(clock.advance(zero, ratio) - age * day)).toBeLessThanOrEqual(0.02 * age * day);
  });

  test("500 of 3000 psi takes 0.78 days, 70 % 6.9, 75 % 8.3 (worked by hand from the formula)", () => {
    const clock = strengthClock("I");
    expect(clock.advance(zero, 167) / day).toBeCloseTo(0.78, 2);
    expect(clock.advance(zero, 700) / day).toBeCloseTo(6.91, 2);
    expect(clock.advance(zero, 750) / day).toBeCloseTo(8.28, 2);
  });

  test("is never reached where the curve ends: 1/0.85 and 1/0.92 of the 28 day strength", () => {
    expect(strengthClock("I").advance(zero, 1150)).not.toBe(never);
    expect(strengthClock("I").advance(zero, 1176)).toBe(never);
    expect(strengthClock("III").advance(zero, 1087)).toBe(never);
    expect(strengthClock("III").retreat(zero, 1087)).toBe(notEver);
    expect(strengthClock("I").limit(zero, 1200)).toBe(never);
    expect(strengthClock("I").unlimit(zero, 1200)).toBe(notEver);
  });

  test("minutes never fall, begin at none and are whole", () => {
    for (const cement of ["I", "III"] as const) {
      const { minutes } = strengthGain(cement);
      expect(minutes[0]).toBe(0);
      for (let n = 1; n < minutes.length; n += 1) expect(minutes[n]).toBeGreaterThan(minutes[n - 1] as number);
      expect(strengthClock(cement)).toBe(strengthClock(cement));
    }
  });
});

describe("a clock from a gain table", () => {
  test("counts from where it is asked, and its directions agree", () => {
    const table = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 30 }).map((steps) => {
      let sum = 0;
      return Int32Array.from([0, ...steps.map((step) => (sum += step))]);
    });
    fc.assert(
      fc.property(table, fc.integer({ min: -500, max: 500 }), fc.integer({ min: -500, max: 1500 }), fc.nat(40), (minutes, a, b, n) => {
        const clock = gainClock({ id: "g", minutes });
        const [from, to] = [a as ElapsedMinute, b as ElapsedMinute];
        const needed = n < minutes.length ? (minutes[n] as number) : never;
        expect(clock.advance(from, n)).toBe(needed === never ? never : a + needed);
        expect(a <= clock.retreat(to, n)).toBe(needed !== never && a + needed <= b);
        expect(b <= clock.limit(from, n)).toBe(clock.unlimit(to, n) <= a);
        if (needed !== never) {
          expect(clock.reading(needed as ElapsedMinute)).toBeGreaterThanOrEqual(n);
          if (needed > 0) expect(clock.reading((needed - 1) as ElapsedMinute)).toBeLessThan(n);
        }
        expect(clock.begin(from)).toBe(from);
        expect(clock.runEnd(from)).toBe(never);
      }),
    );
  });
});
