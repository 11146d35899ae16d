import { expect, test } from "vitest";
import { freshName, nextName } from "./names";

test.each([
  ["Column", [], "Column A"],
  ["Column", ["Column A", "column b"], "Column C"],
  ["Wall, formed on two sides", [], "Wall A"],
  ["Trench to the house with conduit and cable", ["Trench A"], "Trench B"],
  ["Slab on a timber deck", [], "Slab A"],
  ["Slab (on the ground)", ["Slab A"], "Slab B"],
  ["Layout and utility marks", [], "Layout A"],
  ["Small timber building", [], "Small timber building A"],
])("the next %s beside %j is %s", (kit, taken, name) => {
  expect(freshName(kit, taken)).toBe(name);
});

test("after Z come numbers", () => {
  const taken = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].map((letter) => `Pad ${letter}`);
  expect(freshName("Pad", taken)).toBe("Pad 27");
  expect(freshName("Pad", [...taken, "Pad 27"])).toBe("Pad 28");
});

test.each([
  ["Column A", ["Column A"], "Column B"],
  ["Column A", ["Column A", "Column B"], "Column C"],
  ["Pad 9", [], "Pad 10"],
  ["Porch", [], "Porch 2"],
  ["Porch", ["Porch 2"], "Porch 3"],
  ["Pad Z", [], "Pad 27"],
])("another one like %s beside %j is %s", (name, taken, next) => {
  expect(nextName(name, taken)).toBe(next);
});
