import { describe, expect, test } from "vitest";
import { inOrder } from "../../../../test/fixtures/kits/in-order";
import { holds, type Looked, mostOf, type Put } from "../../../../test/fixtures/kits/kit-check";

const strip: Put = ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft", wide: "20 in" }];
const formOf = ({ build }: Looked) => build.pours.find(({ id }) => id === "wall-pour")?.elements[0]?.form;

describe.each(["us", "metric"] as const)("a wall in %s", (units) => {
  test("first face, bars, seal and a look at them before the last face", () => {
    const looked = holds(units, [strip, ["wall", "Wall", { recess: true, trial: true }]]);
    inOrder(looked, [
      "strip-place",
      "wall-first",
      "wall-tie",
      "wall-block",
      "wall-inspect",
      "wall-close",
      "wall-plumb",
      "wall-place",
      "wall-block-out",
    ]);
    inOrder(looked, ["wall-trial#1", "wall-trial#2", "wall-coat", "wall-first"]);
  });

  test("leaning faces are held down, and one face alone by rakers to the footing", () => {
    const leaning = holds(units, [strip, ["wall", "Wall", { leanFront: "6 in", high: "6 ft" }]]);
    expect(formOf(leaning)?.kind === "wall" && formOf(leaning)).toHaveProperty("holdDown.by.carries_kN");
    const alone = holds(units, [strip, ["wall", "Wall", { formed: "earth", high: "8 ft" }]]);
    const form = formOf(alone);
    expect(form?.kind === "wall" && form.ties === null && form.strongbacks !== null && form.brace?.lands).toBe("footing");
    expect(mostOf(alone)).toBeLessThanOrEqual(100);
    expect(alone.sheets.find(({ pour }) => alone.build.pours[pour]?.id === "wall-pour")?.elements[0]?.form?.oneSided).toBe(true);
  });

  test("clean-outs let the foot be sealed after the last face, which then is no last chance", () => {
    const looked = holds(units, [strip, ["wall", "Wall", { open: "hatch" }]]);
    inOrder(looked, ["wall-close", "wall-flush", "wall-place"]);
    const reach = looked.build.steps.find(({ id }) => id === "wall-seal")?.reaches[0]?.any[0]?.need;
    expect(reach?.kind === "arm" && reach.depth_mm).toBeLessThan(460);
  });
});
