import { describe, expect, test } from "vitest";
import { constant, type LinkSpec, problemOf, repeating } from "../../../test/schedule/problem-of";
import { type ElapsedMinute, never, randomFrom } from "../base";
import { fitWhole, type Problem, proofOf, type Result, refusalOf, searchOf, solve, verify } from ".";

/** Problems that nobody should hand in, and why nothing can come of them. */
const week_h = 7 * 24;
const impossible: readonly (readonly [string, Problem])[] = [
  [
    "somebody is asked for where nobody is",
    problemOf({ jobs: [{ amount: 5 }], capacities: [constant("nobody", "people", 0)], demands: [[0, 0, 1]], horizon: 1000 }),
  ],
  [
    "more is asked for than there ever is",
    problemOf({ jobs: [{ amount: 5 }], capacities: [constant("shores", "equipment", 2, "span")], demands: [[0, 0, 3]], horizon: 1000 }),
  ],
  ["a job is longer than the horizon", problemOf({ jobs: [{ amount: 50 }], horizon: 40 })],
  [
    "an unbroken job is longer than any day",
    problemOf({ clocks: [repeating("day", 24, [[8, 16]])], jobs: [{ amount: 9, unbroken: true }], horizon: 1000 }),
  ],
  [
    "no calendar can meet a longest wait",
    problemOf({
      clocks: [repeating("monday", week_h, [[8, 16]]), repeating("thursday", week_h, [[80, 88]]), repeating("always", 1, [[0, 1]])],
      jobs: [
        { clock: 0, amount: 4 },
        { clock: 1, amount: 4 },
      ],
      links: [{ from: 0, to: 1, clock: 2, least: 0, most: 24 }],
      horizon: 10 * week_h,
    }),
  ],
  [
    "a stock is asked for that nothing brings",
    problemOf({
      jobs: [{ amount: 5 }],
      stocks: [{ id: "bags", inHand: 1, arrivals: [] }],
      spans: [{ stock: 0, number: 2, loss: 0, out: 0, back: -1 }],
      horizon: 1000,
    }),
  ],
];

const solvers: readonly (readonly [string, (p: Problem, units: number) => Result])[] = [
  ["the first passes", (p) => solve(p)],
  [
    "the search",
    (p, units) => {
      const search = searchOf(p, { seed: 1 });
      search.step(units);
      return search.result();
    },
  ],
  [
    "the proof",
    (p, units) => {
      const search = proofOf(p);
      search.step(units);
      return search.result();
    },
  ],
];

describe.each(solvers)("%s", (name, run) => {
  test.each(impossible)("ends without a schedule where %s", (_, p) => {
    const { status, solution } = run(p, 500);
    expect(solution).toBeNull();
    if (name === "the proof") expect(status).toBe("infeasible");
    else expect(["infeasible", "not-found"]).toContain(status);
  });

  test.each([0, 1, 30])("with so little work as %i claims nothing that does not hold, of two thousand jobs", (units) => {
    const p = large();
    const { status, solution, bound } = run(p, units);
    expect(["planned", "proved", "not-found"]).toContain(status);
    if (solution === null) return expect(status).toBe("not-found");
    expect(verify(p, solution)).toEqual([]);
    const finish = solution.finish.reduce((a, b) => Math.max(a, b), 0);
    expect(bound).toBeLessThanOrEqual(finish);
    if (status === "proved") expect(bound).toBe(finish);
  });

  test("has nothing to say of a problem without jobs", () => {
    const { status, solution } = run(problemOf({ jobs: [], horizon: 10 }), 10);
    expect(status).toBe("proved");
    expect(solution!.start).toHaveLength(0);
  });
});

test.each(impossible)("a refusal is found, and is minimal, where %s", (_, p) => {
  const search = refusalOf(p);
  for (let k = 0; k < 1000 && !search.done; k++) search.step(10);
  const { parts, minimal } = search.result();
  expect(minimal).toBe(true);
  expect(parts.length).toBeGreaterThan(0);
  expect(parts.length).toBeLessThanOrEqual(4);
});

function large(): Problem {
  const random = randomFrom(7);
  const jobs = Array.from({ length: 2000 }, () => ({ amount: random.int(1, 9) }));
  const links = jobs.flatMap((_, to): LinkSpec[] => (to === 0 ? [] : [{ from: random.int(Math.max(0, to - 60), to - 1), to, least: 0 }]));
  return problemOf({
    jobs,
    links,
    capacities: [constant("people", "people", 4), constant("shores", "equipment", 6, "span")],
    demands: jobs.flatMap((_, j) => [[j, 0, random.int(1, 3)] as const, [j, 1, random.int(1, 4)] as const]),
    horizon: 100_000,
  });
}

test("a place in one go is not looked for beyond all time", () => {
  const p = problemOf({ clocks: [repeating("short day", 6, [[1, 5]])], jobs: [{ amount: 5 }], horizon: 23 });
  expect(fitWhole(p, 0, never)).toBe(never);
  expect(fitWhole(p, 0, 0 as ElapsedMinute)).toBe(1);
});
