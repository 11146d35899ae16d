import fc from "fast-check";
import { expect, test } from "vitest";
import { packFlags, packRows, type Span } from "./rows";

const spans = fc.array(
  fc
    .record({ from: fc.integer({ min: 0, max: 500 }), wide: fc.integer({ min: 1, max: 120 }) })
    .map(({ from, wide }) => ({ from, to: from + wide })),
  { maxLength: 40 },
);

const meet = (a: Span, b: Span) => a.from < b.to && b.from < a.to;

test("no two things in a row meet, and no row is empty", () => {
  fc.assert(
    fc.property(spans, (list) => {
      const { rowOf, count } = packRows(list);
      list.forEach((a, i) => {
        list.forEach((b, j) => {
          if (i < j && rowOf[i] === rowOf[j]) expect(meet(a, b)).toBe(false);
        });
      });
      expect(new Set(rowOf).size).toBe(count);
    }),
  );
});

test("things that do not meet share one row", () => {
  expect(
    packRows([
      { from: 0, to: 20 },
      { from: 30, to: 40 },
    ]).rowOf,
  ).toEqual([0, 0]);
  expect(
    packRows([
      { from: 0, to: 21 },
      { from: 30, to: 40 },
    ]).rowOf,
  ).toEqual([0, 1]);
});

test("no name of a flag meets another's name or the pole of a later flag", () => {
  fc.assert(
    fc.property(spans, (list) => {
      const { rowOf } = packFlags(list);
      list.forEach((a, i) => {
        list.forEach((b, j) => {
          if (i === j) return;
          if (rowOf[i] === rowOf[j]) expect(meet(a, b)).toBe(false);
          const poleOfB = (rowOf[j] as number) > (rowOf[i] as number);
          if (poleOfB && b.from > a.from && b.from < a.to) throw new Error("a pole runs through a name");
        });
      });
    }),
  );
});
