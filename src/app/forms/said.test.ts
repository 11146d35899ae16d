import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import type { ElementSheet } from "../../core/pour";
import { groundWords, shapeWords, withoutPlace } from "./said";

test("a sentence leaves out the pour and the element that stand above it, and nothing else", () => {
  expect(withoutPlace("Pour “Porch”, the columns: its foot is not sealed.", "Columns")).toBe("Its foot is not sealed.");
  expect(withoutPlace("Pour “Porch”, the columns, the ties: what one carries is a guess.", "Columns")).toBe(
    "The ties: what one carries is a guess.",
  );
  expect(withoutPlace("Pour “Porch”: it wants five people.", null)).toBe("It wants five people.");
  expect(withoutPlace("The wall leans.", "Wall")).toBe("The wall leans.");
});

test("what is known of hose, wires and truck stands in one line, and that nothing is", () => {
  const said = (ground: object) => groundWords(buildOf({ steps: [{ id: "a" }], pours: [slabPour({ ground })] }).pours[0]!, "us");
  expect(said({})).toBe("Nothing is said yet of hose, wires, truck and where it is washed out.");
  expect(said({ wiresAbove: "none", slope: 6 })).toBe("No wires hang there, its way slopes 6 %.");
  expect(said({ hoseReach: "100 ft", hoseNeeded: "70 ft", wiresAbove: "24 ft" })).toBe(
    "The hose reaches 100 ft, it has to reach 70 ft, wires hang at 24 ft.",
  );
});

test("an element that is called as what it is does not say so twice", () => {
  const [element] = buildOf({ steps: [{ id: "a" }], pours: [slabPour({})] }).pours[0]!.elements;
  const told = (name: string, number = 1) => shapeWords({ ...element!, name, number }, { volume_m3: 1.2 } as ElementSheet, "metric");
  expect(told("Floor")).toMatch(/^Slab on the ground: \d.* thick, 1\.2 m³\.$/);
  expect(told("Slab on the ground")).toMatch(/^\d.* thick, 1\.2 m³\.$/);
  expect(told("slab on the ground", 2)).toMatch(/^Two alike: \d.* thick, 1\.2 m³ each\.$/);
  expect(told("Floor", 2)).toMatch(/^Slab on the ground, two alike: /);
});
