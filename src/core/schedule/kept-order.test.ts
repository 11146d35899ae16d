import fc from "fast-check";
import { expect, test } from "vitest";
import { constant, problemOf } from "../../../test/schedule/problem-of";
import { randomProblem } from "../../../test/schedule/random-problem";
import { keptOrder, proofOf, solve, verify } from ".";
import { lastOf } from "./last-of";
import { earliest, netOf } from "./network";

/** Clashes after which a problem is left alone. */
const most = 400;

test("where all keep their order, what the links allow first needs nothing more than there is", () => {
  const job = fc.record({
    amount: fc.integer({ min: 0, max: 6 }),
    release: fc.integer({ min: 0, max: 9 }),
    needs: fc.tuple(fc.nat(3), fc.nat(2)),
  });
  let moved = 0;
  fc.assert(
    fc.property(fc.array(job, { minLength: 2, maxLength: 14 }), fc.nat(99), (jobs, by) => {
      const p = problemOf({
        jobs: jobs.map(({ amount, release }) => ({ amount, release })),
        capacities: [constant("r0", "equipment", 3, "span"), constant("r1", "people", 2, "span")],
        demands: jobs.flatMap(({ needs }, j) => needs.flatMap((number, r) => (number > 0 ? [[j, r, number] as const] : []))),
      });
      const { solution } = solve(
        p,
        Int32Array.from(jobs, (_, j) => (by * (j + 3)) % 17),
      );
      const late = { start: solution!.start.map((t) => 2 * t), finish: solution!.start.map((t, j) => 2 * t + p.amount[j]!) };
      expect(verify(p, late)).toEqual([]);
      const kept = keptOrder(p, late, () => false);
      expect(verify(kept, late)).toEqual([]);
      const early = earliest(kept, netOf(kept));
      expect(verify(p, { start: early.start, finish: early.finish })).toEqual([]);
      if (lastOf(early.finish) < lastOf(late.finish)) moved++;
    }),
    { numRuns: 300, seed: 3 },
  );
  expect(moved).toBeGreaterThan(100);
});

test("the schedule stays one, what is found is one, and those that are not free keep their order", () => {
  let better = 0;
  let ordered = 0;
  fc.assert(
    fc.property(randomProblem, fc.nat(13), (p, nth) => {
      const { solution } = solve(
        p,
        Int32Array.from({ length: p.jobs }, (_, j) => (7 * j + 3 * nth) % 11),
      );
      if (solution === null) return;
      const isFree = (j: number): boolean => (j + nth) % 3 === 0;
      const kept = keptOrder(p, solution, isFree);
      expect(verify(kept, solution)).toEqual([]);
      for (let l = p.links.count; l < kept.links.count; l++) {
        const [from, to] = [kept.links.from[l]!, kept.links.to[l]!];
        expect(isFree(from) || isFree(to)).toBe(false);
        expect(solution.finish[from]).toBeLessThanOrEqual(solution.start[to]!);
        ordered++;
      }
      const proof = proofOf(kept, solution);
      while (!proof.done && proof.clashes < most) proof.step(50);
      const found = proof.result().solution!;
      expect(verify(p, found)).toEqual([]);
      for (let l = p.links.count; l < kept.links.count; l++)
        expect(found.finish[kept.links.from[l]!]).toBeLessThanOrEqual(found.start[kept.links.to[l]!]!);
      if (lastOf(found.finish) < lastOf(solution.finish)) better++;
    }),
    { numRuns: 300, seed: 5 },
  );
  expect(better).toBeGreaterThan(5);
  expect(ordered).toBeGreaterThan(200);
});
