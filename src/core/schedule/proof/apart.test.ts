import fc from "fast-check";
import { expect, test } from "vitest";
import { Apart } from "./apart";
import type { Lag } from "./model";

/** A wait between two starts, and the same read backwards. */
const wait = (from: number, to: number, lag: number): Lag[] => [
  { from: 2 * from, to: 2 * to, lag },
  { from: 2 * to + 1, to: 2 * from + 1, lag },
];

test("a start follows from an earlier one by the longest way of waits, and a latest start the other way round", () => {
  // 0 -3-> 1 -4-> 3 and 0 -5-> 2 -1-> 3; 3 is at most 9 after 0.
  const apart = new Apart(5, [...wait(0, 1, 3), ...wait(1, 3, 4), ...wait(0, 2, 5), ...wait(2, 3, 1), ...wait(3, 0, -9)]);
  expect(apart.follows(0, 10, 6, 17)).toBe(true);
  expect(apart.follows(0, 10, 6, 18)).toBe(false);
  // Ends by the latest start -20 of 3: 0 at -13 the latest.
  expect(apart.follows(7, -20, 1, -13)).toBe(true);
  expect(apart.follows(7, -20, 1, -12)).toBe(false);
  expect(apart.follows(6, 30, 0, 21)).toBe(true);
  expect(apart.follows(6, 30, 0, 22)).toBe(false);
  // Nothing between them, of two kinds, of one and the same, and of what is no start.
  expect(apart.follows(0, 10, 8, -1000)).toBe(false);
  expect(apart.follows(0, 10, 7, -1000)).toBe(false);
  expect(apart.follows(0, 10, 0, 5)).toBe(false);
  expect(apart.follows(0, 10, 12, 0)).toBe(false);
  expect([0, 6, 8, 7, 9, 12].map((side) => apart.moves(side))).toEqual([true, true, false, true, false, false]);
});

test("the difference is the least of all starts that keep the waits", () => {
  const jobs = 5;
  const waits = fc.array(fc.tuple(fc.nat(jobs - 1), fc.nat(jobs - 1), fc.integer({ min: 0, max: 4 })), { maxLength: 8 });
  fc.assert(
    fc.property(waits, (all) => {
      const kept = all.filter(([a, b]) => a < b);
      const apart = new Apart(
        jobs,
        kept.flatMap(([a, b, lag]) => wait(a, b, lag)),
      );
      for (let x = 0; x < jobs; x++) {
        // x as late as 0, all others as early as that lets them be: what does not follow x begins far before it.
        const start = Array.from({ length: jobs }, (_, y): number => (y === x ? 0 : -1000));
        for (const _ of start) for (const [a, b, lag] of kept) start[b] = Math.max(start[b]!, start[a]! + lag);
        for (let y = 0; y < jobs; y++) {
          if (y === x) continue;
          expect(apart.follows(2 * x, 0, 2 * y, start[y]!)).toBe(start[y]! > -900);
          expect(apart.follows(2 * x, 0, 2 * y, start[y]! + 1)).toBe(false);
        }
      }
    }),
  );
});
