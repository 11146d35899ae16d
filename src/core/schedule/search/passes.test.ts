import { expect, test } from "vitest";
import { type ProblemSpec, problemOf, repeating } from "../../../../test/schedule/problem-of";
import type { Solution } from "../problem";
import { verify } from "../verify";
import { Passes } from "./passes";

// Of two places, three jobs of 6 and two of 9 take one each: 18 at the least.
const amounts = [6, 6, 6, 9, 9];
const spec: ProblemSpec = {
  jobs: amounts.map((amount) => ({ amount })),
  capacities: [{ id: "place", kind: "room", times: Int32Array.of(0), levels: Int32Array.of(2), holds: "working" }],
  demands: amounts.map((_, j) => [j, 0, 1]),
};

test("comes from a schedule of one job after the other to the earliest finish, population after population", () => {
  const p = problemOf(spec);
  const start = Int32Array.from(amounts, (_, j) => amounts.slice(0, j).reduce((a, b) => a + b, 0));
  let best: Solution = { start, finish: start.map((s, j) => s + amounts[j]!) };
  const passes = Passes.of(p, 20, 1)!;
  let made = 0;
  let level = 0;
  for (let k = 0; k < 200; k++) {
    const next = passes.next(best);
    made += next.passes;
    if (next.level !== null) {
      const finish = next.level.map((s, j) => s + amounts[j]!);
      expect(verify(p, { start: next.level, finish })).toEqual([]);
      expect(Math.max(...finish)).toBe(Math.max(...best.finish));
      level++;
    }
    if (next.better === null) continue;
    expect(verify(p, next.better)).toEqual([]);
    expect(Math.max(...next.better.finish)).toBeLessThan(Math.max(...best.finish));
    best = next.better;
  }
  expect(made).toBeGreaterThanOrEqual(200);
  expect(level).toBeGreaterThan(0);
  expect(Math.max(...best.finish)).toBe(18);
});

test("is not for jobs that pause", () => {
  const office = repeating("office", 24, [[8, 17]]);
  expect(Passes.of(problemOf({ ...spec, clocks: [office] }), 20, 1)).toBeNull();
});
