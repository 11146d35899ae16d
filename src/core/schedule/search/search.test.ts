import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { enumerate } from "../../../../test/schedule/enumerate";
import { constant, type JobSpec, officeDays, problemOf } from "../../../../test/schedule/problem-of";
import { crowdedProblem, tinyProblem } from "../../../../test/schedule/tiny-problem";
import type { Problem } from "../problem";
import { verify } from "../verify";
import { searchOf } from "./index";

const lastOf = (finish: Int32Array): number => finish.reduce((a, b) => Math.max(a, b), 0);

/** Jobs of fixed length that wait for some of those before them and share two numbers. */
const plainProblem: fc.Arbitrary<Problem> = fc
  .array(
    fc.record({
      amount: fc.integer({ min: 0, max: 6 }),
      people: fc.integer({ min: 0, max: 3 }),
      shores: fc.integer({ min: 0, max: 5 }),
      after: fc.array(fc.nat(), { maxLength: 2 }),
      release: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.integer({ min: 0, max: 9 }) }),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((rows) =>
    problemOf({
      jobs: rows.map(({ amount, release }): JobSpec => ({ amount, release })),
      links: rows.flatMap((r, to) => (to === 0 ? [] : r.after.map((x) => ({ from: x % to, to, least: x % 3 })))),
      capacities: [constant("people", "people", 3), constant("shores", "equipment", 5, "span")],
      demands: rows.flatMap((r, j) => [[j, 0, r.people] as const, [j, 1, r.shores] as const]).filter((d) => d[2] > 0),
      horizon: 400,
    }),
  );

function holds(p: Problem): void {
  const search = searchOf(p, { seed: 3, schedules: 200 });
  search.step(200);
  const { status, solution, bound } = search.result();
  if (solution === null) {
    expect(["not-found", "infeasible"]).toContain(status);
    return;
  }
  expect(verify(p, solution)).toEqual([]);
  expect(lastOf(solution.finish)).toBeGreaterThanOrEqual(bound);
  expect(lastOf(solution.finish)).toBeLessThanOrEqual(p.horizon);
  expect(status === "proved").toBe(lastOf(solution.finish) <= bound);
}

describe("a population search", () => {
  test("finds a schedule that holds, or none, for problems with every feature", () => {
    fc.assert(fc.property(tinyProblem, holds), { numRuns: 300 });
    fc.assert(fc.property(crowdedProblem, holds), { numRuns: 100 });
  });

  test("finds what trying every minute finds in most crowded problems, and says infeasible only where nothing can be", () => {
    let possible = 0;
    let best = 0;
    fc.assert(
      fc.property(tinyProblem, (p) => {
        const { finish } = enumerate(p);
        const search = searchOf(p, { seed: 1, schedules: 200 });
        search.step(200);
        const { status, solution } = search.result();
        if (status === "infeasible") expect(finish).toBe(-1);
        if (finish < 0) {
          expect(solution).toBeNull();
          return;
        }
        possible++;
        if (solution !== null && lastOf(solution.finish) === finish) best++;
      }),
      { numRuns: 300, seed: 7 },
    );
    expect(possible).toBeGreaterThan(50);
    expect(best / possible).toBeGreaterThan(0.9);
  });

  test("always finds a schedule where nothing but order and numbers hold jobs back", () => {
    fc.assert(
      fc.property(plainProblem, (p) => {
        holds(p);
        const search = searchOf(p, { seed: 1 });
        search.step(1);
        expect(search.result().solution).not.toBeNull();
      }),
      { numRuns: 200 },
    );
  });

  test("comes to the same in portions as at once, and again for the same seed", () => {
    fc.assert(
      fc.property(fc.oneof(plainProblem, crowdedProblem), fc.integer({ min: 1, max: 40 }), (p, portion) => {
        const whole = searchOf(p, { seed: 5 });
        whole.step(120);
        const parts = searchOf(p, { seed: 5 });
        while (!parts.done && parts.schedules < 120) parts.step(Math.min(portion, 120 - parts.schedules));
        expect(parts.result()).toEqual(whole.result());
      }),
      { numRuns: 60 },
    );
  });

  test("makes no more schedules than it may, and none when it may make none", () => {
    const p = problemOf({
      jobs: Array.from({ length: 8 }, (_, j) => ({ amount: 3 + (j % 4) })),
      capacities: [constant("people", "people", 2)],
      demands: Array.from({ length: 8 }, (_, j) => [j, 0, 1 + (j % 2)] as const),
    });
    const search = searchOf(p, { seed: 1 });
    expect(search.result()).toMatchObject({ status: "not-found", solution: null, work: 0 });
    search.step(0);
    expect(search.schedules).toBe(0);
    search.step(7);
    expect(search.schedules).toBeLessThanOrEqual(7);
    expect(search.result().solution).not.toBeNull();
  });

  test("begins with a schedule that is there, and not with one that does not hold", () => {
    const p = problemOf({ jobs: [{ amount: 2 }, { amount: 3 }], links: [{ from: 0, to: 1, least: 0 }] });
    const first = { start: Int32Array.of(0, 9), finish: Int32Array.of(2, 12) };
    expect(searchOf(p, { seed: 1, first }).result()).toMatchObject({ status: "planned", solution: first });
    const wrong = { start: Int32Array.of(0, 1), finish: Int32Array.of(2, 4) };
    expect(searchOf(p, { seed: 1, first: wrong }).result().solution).toBeNull();
  });
});

describe("what cannot be", () => {
  const one = (job: JobSpec, number: number, horizon = 100): Problem =>
    problemOf({ jobs: [job], capacities: [constant("people", "people", number)], demands: [[0, 0, 1]], horizon });

  test("nobody for what needs somebody", () => {
    const search = searchOf(one({ amount: 5 }, 0), { seed: 1 });
    search.step(100);
    expect(search.done).toBe(true);
    expect(search.result()).toMatchObject({ status: "not-found", stuck: { job: 0, of: { kind: "capacity", index: 0 } } });
  });

  test("a job that is longer than all the time there is", () => {
    const search = searchOf(one({ amount: 200 }, 1), { seed: 1 });
    search.step(100);
    expect(search.result()).toMatchObject({ status: "infeasible", solution: null });
  });

  test("nobody there before the end of all time", () => {
    const p = problemOf({
      jobs: [{ amount: 5 }],
      capacities: [{ ...constant("people", "people", 0), times: Int32Array.of(0, 98), levels: Int32Array.of(0, 1) }],
      demands: [[0, 0, 1]],
      horizon: 100,
    });
    const search = searchOf(p, { seed: 1 });
    search.step(100);
    expect(search.done).toBe(true);
    expect(search.result().solution).toBeNull();
  });

  test("two jobs with the same fixed time and one person", () => {
    const p = problemOf({
      jobs: [
        { amount: 5, fixed: 3 },
        { amount: 5, fixed: 4 },
      ],
      capacities: [constant("people", "people", 1)],
      demands: [
        [0, 0, 1],
        [1, 0, 1],
      ],
      horizon: 100,
    });
    const search = searchOf(p, { seed: 1 });
    search.step(50);
    expect(search.result()).toMatchObject({ status: "not-found", solution: null });
  });
});

test("two thousand jobs, with and without a day's work between nights", () => {
  const jobs = Array.from({ length: 2000 }, (_, j): JobSpec => ({ amount: 30 * (1 + (j % 16)), clock: 0 }));
  const links = jobs.slice(1).map((_, j) => ({ from: Math.max(0, j - (j % 7)), to: j + 1, least: 0 }));
  const rows = { jobs, links, capacities: [constant("people", "people", 4)], demands: jobs.map((_, j) => [j, 0, 1 + (j % 3)] as const) };
  for (const clocks of [undefined, [officeDays()]]) {
    const p = problemOf({ ...rows, ...(clocks === undefined ? {} : { clocks }) });
    const search = searchOf(p, { seed: 1, schedules: 20 });
    search.step(5);
    const { solution } = search.result();
    expect(solution === null ? [] : verify(p, solution)).toEqual([]);
    if (clocks === undefined) expect(solution).not.toBeNull();
  }
});
