import * as fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "./spread";

test("labels with room stay where they wish to be", () => {
  expect(
    spread(
      [
        { y: 80, high: 20 },
        { y: 20, high: 20 },
      ],
      0,
      100,
    ),
  ).toEqual([80, 20]);
});

test("crowded labels move apart and stay between the ends", () => {
  expect(
    spread(
      [
        { y: 95, high: 20 },
        { y: 93, high: 20 },
      ],
      0,
      100,
    ),
  ).toEqual([90, 70]);
});

test("no label ever stands on another, and their order is that of the wishes", () => {
  const wish = fc.record({ y: fc.integer({ min: -50, max: 500 }), high: fc.integer({ min: 5, max: 60 }) });
  fc.assert(
    fc.property(fc.array(wish, { maxLength: 12 }), (wishes) => {
      const middles = spread(wishes, 0, 400);
      const placed = wishes.map((one, index) => ({ ...one, at: middles[index] as number })).sort((a, b) => a.at - b.at);
      for (const [index, one] of placed.entries()) {
        const next = placed[index + 1];
        if (next) {
          expect(next.at - next.high / 2).toBeGreaterThanOrEqual(one.at + one.high / 2 - 1e-9);
          expect(next.y).toBeGreaterThanOrEqual(one.y);
        }
      }
      expect(Math.min(0, ...placed.map(({ at, high }) => at - high / 2))).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});
