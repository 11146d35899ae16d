import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyAnswers } from "../../../../test/fixtures/kits/any-answers";
import { holds, mostOf, type Put } from "../../../../test/fixtures/kits/kit-check";
import { kits } from "..";

const concrete = kits.filter(({ group }) => group === "concrete");

/** What each stands on; the others stand on the ground. */
const under: Readonly<Record<string, readonly Put[]>> = {
  column: [["footing", "Pads"]],
  wall: [["footing", "Strip", { sort: "strip", number: 1, long: "12 ft" }]],
  "retaining-wall": [["footing", "Strip", { sort: "strip", number: 1, long: "12 ft" }]],
  "deck-slab": [
    ["footing", "Pads"],
    ["column", "Columns"],
  ],
  arch: [
    ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft" }],
    ["wall", "Walls", { number: 2 }],
  ],
};

const runs = 8;

describe.each(concrete.map((kit) => [kit.id, kit] as const))("%s", (id, kit) => {
  test.each(["us", "metric"] as const)("with usual answers in %s reads, plans, and its form holds", (units) => {
    const looked = holds(units, [...(under[id] ?? []), [id, "It"]]);
    expect(mostOf(looked)).toBeLessThanOrEqual(100);
    expect(looked.build.waits.filter(({ plain, removal }) => plain && !removal)).toEqual([]);
  });

  test.each(["us", "metric"] as const)("with any answers in %s reads, plans, and its form holds", (units) => {
    fc.assert(
      fc.property(anyAnswers(kit, units), (answers) => {
        expect(mostOf(holds(units, [...(under[id] ?? []), [id, "It", answers]]))).toBeLessThanOrEqual(100);
      }),
      { numRuns: runs },
    );
  });
});
