import { describe, expect, test } from "vitest";
import { inOrder } from "../../../../test/fixtures/kits/in-order";
import { holds } from "../../../../test/fixtures/kits/kit-check";

describe.each(["us", "metric"] as const)("a stair in %s", (units) => {
  test("on the ground: bed, bars, boards, pour, and the guard once its anchors hold", () => {
    const looked = holds(units, [["stair", "Steps"]]);
    inOrder(looked, ["steps-dig", "steps-bed", "steps-tie", "steps-boards", "steps-place", "steps-guard"]);
    const anchors = looked.build.waits.filter(({ to, removal }) => to === "steps-guard" && removal?.sort === "anchors");
    expect(anchors.map(({ least }) => least?.text)).toEqual(["3 d"]);
  });

  test("with a formed soffit leans on what it leads to, and its shores stay until it carries", () => {
    const looked = holds(units, [
      ["footing", "Landing", { number: 1, sort: "strip" }],
      ["stair", "Steps", { sort: "deck", steps: 12 }],
    ]);
    inOrder(looked, ["landing-place", "steps-shore", "steps-soffit", "steps-tie", "steps-check", "steps-place", "steps-strip"]);
    expect(looked.build.pieces.find(({ id }) => id === "steps-concrete")?.heldBy).toEqual([["steps-soffit", "landing-concrete"]]);
  });
});
