import { expect, test } from "vitest";
import { byTheory, chosen, Trail } from "./trail";

test("what is given is known with its level, reason and place, and open again once taken back", () => {
  const trail = new Trail(3);
  trail.give(2 * 1, 7);
  trail.marks.push(trail.length);
  trail.give(2 * 2 + 1, chosen);
  trail.give(2 * 0, byTheory);
  expect([trail.length, trail.level]).toEqual([3, 1]);
  expect([0, 1, 2, 3, 4, 5].map(trail.value)).toEqual([1, -1, 1, -1, -1, 1]);
  expect([0, 1, 2].map((v) => [trail.levelOf(v), trail.reasonOf(v), trail.placeOf(v)])).toEqual([
    [1, byTheory, 2],
    [0, 7, 0],
    [1, chosen, 1],
  ]);
  expect(trail.takeBack()).toBe(0);
  expect([trail.value(0) === 0, trail.value(1) === 0, trail.value(5), trail.length]).toEqual([true, true, 1, 2]);
});

test("room for more variables: what was given stays, the new ones are open", () => {
  const trail = new Trail(2);
  trail.give(2, 5);
  trail.marks.push(1);
  trail.give(1, 4);
  for (const size of [2, 3, 40]) {
    trail.widen(size);
    expect([0, 1].map((v) => [trail.value(2 * v), trail.levelOf(v), trail.reasonOf(v), trail.placeOf(v)])).toEqual([
      [-1, 1, 4, 1],
      [1, 0, 5, 0],
    ]);
  }
  expect([2, 20, 39].map((v) => trail.value(2 * v))).toEqual([0, 0, 0]);
  trail.give(2 * 39, 9);
  expect([trail.value(78), trail.value(79), trail.reasonOf(39), trail.placeOf(39)]).toEqual([1, -1, 9, 2]);
});
