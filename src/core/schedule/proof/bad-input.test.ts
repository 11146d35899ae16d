import { expect, test } from "vitest";
import { constant, type LinkSpec, problemOf, repeating } from "../../../../test/schedule/problem-of";
import { randomFrom } from "../../../core/base";
import { verify } from "../verify";
import { proofOf } from "./index";

test("what nobody is there for cannot be", () => {
  const p = problemOf({ jobs: [{ amount: 5 }], capacities: [constant("nobody", "people", 0)], demands: [[0, 0, 1]], horizon: 1000 });
  const search = proofOf(p);
  search.step(10);
  expect(search.result()).toMatchObject({ status: "infeasible", solution: null });
});

test("a job longer than the horizon cannot be", () => {
  const search = proofOf(problemOf({ jobs: [{ amount: 50 }], horizon: 40 }));
  expect(search.done).toBe(true);
  expect(search.result()).toMatchObject({ status: "infeasible", witness: [{ kind: "job", job: 0 }] });
});

test("a wait that no calendar can meet cannot be", () => {
  // Only Mondays are worked, and the second job has to start within a day of the end of the first, on a Thursday's clock.
  const week = 7 * 24;
  const clocks = [repeating("monday", week, [[8, 16]]), repeating("thursday", week, [[80, 88]]), repeating("always", 1, [[0, 1]])];
  const jobs = [
    { clock: 0, amount: 4 },
    { clock: 1, amount: 4 },
  ];
  const search = proofOf(problemOf({ clocks, jobs, links: [{ from: 0, to: 1, clock: 2, least: 0, most: 24 }], horizon: 10 * week }));
  search.step(1000);
  expect(search.result().status).toBe("infeasible");
});

test("two thousand jobs: a schedule, a bound and no claim that was not earned", () => {
  const random = randomFrom(7);
  const jobs = Array.from({ length: 2000 }, () => ({ amount: random.int(1, 9) }));
  const links = jobs.flatMap((_, to): LinkSpec[] => (to === 0 ? [] : [{ from: random.int(Math.max(0, to - 60), to - 1), to, least: 0 }]));
  const p = problemOf({
    jobs,
    links,
    capacities: [constant("people", "people", 4), constant("shores", "equipment", 6, "span")],
    demands: jobs.flatMap((_, j) => [[j, 0, random.int(1, 3)] as const, [j, 1, random.int(1, 4)] as const]),
    horizon: 100_000,
  });
  const search = proofOf(p);
  search.step(20);
  const { status, solution, bound, work } = search.result();
  expect(verify(p, solution!)).toEqual([]);
  const finish = solution!.finish.reduce((a, b) => Math.max(a, b), 0);
  expect(bound).toBeLessThanOrEqual(finish);
  expect(status).toBe(bound === finish && search.done ? "proved" : "planned");
  expect(work).toBeLessThan(100);
});
