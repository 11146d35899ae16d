import { expect, test } from "vitest";
import { nothingPicked, onlyThose, ranged, toggled } from "./picking";

const shown = ["a", "b", "c", "d", "e"];
const ids = (picking: { readonly ids: ReadonlySet<string> }) => [...picking.ids].sort().join("");

test("one by one, and off again", () => {
  const two = toggled(toggled(nothingPicked, "b"), "d");
  expect(ids(two)).toBe("bd");
  expect(ids(toggled(two, "b"))).toBe("d");
  expect(nothingPicked.ids.size).toBe(0);
});

test("a range counts from where one began, either way, and shrinks again", () => {
  const from = toggled(nothingPicked, "c");
  expect(ids(ranged(from, "e", shown))).toBe("cde");
  expect(ids(ranged(ranged(from, "e", shown), "d", shown))).toBe("cd");
  expect(ids(ranged(ranged(from, "e", shown), "a", shown))).toBe("abc");
  expect(ids(ranged(nothingPicked, "b", shown))).toBe("b");
  expect(ids(ranged(from, "a", ["a", "b"]))).toBe("a");
  expect(ids(ranged(from, "x", shown))).toBe("");
});

test("what is gone is no longer chosen", () => {
  const two = toggled(toggled(nothingPicked, "b"), "d");
  expect(ids(onlyThose(two, (id) => id !== "b"))).toBe("d");
  expect(onlyThose(two, () => true)).toBe(two);
});
