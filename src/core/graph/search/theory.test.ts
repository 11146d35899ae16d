import { expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { holds } from "./problem";
import { Theory } from "./theory";
import { chosen, Trail } from "./trail";

// Variables 0, 1 and 3 are arcs, 2 a selector; each brings delays between instants 0, 1 and 2. Instant 1 is always 5 after instant 0.
const problem = {
  ...clauses(
    null,
    [],
    [
      [0, 1],
      [1, 2],
      [-1, -1],
      [2, 1],
    ],
    3,
  ),
  time: {
    nodes: 3,
    start: Int32Array.of(0, 1, 3, 4, 5),
    from: Int32Array.of(1, 1, 2, 2, 2, 0),
    to: Int32Array.of(2, 2, 0, 0, 0, 1),
    delay: Float64Array.of(3, 1, -6, -7, -5.5, 5),
  },
};

const made = () => {
  const trail = new Trail(4);
  const theory = new Theory(problem, null);
  return {
    theory,
    take: (v: number) => {
      trail.give(holds(v), chosen);
      return theory.take(v, trail);
    },
  };
};

test("instants are as early as what was taken in allows", () => {
  const { theory, take } = made();
  expect([0, 1, 2].map((i) => theory.instant(i))).toEqual([0, 5, 0]);
  expect(take(0)).toBeNull();
  expect([0, 1, 2].map((i) => theory.instant(i))).toEqual([0, 5, 8]);
  expect(theory.work).toBeGreaterThan(0);
});

test("a ring of delays that gains time is refused: those who bring them are named, what always holds is not, and nothing is left behind", () => {
  const { theory, take } = made();
  expect(take(0)).toBeNull();
  // 0 -> 1 by 5, 1 -> 2 by 3, 2 -> 0 by -7: one too much; with variable 1 alone, 5 + 1 - 6 gains nothing.
  expect(take(2)?.sort()).toEqual([0, 2]);
  expect(take(1)?.sort()).toEqual([0, 1]);
  theory.letGo(0);
  expect(take(1)).toBeNull();
  theory.letGo(1);
  expect(take(2)).toBeNull();
  expect(take(0)?.sort()).toEqual([0, 2]);
  theory.letGo(2);
  expect(take(0)).toBeNull();
});

test("of a variable that is refused neither its arc nor those of its delays that came before stay behind", () => {
  const { theory, take } = made();
  expect(take(0)).toBeNull();
  expect(take(1)?.sort()).toEqual([0, 1]);
  expect(theory.refutes(3)).toBe(false);
  theory.letGo(0);
  // 0 -> 1 by 5 and 2 -> 0 by -5.5 make a ring only with the first delay of variable 1 between them.
  expect(take(3)).toBeNull();
  expect(take(1)?.sort()).toEqual([1, 3]);
});
