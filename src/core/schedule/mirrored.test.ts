import fc from "fast-check";
import { expect, test } from "vitest";
import { problemOf, repeating } from "../../../test/schedule/problem-of";
import { clocks, randomProblem } from "../../../test/schedule/random-problem";
import { type ElapsedMinute, never } from "../base";
import { SerialPasses, solve, verify } from ".";
import { BackwardClock, backwardWait } from "./backward";
import { justified } from "./justify";
import { mirrored } from "./mirrored";

const at = (t: number): ElapsedMinute => t as ElapsedMinute;
const last = (finish: Int32Array): number => finish.reduce((a, b) => Math.max(a, b), 0);

test("a clock read backwards runs at the same minutes, and at every minute before the beginning", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...clocks),
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 0, max: 420 }),
      fc.integer({ min: 1, max: 40 }),
      (clock, end, t, n) => {
        const back = new BackwardClock(clock, end);
        const runs = (minute: number): boolean => minute < 0 || clock.begin(at(minute)) === minute;
        const ran = Array.from({ length: 900 }, (_, m) => m).filter((m) => runs(end - 1 - m));
        expect(back.reading(at(t))).toBe(ran.filter((m) => m < t).length);
        expect(back.begin(at(t))).toBe(ran.find((m) => m >= t));
        const later = ran.filter((m) => m >= t);
        expect(back.advance(at(t), n)).toBe(later[n - 1]! + 1);
        const earlier = ran.filter((m) => m < t);
        if (earlier.length >= n) expect(back.retreat(at(t), n)).toBe(earlier[earlier.length - n]!);
        const stop = Array.from({ length: 900 }, (_, m) => m).find((m) => m >= t && !ran.includes(m));
        expect(back.runEnd(at(t))).toBe(stop ?? never);
      },
    ),
    { numRuns: 200 },
  );
});

test("a wait read backwards ends where it began", () => {
  const office = repeating("office", 24, [[8, 17]]);
  const back = backwardWait(office, 100);
  for (let from = 0; from < 60; from++) {
    const ready = office.advance(at(from), 5);
    // The latest beginning from which the wait is over by then.
    expect(back.advance(at(100 - ready), 5)).toBe(100 - office.retreat(ready, 5));
    expect(back.retreat(at(100 - from), 5)).toBe(100 - ready);
  }
  expect(back.advance(at(98), 5)).toBe(103);
  expect(back.advance(at(98), 0)).toBe(98);
});

test("a mirrored problem keeps what a pass from the end needs", () => {
  const p = problemOf({
    clocks: [repeating("day", 24, [[8, 16]])],
    jobs: [{ amount: 3, release: 5 }, { amount: 4 }],
    links: [{ from: 0, to: 1, ends: "SF", least: 6, most: 90 }],
    capacities: [{ id: "ann", kind: "people", times: Int32Array.of(0, 30, 60), levels: Int32Array.of(2, 1, 0), holds: "working" }],
    demands: [[0, 0, 1]],
    horizon: 200,
  });
  const q = mirrored(p, 50);
  expect([q.links.from[0], q.links.to[0], q.links.fromEnd[0], q.links.toEnd[0], q.links.least[0], q.links.most[0]]).toEqual([
    1, 0, 0, 1, 6, -1,
  ]);
  expect([...q.release]).toEqual([0, 0]);
  expect([[...q.capacities[0]!.times], [...q.capacities[0]!.levels]]).toEqual([
    [0, 20, 50],
    [1, 2, 2],
  ]);
});

test("served again by how late they may be, jobs finish no later, and keep all they kept", () => {
  fc.assert(
    fc.property(randomProblem, (p) => {
      const { solution } = solve(p);
      if (solution === null) return;
      const better = justified(new SerialPasses(p), solution, p.jobs, 3);
      expect(last(better.finish)).toBeLessThanOrEqual(last(solution.finish));
      expect(verify(p, better)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test("what has a long wait behind it is served first when that is seen from the end", () => {
  // One person; two short jobs with long waits behind them and a long one that nothing waits for.
  const p = problemOf({
    jobs: [{ amount: 25 }, { amount: 5 }, { amount: 1 }, { amount: 5 }, { amount: 1 }],
    links: [
      { from: 1, to: 2, least: 30 },
      { from: 3, to: 4, least: 30 },
    ],
    capacities: [constantOne],
    demands: [0, 1, 2, 3, 4].map((j) => [j, 0, 1] as const),
    horizon: 500,
  });
  const poor = solve(p, Int32Array.of(0, 1, 4, 2, 3)).solution!;
  expect(last(poor.finish)).toBe(66);
  expect(last(justified(new SerialPasses(p), poor, 5, 1).finish)).toBe(41);
});

const constantOne = { id: "ann", kind: "people", times: Int32Array.of(0), levels: Int32Array.of(1), holds: "working" } as const;
