import { describe, expect, test } from "vitest";
import { inOrder } from "../../../../test/fixtures/kits/in-order";
import { holds } from "../../../../test/fixtures/kits/kit-check";

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

  test("waits for utility marks where somebody has them made", () => {
    const looked = holds(units, [
      ["layout", "Layout"],
      ["ground-slab", "Floor"],
    ]);
    inOrder(looked, ["layout-paint-marks", "floor-dig"]);
  });
});
