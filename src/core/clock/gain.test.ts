import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ElapsedMinute, never } from "../base";
import { elapsed } from "./elapsed";
import { gainClock } from "./gain";
import type { Gathering } from "./gathering";
import { heldClock } from "./held";
import { RateClock } from "./rate";

/** A rate clock that repeats the hours given. */
function repeating(id: string, hours: readonly number[]): RateClock {
  const of = (from: number, to: number) =>
    Int32Array.from({ length: to - from }, (_, i) => hours[(((from + i) % hours.length) + hours.length) % hours.length] as number);
  return new RateClock(id, { of, least: Math.min(...hours), most: Math.max(...hours) });
}

const hours = fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 1, maxLength: 40 });
const running = hours.filter((rates) => rates.some((rate) => rate > 0));
const minute = fc.integer({ min: -4000, max: 4000 }).map((t) => t as ElapsedMinute);
const amount = fc.integer({ min: 0, max: 3_000_000 });

/** What every clock of concrete has to agree on, whatever it counts. */
function laws(clock: Gathering, a: ElapsedMinute, b: ElapsedMinute, n: number): void {
  const there = clock.advance(a, n);
  expect(there >= a).toBe(true);
  if (there < never) {
    if (n > 0) expect(clock.gathered(a, there)).toBeGreaterThanOrEqual(n);
    if (n > 0 && there > a) expect(clock.gathered(a, (there - 1) as ElapsedMinute)).toBeLessThan(n);
    expect(there - a).toBeGreaterThanOrEqual(clock.shortest(n));
  }
  expect(a <= clock.retreat(b, n)).toBe(there <= b);
  const until = clock.limit(a, n);
  expect(b <= until).toBe(clock.unlimit(b, n) <= a);
  if (until < never) {
    expect(clock.gathered(a, until)).toBeLessThanOrEqual(n);
    expect(clock.gathered(a, (until + 1) as ElapsedMinute)).toBeGreaterThan(n);
    expect(until - a).toBeLessThanOrEqual(clock.longest(n));
  }
  for (const figure of [there, until, clock.reading(a), clock.shortest(n), clock.longest(n)]) expect(Number.isInteger(figure)).toBe(true);
}

describe("a clock with a rate for every hour", () => {
  test("its directions agree, and advance then reading comes back", () => {
    fc.assert(
      fc.property(hours, minute, minute, amount, (rates, a, b, n) => {
        const clock = repeating("r", rates);
        laws(clock, a, b, n);
        const there = clock.advance(a, n);
        expect(there < never).toBe(n === 0 || rates.some((rate) => rate > 0));
        if (there >= never) return;
        const past = clock.reading(there) - clock.reading(a) - n;
        expect(past).toBeGreaterThanOrEqual(0);
        expect(past).toBeLessThan(Math.max(1, ...rates));
      }),
    );
  });

  test("counts as adding minute by minute does, before the epoch too", () => {
    fc.assert(
      fc.property(hours, minute, minute, (rates, a, b) => {
        const clock = repeating("r", rates);
        const [from, to] = a < b ? [a, b] : [b, a];
        let sum = 0;
        for (let t = from; t < to; t++) {
          const hour = Math.floor(t / 60) % rates.length;
          sum += rates[hour < 0 ? hour + rates.length : hour] as number;
        }
        expect(clock.gathered(from, to)).toBe(sum);
      }),
    );
  });

  test("runs while it gathers, and says never where it never will", () => {
    const clock = repeating("day and night", [0, 0, 5, 5, 5, 0]);
    const at = (t: number) => t as ElapsedMinute;
    expect([clock.begin(at(0)), clock.begin(at(130)), clock.begin(at(301))]).toEqual([120, 130, 480]);
    expect([clock.runEnd(at(0)), clock.runEnd(at(130)), clock.runEnd(at(299))]).toEqual([0, 300, 300]);
    const still = repeating("frozen", [0]);
    expect([still.advance(at(7), 1), still.limit(at(7), 0), still.begin(at(7)), still.shortest(1), still.longest(0)]).toEqual(
      new Array(5).fill(never),
    );
    expect([still.advance(at(7), 0), still.runEnd(at(7))]).toEqual([7, 7]);
    expect(repeating("even", [3]).runEnd(at(7))).toBe(never);
  });
});

describe("a clock kept warm after its beginning", () => {
  test("its directions agree, and keeping never makes it later", () => {
    fc.assert(
      fc.property(running, fc.nat(3000), fc.integer({ min: 1, max: 3000 }), minute, minute, amount, (rates, floor, for_min, a, b, n) => {
        const after = repeating("after", rates);
        const kept = repeating(
          "kept",
          rates.map((rate) => Math.max(rate, floor)),
        );
        const clock = heldClock("held", kept, after, for_min);
        laws(clock, a, b, n);
        expect(clock.advance(a, n)).toBeLessThanOrEqual(after.advance(a, n));
        expect(clock.advance(a, n)).toBeGreaterThanOrEqual(kept.advance(a, n));
        expect(clock.begin(a)).toBe(a);
        expect(clock.fromBeginning).toBe(true);
      }),
    );
  });
});

describe("a clock from a gain table", () => {
  const table = fc.array(fc.integer({ min: 0, max: 90_000 }), { minLength: 1, maxLength: 30 }).map((steps) => {
    let sum = 0;
    return Float64Array.from([0, ...steps.map((step) => (sum += step))]);
  });

  test("counts from where it is asked, and its directions agree, on any clock under it", () => {
    fc.assert(
      fc.property(table, running, fc.nat(2000), minute, minute, fc.nat(40), (needed, rates, for_min, a, b, n) => {
        const age = repeating("age", rates);
        for (const base of [
          elapsed,
          age,
          heldClock(
            "held",
            repeating(
              "kept",
              rates.map((rate) => Math.max(rate, 400)),
            ),
            age,
            for_min,
          ),
        ]) {
          const clock = gainClock({ id: "g", needed }, base);
          const units = n < needed.length ? (needed[n] as number) : never;
          expect(clock.advance(a, n)).toBe(units === never ? never : base.advance(a, units));
          expect(a <= clock.retreat(b, n)).toBe(clock.advance(a, n) <= b);
          expect(b <= clock.limit(a, n)).toBe(clock.unlimit(b, n) <= a);
          if (clock.advance(a, n + 1) < never) expect(clock.limit(a, n)).toBe(clock.advance(a, n + 1) - 1);
          expect(clock.begin(a)).toBe(a);
          expect(clock.runEnd(a)).toBe(never);
        }
      }),
    );
  });

  test("is never reached where the table ends", () => {
    const clock = gainClock({ id: "short", needed: Float64Array.from([0, 10, 30]) }, elapsed);
    const zero = 0 as ElapsedMinute;
    expect([clock.advance(zero, 2), clock.advance(zero, 3), clock.limit(zero, 2), clock.shortest(3), clock.longest(2)]).toEqual([
      30,
      never,
      never,
      never,
      never,
    ]);
    expect([clock.reading(29 as ElapsedMinute), clock.gathered(100 as ElapsedMinute, 130 as ElapsedMinute)]).toEqual([1, 2]);
    expect([clock.retreat(zero, 3), clock.unlimit(zero, 2)]).toEqual([-never, -never]);
  });
});
