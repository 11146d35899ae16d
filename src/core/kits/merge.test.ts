import { expect, test } from "vitest";
import { merged } from "./merge";

test("what still says what was said before is as it is said now", () => {
  expect(merged("8 ft", "8 ft", "9 ft")).toEqual({ value: "9 ft", stays: false });
  expect(merged("8 ft", "8 ft", undefined)).toEqual({ value: undefined, stays: false });
  expect(merged(undefined, undefined, 3)).toEqual({ value: 3, stays: false });
});

test("what was changed stays, and says so only where something else is asked for", () => {
  expect(merged("7 ft", "8 ft", "9 ft")).toEqual({ value: "7 ft", stays: true });
  expect(merged("7 ft", "8 ft", "8 ft")).toEqual({ value: "7 ft", stays: false });
  expect(merged("9 ft", "8 ft", "9 ft")).toEqual({ value: "9 ft", stays: false });
  expect(merged([1, 2], [1], [1, 3])).toEqual({ value: [1, 2], stays: true });
});

test("objects follow key by key, things with ids one by one", () => {
  const before = { high: 8, wide: 2, form: { ply: 1 } };
  const after = { high: 9, wide: 2, form: { ply: 2 } };
  expect(merged({ high: 8, wide: 3, form: { ply: 1, own: true } }, before, after)).toEqual({
    value: { high: 9, wide: 3, form: { ply: 2, own: true } },
    stays: false,
  });
  const list = (...highs: number[]) => highs.map((high, i) => ({ id: `e${i}`, high }));
  expect(merged(list(8, 5), list(8, 7), list(9, 6))).toEqual({ value: list(9, 5), stays: true });
  expect(merged([...list(8), { id: "own" }], list(8), list(9, 1))).toEqual({
    value: [{ id: "e0", high: 9 }, { id: "own" }, { id: "e1", high: 1 }],
    stays: false,
  });
  // Taken out by the builder: stays out.
  expect(merged(list(8), list(8, 7), list(9, 7)).value).toEqual(list(9));
});
