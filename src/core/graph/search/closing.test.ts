import { describe, expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { arcsThatHold, leading, ringClosers } from "./closing";
import { fails, holds } from "./problem";
import { startOrder } from "./start-order";
import { Theory } from "./theory";
import { chosen, Trail } from "./trail";

// 0: 0 -> 1, 1: 1 -> 2, 2: a selector, 3: 2 -> 0, 4: 1 -> 0, 5: 0 -> 2, 6: 3 -> 3, 7: 2 -> 1, 8: 3 -> 0
const problem = clauses(
  null,
  [],
  [
    [0, 1],
    [1, 2],
    [-1, -1],
    [2, 0],
    [1, 0],
    [0, 2],
    [3, 3],
    [2, 1],
    [3, 0],
  ],
  4,
);

function taken(...literals: number[]) {
  const trail = new Trail(problem.variables);
  const theory = new Theory(problem, null);
  for (const literal of literals) {
    trail.give(literal, chosen);
    if ((literal & 1) === 0) theory.take(literal >> 1, trail);
  }
  return { trail, theory, arcs: arcsThatHold(trail, theory) };
}

describe("arcs that hold", () => {
  test("in the order they came to hold; no selectors, none that fail", () => {
    expect([...taken(holds(1), holds(2), fails(3), holds(0)).arcs]).toEqual([1, 0]);
    expect([...taken().arcs]).toEqual([]);
  });

  test("refute the open arcs that lead back, and a node's arc to itself is always refuted", () => {
    const { trail, theory, arcs } = taken(holds(0), holds(1), fails(7));
    expect(ringClosers(arcs, problem.variables, trail, theory)).toEqual([3, 4, 6]);
    expect(ringClosers(arcs, 4, trail, theory)).toEqual([3]);
    const few = taken(holds(8));
    expect(ringClosers(few.arcs, problem.variables, few.trail, few.theory)).toEqual([6]);
  });

  test("lead from node to node, over several of them", () => {
    const { theory, arcs } = taken(holds(0), holds(1));
    expect([...leading(arcs, theory, [0, 0, 2, 3, 1, 0], [1, 2, 0, 0, 2, 3])]).toEqual([1, 1, 0, 0, 1, 0]);
  });
});

describe("the order to start from", () => {
  const rows = [
    { literals: [holds(0)], statement: 0 },
    { literals: [fails(5)], statement: 1 },
    { literals: [holds(2)], statement: 2 },
    { literals: [holds(3)], statement: 3 },
    { literals: [holds(4), holds(1)], statement: 4 },
    { literals: [holds(8)], statement: 5 },
  ];
  const asked = clauses(problem, rows, [], 4);

  test("suits what must hold by itself, of what is active", () => {
    expect([...(startOrder(asked, () => true) ?? [])]).toEqual([2, 3, 0, 1]);
    expect([...(startOrder(asked, (clause) => clause !== 3 && clause !== 5) ?? [])]).toEqual([0, 1, 2, 3]);
  });

  test("is none where that goes round in a ring", () => {
    expect(startOrder(clauses(asked, [{ literals: [holds(1)], statement: 6 }], [], 4), () => true)).toBeNull();
  });
});

test("where two arcs refute, the ring named is made of arcs that hold, and letting go of one opens it again", () => {
  const { trail, theory } = taken(holds(0), holds(1));
  expect([3, 4, 5, 8].map((v) => theory.refutes(v))).toEqual([true, true, false, false]);
  expect([0, 2, 6].map((v) => theory.isArc(v))).toEqual([true, false, true]);
  trail.give(holds(3), chosen);
  expect(theory.take(3, trail)).toEqual([0, 1, 3]);
  trail.takeBack();
  trail.takeBack();
  theory.letGo(1);
  expect([3, 4].map((v) => theory.refutes(v))).toEqual([false, true]);
});
