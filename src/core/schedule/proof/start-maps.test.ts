import fc from "fast-check";
import { expect, test } from "vitest";
import { problemOf, repeating } from "../../../../test/schedule/problem-of";
import { startMaps } from "./start-maps";
import { type Barred, startsOf } from "./starts";

const day = repeating("day", 24, [
  [7, 12],
  [13, 17],
]);

const job = fc.record({
  amount: fc.integer({ min: 0, max: 14 }),
  unbroken: fc.boolean(),
  clock: fc.integer({ min: 0, max: 1 }),
  low: fc.integer({ min: 0, max: 60 }),
  lasts: fc.integer({ min: 0, max: 60 }),
  bars: fc.integer({ min: 0, max: 2 }),
});

const bars: readonly (readonly Barred[])[] = [
  [],
  [{ from: 30, to: 34, working: true }],
  [
    { from: 12, to: 13, working: true },
    { from: 50, to: 56, working: false },
    { from: 60, to: 80, working: true },
  ],
];

test("jobs that share their starts have those that each would have by itself", () => {
  fc.assert(
    fc.property(fc.array(job, { minLength: 1, maxLength: 8 }), (jobs) => {
      const p = problemOf({ clocks: [day, repeating("short day", 24, [[9, 12]])], jobs, horizon: 200 });
      const low = Int32Array.from(jobs, (j) => j.low);
      const high = Int32Array.from(jobs, (j) => j.low + j.lasts);
      const each = jobs.map((_, j) => startsOf(p, j, low[j]!, high[j]!, bars[jobs[j]!.bars]!));
      const shared = startMaps(
        p,
        low,
        high,
        (j) => `${jobs[j]!.bars}`,
        (j) => bars[jobs[j]!.bars]!,
      );
      if (each.some((map) => map === null)) expect(shared).toBeNull();
      else
        expect(shared!.map(({ from, to, length }) => [[...from], [...to], [...length]])).toEqual(
          each.map((map) => [[...map!.from], [...map!.to], [...map!.length]]),
        );
    }),
    { numRuns: 400 },
  );
});
