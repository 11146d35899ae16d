import fc from "fast-check";
import { expect, test } from "vitest";
import { randomProblem } from "../../../test/schedule/random-problem";
import type { ElapsedMinute } from "../base";
import { netOf, putLater, solve, verify } from ".";

test("jobs put later break nothing, end by when they are to, and no job that was not named moves", () => {
  let moved = 0;
  fc.assert(
    fc.property(randomProblem, fc.nat(3), (p, by) => {
      const { solution } = solve(p);
      if (solution === null) return;
      const last = Math.max(...solution.finish);
      const jobs = [...solution.start.keys()]
        .filter((j) => j % 2 === by % 2)
        .map((job) => ({ job, finishBy: last as ElapsedMinute, least_min: by }));
      const later = putLater(p, netOf(p), solution, jobs);
      if (later === null) return;
      expect(verify(p, later)).toEqual([]);
      later.start.forEach((t, j) => {
        if (j % 2 !== by % 2) expect(t).toBe(solution.start[j]);
        if (t === solution.start[j]) return;
        moved++;
        expect(t - solution.start[j]!).toBeGreaterThanOrEqual(Math.max(1, by));
        expect(later.finish[j]).toBeLessThanOrEqual(last);
      });
    }),
    { numRuns: 300, seed: 3 },
  );
  expect(moved).toBeGreaterThan(100);
});
