import { expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { Clauses, clauseParent, variableParent } from "./clauses";

test("given clauses have statements, learned ones have parents", () => {
  const known = new Clauses(
    clauses(
      null,
      [
        { literals: [0, 2], statement: 8 },
        { literals: [3], statement: 5 },
      ],
      [
        [0, 1],
        [1, 0],
      ],
      2,
    ),
  );
  expect([known.given, known.count]).toEqual([2, 2]);
  const parents = [clauseParent(0), variableParent(1)];
  expect(known.learn([1, 3, 0], parents)).toBe(2);
  expect(known.learn([2], [])).toBe(3);
  const literals = (clause: number) =>
    Array.from({ length: known.end(clause) - known.first(clause) }, (_, i) => known.literal(known.first(clause) + i));
  expect([0, 1, 2, 3].map(literals)).toEqual([[0, 2], [3], [1, 3, 0], [2]]);
  expect([0, 1, 2, 3].map((c) => known.statement(c))).toEqual([8, 5, -1, -1]);
  expect([0, 1, 2, 3].map((c) => known.parents(c))).toEqual([[], [], parents, []]);
  expect([clauseParent(3), variableParent(3)].map((p) => [p >> 1, p & 1])).toEqual([
    [3, 0],
    [3, 1],
  ]);
});
