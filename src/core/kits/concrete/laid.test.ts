import { describe, expect, test } from "vitest";
import { builtFrom, type Put } from "../../../../test/fixtures/kits/kit-check";
import { parseSigned } from "../../base";

/** Lengths that are laid out with a tape or cut: of forms and of bars. */
const laid = new Set(["spacing", "run", "rise", "at", "high", "unbraced", "long", "supported"]);

function lengthsIn(value: unknown, key = ""): readonly (readonly [key: string, text: string])[] {
  if (Array.isArray(value)) return value.flatMap((one) => lengthsIn(one, key));
  if (typeof value === "object" && value !== null) return Object.entries(value).flatMap(([inner, one]) => lengthsIn(one, inner));
  return typeof value === "string" && laid.has(key) ? [[key, value]] : [];
}

const parts: readonly Put[] = [
  ["footing", "Footing", { sides: "boards" }],
  ["column", "Column"],
  ["deck-slab", "Slab"],
  ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft", right: "30 ft" }],
  ["wall", "Wall"],
  ["footing", "Other strip", { sort: "strip", number: 1, long: "12 ft", right: "60 ft" }],
  ["wall", "Wall against earth", { formed: "earth", leanFront: "3 in" }],
  ["pier", "Pier", { right: "90 ft" }],
  ["stair", "Steps", { sort: "deck", right: "120 ft" }],
  ["ground-slab", "Floor", { right: "150 ft" }],
];

interface Pour {
  readonly elements: readonly { readonly form?: unknown; readonly bars: unknown }[];
}

test("a metric build has planed metric sizes and no grade of another market, one in feet and inches its trade sizes", () => {
  const lumberIn = (units: "us" | "metric"): readonly string[] => {
    const { pours } = builtFrom(units, parts) as { readonly pours: readonly Pour[] };
    const text = JSON.stringify(pours.map(({ elements }) => elements.map(({ form }) => form)));
    return [...new Set([...(text.match(/"\d+x\d+"/g) ?? []), ...(text.match(/SPF No 2/g) ?? [])])].sort();
  };
  expect(
    lumberIn("us")
      .filter((one) => one !== "SPF No 2")
      .every((one) => /^"[1-6]x\d+"$/.test(one)),
  ).toBe(true);
  expect(lumberIn("us")).toContain("SPF No 2");
  const metric = lumberIn("metric");
  expect(metric).toEqual(expect.arrayContaining(['"45x95"', '"45x145"', '"95x95"']));
  expect(metric.every((one) => /^"(45|70|95|145)x\d+"$/.test(one))).toBe(true);
});

describe.each([
  ["us", 12.7],
  ["metric", 10],
] as const)("in %s", (units, grid_mm) => {
  test.each(["bought", "salvaged"])("every length of a form or bar can be laid out with a tape, %s", (lumber) => {
    const { pours } = builtFrom(
      units,
      parts.map(([kit, name, answers]) => [kit, name, { ...answers, lumber }]),
    ) as { readonly pours: readonly Pour[] };
    const all = pours.flatMap(({ elements }) => elements.flatMap(({ form, bars }) => lengthsIn([form, bars])));
    expect(all.length).toBeGreaterThan(60);
    const off = all.filter(([, text]) => {
      const count = (parseSigned("length", text) ?? Number.NaN) / grid_mm;
      return !(Math.abs(count - Math.round(count)) < 1e-6);
    });
    expect(off.map(([key, text]) => `${key} ${text}`)).toEqual([]);
  });
});
