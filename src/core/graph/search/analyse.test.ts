import { describe, expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { analyse } from "./analyse";
import { Clauses, clauseParent, variableParent } from "./clauses";
import { fails, holds } from "./problem";
import { clauseClash, reasonLiterals, ringClash } from "./reasons";
import { Theory } from "./theory";
import { trace } from "./trace";
import { byTheory, chosen, Trail } from "./trail";

const selector = [-1, -1] as const;

/** Values in the order given: a literal and the clause it follows from, chosen ones each on a level of its own. */
function given(problem: ReturnType<typeof clauses>, values: readonly (readonly [literal: number, reason: number])[]) {
  const trail = new Trail(problem.variables);
  const theory = new Theory(problem, null);
  for (const [literal, reason] of values) {
    if (reason === chosen) trail.marks.push(trail.length);
    trail.give(literal, reason);
    if ((literal & 1) === 0) theory.take(literal >> 1, trail);
  }
  return { known: new Clauses(problem), trail, theory };
}

describe("a clash", () => {
  // 0 holds; 1, 2 and 3 are chosen; 2 and 1 give 4; 3 and 4 give 5, and 5 with 0 gives 6; 5, 6 and 2 clash.
  const rows = [
    { literals: [holds(0)], statement: 10 },
    { literals: [fails(1), fails(2), holds(4)], statement: 11 },
    { literals: [fails(3), fails(4), holds(5)], statement: 12 },
    { literals: [fails(5), fails(0), holds(6)], statement: 13 },
    { literals: [fails(5), fails(6), fails(2)], statement: 14 },
  ];
  const problem = clauses(null, rows, new Array<readonly [number, number]>(7).fill(selector));
  const values = [
    [holds(0), 0],
    [holds(1), chosen],
    [holds(2), chosen],
    [holds(4), 1],
    [holds(3), chosen],
    [holds(5), 2],
    [holds(6), 3],
  ] as const;

  test("teaches that what all of it came through on the last level fails, and goes back to the next level below", () => {
    const { known, trail, theory } = given(problem, values);
    const lesson = analyse(clauseClash(known, 4), known, trail, theory);
    expect(lesson.literals).toEqual([fails(5), fails(2)]);
    expect(lesson.level).toBe(2);
    expect([...lesson.parents].sort((a, b) => a - b)).toEqual([variableParent(0), clauseParent(3), clauseParent(4)].sort((a, b) => a - b));
  });

  test("rests on the statements of all it came from, and on what was chosen, in that order", () => {
    const { known, trail, theory } = given(problem, values);
    expect(trace(clauseClash(known, 4), known, trail, theory)).toEqual({
      statements: [10, 11, 12, 13, 14],
      assumptions: [holds(1), holds(2), holds(3)],
    });
    expect(trace({ clause: -1, literals: [fails(4)] }, known, trail, theory)).toEqual({
      statements: [11],
      assumptions: [holds(1), holds(2)],
    });
  });

  test("through a learned clause rests on what that was learned from", () => {
    const { known, trail, theory } = given(problem, values.slice(0, 2));
    const learned = known.learn([fails(1)], [clauseParent(2), variableParent(0)]);
    expect(trace(clauseClash(known, learned), known, trail, theory)).toEqual({ statements: [10, 12], assumptions: [holds(1)] });
  });

  test("the literals of a lesson after the first go from the highest level down", () => {
    const { known, trail, theory } = given(
      clauses(
        null,
        [{ literals: [fails(0), fails(1), fails(2), fails(3)], statement: 0 }],
        new Array<readonly [number, number]>(4).fill(selector),
      ),
      [
        [holds(2), chosen],
        [holds(0), chosen],
        [holds(3), chosen],
        [holds(1), chosen],
      ],
    );
    const lesson = analyse(clauseClash(known, 0), known, trail, theory);
    expect([lesson.literals, lesson.level, lesson.parents]).toEqual([[fails(1), fails(3), fails(0), fails(2)], 3, [clauseParent(0)]]);
  });

  test("of one level alone sends back to the beginning", () => {
    const { known, trail, theory } = given(clauses(null, [{ literals: [fails(0), holds(1)], statement: 0 }], [selector, selector]), [
      [holds(0), chosen],
      [holds(1), 0],
    ]);
    const lesson = analyse(ringClash([0, 1]), known, trail, theory);
    expect(lesson).toEqual({ literals: [fails(0)], level: 0, parents: [clauseParent(0)] });
  });
});

test("an arc refuted by arcs fails because of those on the ring that held before it", () => {
  const problem = clauses(
    null,
    [],
    [
      [0, 1],
      [1, 2],
      [2, 0],
      [1, 0],
    ],
    3,
  );
  const { known, trail, theory } = given(problem, [
    [holds(0), chosen],
    [holds(1), chosen],
    [fails(2), byTheory],
    [fails(3), byTheory],
  ]);
  expect(theory.refutes(2)).toBe(true);
  expect(reasonLiterals(2, known, trail, theory).sort()).toEqual([fails(0), fails(1)]);
  expect(reasonLiterals(3, known, trail, theory)).toEqual([fails(0)]);
  expect(reasonLiterals(0, known, trail, theory)).toEqual([]);
  expect(theory.take(3, trail)?.sort()).toEqual([0, 3]);
});
