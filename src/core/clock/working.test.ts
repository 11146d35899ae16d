import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ElapsedMinute, never, notEver } from "../base";
import { joined, type RunSource } from "./runs";
import { earliest_min, furthest_min, WorkingClock } from "./working";

const at = (t: number) => t as ElapsedMinute;

/** Runs that come back every `period` minutes. */
function periodic(windows: readonly (readonly [number, number])[], period: number): RunSource {
  return (from, to) => {
    const out: number[] = [];
    for (let k = Math.floor(from / period) - 1; k * period < to; k += 1) {
      for (const [a, b] of windows) out.push(Math.max(from, k * period + a), Math.min(to, k * period + b));
    }
    return joined(out);
  };
}

/** The slow obvious version: walks minute by minute. */
function walker(source: RunSource) {
  const low = -20_000;
  const runs = source(low, 20_000);
  const run = Array.from({ length: 40_000 }, (_, i) =>
    runs.some((from, r) => r % 2 === 0 && from <= low + i && low + i < (runs[r + 1] as number)),
  );
  const running = (t: number) => run[t - low] as boolean;
  const gathered = (from: number, to: number) => {
    let sum = 0;
    for (let t = from; t < to; t += 1) sum += running(t) ? 1 : 0;
    return sum;
  };
  /** First instant, stepping away from t, at which `good` says yes to the minutes gathered on the way. */
  const walk = (t: number, step: 1 | -1, good: (sum: number, next: number) => boolean) => {
    let sum = 0;
    for (let at = t; ; at += step) {
      const next = running(step === 1 ? at : at - 1) ? 1 : 0;
      if (good(sum, next)) return at;
      sum += next;
    }
  };
  return {
    gathered,
    advance: (t: number, a: number) => walk(t, 1, (sum) => sum >= a),
    retreat: (t: number, a: number) => walk(t, -1, (sum) => sum >= a),
    limit: (t: number, a: number) => walk(t, 1, (sum, next) => sum + next > a),
    unlimit: (t: number, a: number) => walk(t, -1, (sum, next) => sum + next > a),
    begin: (t: number) => walk(t, 1, (_, next) => next === 1),
    runEnd: (t: number) => walk(t, 1, (_, next) => next === 0),
  };
}

const windows = fc
  .uniqueArray(fc.integer({ min: 0, max: 299 }), { minLength: 2, maxLength: 8 })
  .map((cuts) => [...cuts].sort((a, b) => a - b))
  .map((cuts) => cuts.flatMap((from, i) => (i % 2 === 0 && i + 1 < cuts.length ? [[from, cuts[i + 1] as number] as const] : [])));

describe("a working clock", () => {
  test("agrees with walking minute by minute", () => {
    fc.assert(
      fc.property(windows, fc.integer({ min: -700, max: 700 }), fc.integer({ min: 0, max: 60 }), (w, t, a) => {
        const source = periodic(w, 300);
        const clock = new WorkingClock("w", source);
        const slow = walker(source);
        expect(clock.advance(at(t), a)).toBe(slow.advance(t, a));
        expect(clock.retreat(at(t), a)).toBe(slow.retreat(t, a));
        expect(clock.limit(at(t), a)).toBe(slow.limit(t, a));
        expect(clock.unlimit(at(t), a)).toBe(slow.unlimit(t, a));
        expect(clock.begin(at(t))).toBe(slow.begin(t));
        expect(clock.runEnd(at(t))).toBe(slow.runEnd(t));
        expect(clock.reading(at(t))).toBe(t >= 0 ? slow.gathered(0, t) : 0 - slow.gathered(t, 0));
      }),
      { numRuns: 60 },
    );
  });

  test("advance reaches its reading and no minute earlier does; retreat and limit mirror it", () => {
    const far = fc.integer({ min: -3_000_000, max: 9_000_000 });
    fc.assert(
      fc.property(windows, far, fc.integer({ min: 1, max: 20_000 }), far, (w, t, a, u) => {
        const clock = new WorkingClock("w", periodic(w, 300));
        const reading = (m: number) => clock.reading(at(m));
        const end = clock.advance(at(t), a);
        expect(reading(end)).toBe(reading(t) + a);
        expect(reading(end - 1)).toBe(reading(t) + a - 1);
        if (t < u) expect(reading(t)).toBeLessThanOrEqual(reading(u));
        // Adjoint: t is early enough for u exactly when advancing from t arrives by u.
        expect(t <= clock.retreat(at(u), a)).toBe(end <= u);
        expect(u <= clock.limit(at(t), a)).toBe(clock.unlimit(at(u), a) <= t);
      }),
    );
  });

  test("answers do not depend on what was asked before", () => {
    fc.assert(
      fc.property(windows, fc.array(fc.integer({ min: -2_000_000, max: 5_000_000 }), { minLength: 1, maxLength: 8 }), (w, ts) => {
        const used = new WorkingClock("w", periodic(w, 300));
        for (const t of ts) {
          const fresh = new WorkingClock("w", periodic(w, 300));
          expect(used.reading(at(t))).toBe(fresh.reading(at(t)));
          expect(used.advance(at(t), 77)).toBe(fresh.advance(at(t), 77));
          expect(used.runs(t, t + 1000)).toEqual(fresh.runs(t, t + 1000));
        }
      }),
    );
  });

  test("says never where nothing runs, and where it stops", () => {
    const empty = new WorkingClock("none", () => []);
    expect(empty.advance(at(0), 1)).toBe(never);
    expect(empty.retreat(at(0), 1)).toBe(notEver);
    expect(empty.limit(at(0), 0)).toBe(never);
    expect(empty.unlimit(at(0), 0)).toBe(notEver);
    expect(empty.begin(at(0))).toBe(never);
    expect(empty.runEnd(at(7))).toBe(7);
    expect(empty.advance(at(5), 0)).toBe(5);
    const once = new WorkingClock("once", (from, to) => joined([Math.max(from, 100), Math.min(to, 160)]));
    expect(once.advance(at(0), 60)).toBe(160);
    expect(once.advance(at(0), 61)).toBe(never);
    expect(once.limit(at(0), 59)).toBe(159);
    expect(once.limit(at(0), 60)).toBe(never);
    expect(once.begin(at(160))).toBe(never);
    expect(once.retreat(at(500), 60)).toBe(100);
    expect(once.unlimit(at(500), 60)).toBe(notEver);
    expect(once.unlimit(at(500), 59)).toBe(101);
  });

  test("a clock that never rests runs as far as it looks", () => {
    const always = new WorkingClock("always", (from, to) => [from, to]);
    expect(always.runEnd(at(0))).toBe(furthest_min);
    expect(always.reading(at(-5000))).toBe(-5000);
    expect(always.advance(at(earliest_min), 10)).toBe(earliest_min + 10);
    expect([...always.runs(-100, 100)]).toEqual([-100, 100]);
  });

  test("looks no further than it is asked", () => {
    let furthest = 0;
    const clock = new WorkingClock("lazy", (from, to) => {
      furthest = Math.max(furthest, to);
      return periodic([[480, 960]], 1440)(from, to);
    });
    clock.advance(at(0), 480 * 300);
    expect(furthest).toBe(400 * 1440);
    clock.advance(at(0), 480 * 500);
    expect(furthest).toBe(600 * 1440);
  });
});
