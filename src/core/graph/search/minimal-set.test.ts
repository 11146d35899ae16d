import { expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { minimalSet, type WorkLeft } from "./minimal-set";
import { fails, holds } from "./problem";

// 0, 1 and 2 cannot hold together, nor can 3 and 4; 5 has no part in it.
const problem = clauses(
  null,
  [
    { literals: [holds(0)], statement: 0 },
    { literals: [fails(0), holds(1)], statement: 1 },
    { literals: [fails(1)], statement: 2 },
    { literals: [holds(2)], statement: 3 },
    { literals: [fails(2)], statement: 4 },
    { literals: [holds(3)], statement: 5 },
  ],
  Array.from({ length: 4 }, (): [number, number] => [-1, -1]),
);
const all = [0, 1, 2, 3, 4, 5];

test("one set that cannot hold together stays, ascending, and nothing else", () => {
  expect(minimalSet(problem, all, [0, 1, 2, 3, 4, 5])).toEqual([3, 4]);
  expect(minimalSet(problem, [5, 2, 1, 0], [5, 0])).toEqual([0, 1, 2]);
  expect(minimalSet(problem, [5, 4, 3], [])).toEqual([3, 4]);
});

test("work is drawn from what is left, and when that is spent the core stands, ascending", () => {
  const work: WorkLeft = { left: 1000 };
  minimalSet(problem, all, all, work);
  expect(work.left).toBeLessThan(1000 - problem.statement.length);
  expect(work.left).toBeGreaterThan(0);
  const spent: WorkLeft = { left: 0 };
  expect(minimalSet(problem, [5, 4, 3, 2, 1, 0], all, spent)).toEqual(all);
  expect(spent.left).toBe(0);
});
