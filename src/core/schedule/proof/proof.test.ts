import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { enumerate } from "../../../../test/schedule/enumerate";
import { crowdedProblem, tinyProblem } from "../../../../test/schedule/tiny-problem";
import type { Problem, Solution } from "../problem";
import { verify } from "../verify";
import { proofOf } from "./index";

const lastOf = (finish: Int32Array): number => finish.reduce((a, b) => Math.max(a, b), 0);

function agrees(p: Problem, first?: Solution | null): void {
  const search = proofOf(p, first);
  search.step(100_000);
  const { status, solution, bound } = search.result();
  const { finish } = enumerate(p);
  expect(search.done).toBe(true);
  expect(status).toBe(finish < 0 ? "infeasible" : "proved");
  if (finish < 0) return;
  expect(verify(p, solution!)).toEqual([]);
  expect(lastOf(solution!.finish)).toBe(finish);
  expect(bound).toBe(finish);
}

describe("says what trying every minute says", () => {
  test("of small problems with every feature", () => {
    fc.assert(
      fc.property(tinyProblem, (p) => agrees(p)),
      { numRuns: 400 },
    );
  });
  test("of small problems, beginning without a schedule", () => {
    fc.assert(
      fc.property(tinyProblem, (p) => agrees(p, null)),
      { numRuns: 400 },
    );
  });
  test("of jobs that crowd each other, beginning without a schedule", () => {
    fc.assert(
      fc.property(crowdedProblem, (p) => agrees(p, null)),
      { numRuns: 150 },
    );
  });
});
