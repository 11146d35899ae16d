import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { randomProblem } from "../../../test/schedule/random-problem";
import { cannotHold, earliest, netOf, solve, verify } from ".";

describe("solve", () => {
  it("gives schedules that the second look accepts, never before the bound, and the same twice", () => {
    const met = { planned: 0, proved: 0, infeasible: 0, "not-found": 0 };
    fc.assert(
      fc.property(randomProblem, (p) => {
        const result = solve(p);
        met[result.status]++;
        expect(solve(p)).toEqual(result);
        if (result.solution === null) return;
        expect(verify(p, result.solution)).toEqual([]);
        expect(Math.max(...result.solution.finish)).toBeGreaterThanOrEqual(result.bound);
        expect(Math.min(...result.solution.start)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 3000, seed: 20270306 },
    );
    expect(met.planned, JSON.stringify(met)).toBeGreaterThan(150);
    expect(met.proved).toBeGreaterThan(150);
    expect(met.infeasible).toBeGreaterThan(150);
  });

  it("explains what is infeasible by parts of which none can be left out", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomProblem, (p) => {
        const { status, witness } = solve(p);
        if (status !== "infeasible") {
          expect(earliest(p, netOf(p)).broken).toBe(-1);
          return;
        }
        seen++;
        expect(cannotHold(p, witness)).toBe(true);
        for (const part of witness)
          expect(
            cannotHold(
              p,
              witness.filter((other) => other !== part),
            ),
          ).toBe(false);
      }),
      { numRuns: 3000, seed: 7 },
    );
    expect(seen).toBeGreaterThan(150);
  });
});
