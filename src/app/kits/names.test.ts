import { expect, test } from "vitest";
import { freshName, nextName } from "./names";

test.each([
  ["Column", [], "Column A"],
  ["Column", ["Column A", "column b"], "Column C"],
  ["Wall, formed on two sides", [], "Wall A"],
  ["Trench (conduit and cable)", ["Trench A"], "Trench B"],
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
