import { expect, test } from "vitest";
import type { Passage, Way } from "../build";
import { passes } from "./passes";

const way = (over: Partial<Way>): Way => ({
  id: "w",
  full: "p.w",
  name: "",
  passes: [],
  depth_mm: null,
  opening_mm: null,
  longest_mm: null,
  bears_kg: null,
  through: null,
  ...over,
});
const needs: Record<string, Passage> = {
  sight: { kind: "sight" },
  hand: { kind: "hand", depth_mm: 300 },
  arm: { kind: "arm", depth_mm: 300 },
  hose: { kind: "hose" },
  person: { kind: "person" },
  machine: { kind: "machine" },
};

test.each([
  ["sight", "sight"],
  ["hand", "hand"],
  ["arm", "hand arm"],
  ["hose", "hose"],
  ["person", "sight hand arm hose person"],
  ["machine", "sight hand arm hose person machine"],
  ["unit", ""],
] as const)("a way for %s lets pass: %s", (kind, passing) => {
  const got = Object.entries(needs).filter(([, need]) => passes(way({ passes: [kind] }), need));
  expect(got.map(([name]) => name).join(" ")).toBe(passing);
});

test.each([
  ["arm", 299, ""],
  ["arm", 300, "hand arm"],
  ["hand", 299, ""],
  ["hand", 300, "hand"],
  ["person", 10, "hand arm"],
] as const)("%s to %i mm lets a reach of 300 mm pass: %s", (kind, depth_mm, passing) => {
  const got = ["hand", "arm"].filter((name) => passes(way({ passes: [kind], depth_mm }), needs[name] as Passage));
  expect(got.join(" ")).toBe(passing);
});

const unit = (long_mm: number, wide_mm: number, thick_mm: number, mass_kg = 50): Passage => ({
  kind: "unit",
  long_mm,
  wide_mm,
  thick_mm,
  mass_kg,
  piece: null,
});

test.each([
  ["its two smaller sides fit", unit(2500, 900, 100), true],
  ["either way round", unit(2500, 590, 890), true],
  ["both of them to the millimetre", unit(2500, 900, 600), true],
  ["whichever side is called long", unit(100, 2500, 900), true],
  ["the middle side is too large", unit(2500, 901, 100), false],
  ["the small side is too large", unit(2500, 700, 601), false],
] as const)("through an opening of 900 by 600 mm: %s", (_, need, fits) => {
  expect(passes(way({ passes: ["unit"], opening_mm: { wide: 900, high: 600 } }), need)).toBe(fits);
  expect(passes(way({ passes: ["unit"], opening_mm: { wide: 600, high: 900 } }), need)).toBe(fits);
});

test("a unit is no longer and no heavier than the way allows", () => {
  expect(passes(way({ passes: ["unit"], longest_mm: 2500 }), unit(100, 2500, 100))).toBe(true);
  expect(passes(way({ passes: ["unit"], longest_mm: 2499 }), unit(100, 2500, 100))).toBe(false);
  expect(passes(way({ passes: ["unit"], bears_kg: 50 }), unit(1, 1, 1))).toBe(true);
  expect(passes(way({ passes: ["unit"], bears_kg: 49 }), unit(1, 1, 1))).toBe(false);
});

test("a way for a person or a machine passes a unit only when its opening is known", () => {
  for (const kind of ["person", "machine"] as const) {
    expect(passes(way({ passes: [kind] }), unit(100, 100, 100))).toBe(false);
    expect(passes(way({ passes: [kind], opening_mm: { wide: 900, high: 900 } }), unit(100, 100, 100))).toBe(true);
  }
  expect(passes(way({ passes: ["arm"], opening_mm: { wide: 900, high: 900 } }), unit(100, 100, 100))).toBe(false);
});
