import { describe, expect, test } from "vitest";
import { builtFrom, holds, mostCarried, type Put } from "../../../../test/fixtures/kits/kit-check";
import { apply } from "../../edit";
import { putIn } from "..";

const below: readonly Put[] = [
  ["footing", "Footing"],
  ["column", "Column"],
];

describe.each(["us", "metric"] as const)("a slab on a deck in %s", (units) => {
  test("stands on the columns, closes their heads, and is held by its deck until it is strong", () => {
    const { build, plan, sheets } = holds(units, [...below, ["deck-slab", "Slab", { bolts: 8 }]]);
    const at = (id: string) => plan.steps[build.at.step.get(id) as number]!.start;
    const order = [
      "column-strip#1",
      "column-roughen#2",
      "slab-sheathe",
      "slab-coat",
      "slab-tie",
      "slab-bolts",
      "slab-inspect",
      "slab-place",
      "slab-strip",
    ];
    expect(order.slice(1).map(at)).toEqual(
      order
        .slice(1)
        .map(at)
        .toSorted((a, b) => a - b),
    );
    expect(build.waits.filter(({ plain, removal }) => plain && !removal)).toEqual([]);
    expect(sheets.every(({ ready }) => ready)).toBe(true);
  });

  test.each(["4 in", "6 in", "8 in", "200 mm", "10 in", "300 mm"])("%s thick the deck holds, whatever it is made of", (thick) => {
    for (const lumber of ["bought", "salvaged"]) {
      for (const high of ["900 mm", "7 ft 8 in", "11 ft"]) {
        const most = mostCarried(units, [
          ["footing", "Footing"],
          ["column", "Column", { measured: "foot", high }],
          ["deck-slab", "Slab", { thick, lumber, long: "20 ft", wide: "16 ft", wayWide: "24 in", wayHigh: "20 in", buggies: true }],
        ]);
        expect(most, `${lumber} ${high}`).toBeLessThanOrEqual(100);
      }
    }
  });
});

test("on heads in one line it is not known whether it tips, until somebody says who sized it", () => {
  const unknownOf = (slab: Readonly<Record<string, string>>) => {
    let document: unknown = { site: { units: "us" } };
    let codes: readonly string[] = [];
    for (const [kit, name, answers] of [
      ["footing", "Footing", {}],
      ["column", "Column", {}],
      ["deck-slab", "Slab", slab],
    ] as const) {
      const put = putIn(document, kit, name, answers);
      document = apply(document, put.edits).document;
      codes = put.unknown.map(({ code }) => code);
    }
    return codes;
  };
  expect(unknownOf({})).toContain("tipping");
  expect(unknownOf({ sized: "engineer" })).not.toContain("tipping");
});

test("the usual columns leave 7 ft clear under it, though their footings lie in the ground; less is remarked", () => {
  const soffitAnd = (column: Readonly<Record<string, string>>) => {
    const document = builtFrom("us", [
      ["footing", "Footing", { deep: "42 in" }],
      ["column", "Column", column],
    ]);
    const { edits, unknown } = putIn(document, "deck-slab", "Slab", {});
    const { solids } = apply(document, edits).document as {
      readonly solids: readonly { readonly id: string; readonly at: { readonly z: string } }[];
    };
    return [solids.find(({ id }) => id === "slab-solid")?.at.z, unknown.some(({ code }) => code === "headroom")];
  };
  expect(soffitAnd({})).toEqual(["7 ft 6 in", false]);
  expect(soffitAnd({ head: "7 ft" })).toEqual(["7 ft", false]);
  expect(soffitAnd({ head: "6 ft 6 in" })).toEqual(["6 ft 6 in", true]);
  expect(soffitAnd({ measured: "foot", high: "9 ft" })).toEqual(["6 ft 6 in", true]);
});
