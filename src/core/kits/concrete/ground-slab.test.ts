import { describe, expect, test } from "vitest";
import { inOrder, verdictOf } from "../../../../test/fixtures/kits/in-order";
import { builtFrom, holds } from "../../../../test/fixtures/kits/kit-check";
import { apply } from "../../edit";
import { answerAgain, formOf, type RawAnswers } from "..";

describe.each(["us", "metric"] as const)("a slab on the ground in %s", (units) => {
  test("pipes lie before the sheet closes the bed, bars on the sheet, and nobody walks on it green", () => {
    const looked = holds(units, [["ground-slab", "Floor", { bolts: 6 }]]);
    inOrder(looked, [
      "floor-set-out",
      "floor-dig",
      "floor-stone",
      "floor-sleeves",
      "floor-barrier",
      "floor-tie",
      "floor-inspect",
      "floor-place",
      "floor-uncover",
    ]);
    inOrder(looked, ["floor-edge", "floor-bolts", "floor-inspect", "floor-place", "floor-strip"]);
    const wait = looked.build.waits.findIndex(({ id }) => id === "floor-cure");
    expect(looked.plan.visits.filter((visit) => visit.wait === wait).length).toBeGreaterThanOrEqual(6);
  });

  test("its covers close it: posts go up once it has cured and they are off, unless they are lifted for work", () => {
    const withRoof = (covers: string) =>
      holds(units, [
        ["ground-slab", "Floor", { covers }],
        ["post-roof", "Roof"],
      ]);
    const stay = withRoof("stay");
    expect(verdictOf(stay, "floor-uncover", "roof-set-post-bases")).toBe("must");
    const lifted = withRoof("lifted");
    expect(verdictOf(lifted, "floor-uncover", "roof-set-post-bases")).toBe("none");
    const strength = lifted.build.steps.find(({ id }) => id === "roof-set-post-bases")?.leansOn[0]?.once;
    expect(strength?.text).toBe("50 % of floor-place");
  });

  test("a part put in before its covers were asked about stays as it was until somebody says so", () => {
    const document = builtFrom(units, [["ground-slab", "Floor", { covers: "lifted" }]]) as {
      parts: { answers: Record<string, unknown> }[];
    };
    const { covers: _, ...older } = document.parts[0]!.answers;
    const before = { ...document, parts: [{ ...document.parts[0], answers: older }] };
    const now = apply(before, answerAgain(before, "floor", {}).edits).document as typeof document;
    expect(now.parts[0]?.answers.covers).toBe("lifted");
    expect(formOf(before, "ground-slab", older as RawAnswers, "floor").find(({ ask }) => ask.key === "covers")?.value).toBe("lifted");
    expect(formOf(before, "ground-slab", {}).find(({ ask }) => ask.key === "covers")?.value).toBe("stay");
  });

  test("waits for utility marks where somebody has them made", () => {
    const looked = holds(units, [
      ["layout", "Layout"],
      ["ground-slab", "Floor"],
    ]);
    inOrder(looked, ["layout-paint-marks", "floor-dig"]);
  });
});
