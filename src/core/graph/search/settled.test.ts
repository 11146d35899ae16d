import { expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { fails, holds } from "./problem";
import { ClauseSearch } from "./search";

test("what must fail because it would close a ring is settled before anything is decided, and what follows from that, round after round", () => {
  const arcs: [number, number][] = [
    [0, 1],
    [1, 2],
    [2, 0],
    [3, 4],
    [4, 3],
    [5, 6],
    [6, 7],
    [2, 3],
  ];
  const problem = clauses(
    null,
    [
      { literals: [holds(0)], statement: 0 },
      { literals: [holds(1)], statement: 1 },
      { literals: [holds(3), holds(2)], statement: 2 },
      { literals: [holds(5), holds(4)], statement: 3 },
      { literals: [holds(6), holds(7)], statement: 4 },
    ],
    arcs,
    8,
  );
  const search = new ClauseSearch(problem);
  expect(search.solve()).toBe("yes");
  // 2 closes a ring, so 3 must be; then 4 does, so 5 must be. 6 is chosen, for 7 would do as well.
  expect(arcs.map((_, v) => search.settled(v))).toEqual([1, 1, -1, 1, -1, 1, 0, 0]);
  expect([6, 7].map((v) => search.holds(v))).toEqual([true, false]);
});

test("nothing is settled where everything may still be", () => {
  const free = clauses(
    null,
    [{ literals: [holds(0), holds(1)], statement: 0 }],
    [
      [0, 1],
      [1, 0],
    ],
    2,
  );
  const search = new ClauseSearch(free);
  expect(search.solve()).toBe("yes");
  expect([search.settled(0), search.settled(1)]).toEqual([0, 0]);
  expect(search.solve([fails(0)])).toBe("yes");
  expect([search.settled(0), search.settled(1), search.holds(1)]).toEqual([0, 0, true]);
});

test("an answer can begin with another option of each clause, going round", () => {
  const rows = [0, 1].map((i) => ({ literals: [0, 1, 2].map((k) => holds(3 * i + k)), statement: i }));
  const three = clauses(null, rows, new Array<readonly [number, number]>(6).fill([-1, -1]));
  const search = new ClauseSearch(three);
  const chosen = (lead: number) => {
    expect(search.solve([], 1000, lead)).toBe("yes");
    return [0, 1, 2, 3, 4, 5].filter((v) => search.holds(v));
  };
  expect([0, 1, 2, 3, 4].map(chosen)).toEqual([
    [0, 3],
    [1, 4],
    [2, 5],
    [0, 3],
    [1, 4],
  ]);
});
