import fc from "fast-check";
import { expect, test } from "vitest";
import { randomProblem } from "../../../test/schedule/random-problem";
import { freed, type Problem, proofOf, type Solution, solve, verify } from ".";
import { lastOf } from "./last-of";

/** Clashes after which a problem is left alone. */
const most = 400;

function best(p: Problem, first: Solution): Solution | null {
  const proof = proofOf(p, first);
  while (!proof.done && proof.clashes < most) proof.step(50);
  return proof.done ? proof.result().solution : null;
}

test("what is cut out of a schedule has the best finish that the whole has with all others where they are", () => {
  let cut = 0;
  let better = 0;
  let stocked = 0;
  fc.assert(
    fc.property(randomProblem, fc.nat(13), fc.nat(1), (p, nth, all) => {
      // Served in no good order, so that something is to be gained.
      const { solution } = solve(
        p,
        Int32Array.from({ length: p.jobs }, (_, j) => (7 * j + 3 * nth) % 11),
      );
      if (solution === null) return;
      const from = solution.start.toSorted()[nth % p.jobs]!;
      const isFree = (j: number): boolean => solution.start[j]! >= from && (all === 1 || j % 3 > 0);
      const part = freed(p, solution, isFree, from);
      expect(verify(part.problem, part.solution)).toEqual([]);
      expect(part.whole(part.solution.start)).toEqual(solution);
      const release = p.release.map((r, j) => (isFree(j) ? Math.max(r, from) : 0));
      const fixed = p.fixed.map((f, j) => (isFree(j) ? f : solution.start[j]!));
      const due = p.due.map((d, j) => (isFree(j) ? d : solution.finish[j]!));
      const whole = best({ ...p, release, fixed, due }, solution);
      const made = best(part.problem, part.solution);
      if (whole === null || made === null) return;
      const then = part.whole(made.start);
      expect(verify(p, then)).toEqual([]);
      expect(lastOf(then.finish)).toBe(lastOf(whole.finish));
      then.start.forEach((t, j) => {
        if (!isFree(j)) expect(t).toBe(solution.start[j]);
      });
      if (part.problem.jobs < p.jobs) cut++;
      if (lastOf(whole.finish) < lastOf(solution.finish)) better++;
      if (part.problem.stocks.some((s, k) => s.inHand !== p.stocks[k]!.inHand)) stocked++;
    }),
    { numRuns: 400, seed: 5 },
  );
  expect(cut).toBeGreaterThan(100);
  expect(better).toBeGreaterThan(5);
  expect(stocked).toBeGreaterThan(20);
});
