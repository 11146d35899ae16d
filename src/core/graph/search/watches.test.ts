import { expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { Clauses } from "./clauses";
import { fails, holds } from "./problem";
import { chosen, Trail } from "./trail";
import { Watches } from "./watches";

const setUp = (rows: readonly (readonly number[])[], variables: number) => {
  const known = new Clauses(
    clauses(
      null,
      rows.map((literals, statement) => ({ literals, statement })),
      Array.from({ length: variables }, (): [number, number] => [-1, -1]),
    ),
  );
  const trail = new Trail(variables);
  const watches = new Watches(variables, 1);
  rows.forEach((_, c) => {
    watches.watch(known, c, known.first(c), known.first(c) + 1);
  });
  /** Lets the literal fail; the units told of, and the clause with nothing left. */
  const fail = (literal: number) => {
    trail.give(literal ^ 1, chosen);
    const units: (readonly [number, number])[] = [];
    const clash = watches.falsified(known, literal, trail, (clause, left) => {
      units.push([clause, left]);
      return trail.value(left) !== -1;
    });
    return { units, clash };
  };
  return { known, trail, watches, fail };
};

test("a clause is told of when one literal is left, not before, and clashes when that fails too", () => {
  const { fail } = setUp([[holds(0), holds(1), holds(2)]], 3);
  expect(fail(holds(1))).toEqual({ units: [], clash: -1 });
  expect(fail(holds(0))).toEqual({ units: [[0, holds(2)]], clash: -1 });
  expect(fail(holds(2))).toEqual({ units: [[0, holds(0)]], clash: 0 });
});

test("a clause that is met is left alone", () => {
  const { fail, trail } = setUp([[holds(0), holds(1)]], 2);
  trail.give(holds(1), chosen);
  expect(fail(holds(0))).toEqual({ units: [], clash: -1 });
});

test("several clauses on one literal: those moved on are no longer told of, the others are, also after the values were taken back", () => {
  const { fail, trail } = setUp(
    [
      [holds(0), holds(1)],
      [holds(0), holds(1), holds(2)],
      [fails(2), holds(0)],
      [holds(0), holds(3), holds(1)],
      [holds(0), fails(3)],
    ],
    4,
  );
  const first = fail(holds(0));
  expect(first.clash).toBe(-1);
  expect([...first.units].sort()).toEqual([
    [0, holds(1)],
    [2, fails(2)],
    [4, fails(3)],
  ]);
  trail.takeBack();
  const second = fail(holds(1));
  expect(second.clash).toBe(-1);
  expect(second.units).toEqual([[0, holds(0)]]);
  const third = fail(holds(3));
  expect(third.units).toEqual([[3, holds(0)]]);
});

test("clauses and variables that come later are watched too", () => {
  const { known, trail, watches, fail } = setUp([[holds(0), holds(1)]], 2);
  trail.widen(200);
  watches.widen(200);
  for (let v = 2; v < 199; v++) {
    const clause = known.learn([holds(v), holds(v + 1)], []);
    watches.watch(known, clause, known.first(clause), known.first(clause) + 1);
  }
  expect(
    fail(holds(150))
      .units.map(([, left]) => left)
      .sort((a, b) => a - b),
  ).toEqual([holds(149), holds(151)]);
  expect(fail(holds(0)).units).toEqual([[0, holds(1)]]);
  expect(fail(holds(151)).clash).toBeGreaterThan(0);
});
