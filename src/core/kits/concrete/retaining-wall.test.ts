import { describe, expect, test } from "vitest";
import { inOrder } from "../../../../test/fixtures/kits/in-order";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const strip: Put = ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft", wide: "3 ft" }];

describe.each(["us", "metric"] as const)("a retaining wall in %s", (units) => {
  test("is patched, damp-proofed, drained, boarded and filled in that order, each while one still gets at it", () => {
    const looked = holds(units, [strip, ["retaining-wall", "Wall"]]);
    inOrder(looked, ["wall-place", "wall-strip", "wall-patch", "wall-proof", "wall-pipe", "wall-photo-back", "wall-stone", "wall-fill"]);
    inOrder(looked, ["wall-proof", "wall-board", "wall-fill"]);
    const fill = looked.build.waits.filter(({ to, removal }) => to === "wall-fill" && removal?.sort === "backfill");
    expect(fill.map(({ least }) => least?.text)).toEqual(["7 d", "70 % of wall-place"]);
  });

  test("cast against earth it has a mat on the cut before the bars, and nothing behind it", () => {
    const looked = holds(units, [strip, ["retaining-wall", "Wall", { formed: "earth" }]]);
    inOrder(looked, ["wall-mat", "wall-tie", "wall-close", "wall-place"]);
    expect(looked.build.steps.map(({ id }) => id)).not.toContain("wall-fill");
  });

  test("what the earth presses with, and a slope, stay open until somebody says it", () => {
    const codes = (answers = {}) => unknownOf(builtFrom(units, [strip, ["retaining-wall", "Wall", answers]])).map(({ code }) => code);
    expect(codes()).toContain("earth");
    expect(codes({ sized: "the engineer, sheet 2" })).not.toContain("earth");
    expect(codes({ above: "slope" })).toContain("slope");
    expect(codes()).not.toContain("slope");
  });
});
