import { describe, expect, test } from "vitest";
import { holds, mostCarried } from "../../../../test/fixtures/kits/kit-check";

describe.each(["us", "metric"] as const)("columns in %s", (units) => {
  test("stand on every footing there is, bars seen before the last face", () => {
    const { build, plan } = holds(units, [
      ["footing", "Footing"],
      ["column", "Column"],
    ]);
    const at = (id: string) => plan.steps[build.at.step.get(id) as number]!.start;
    const order = ["footing-place", "column-tie#2", "column-inspect", "column-close#2", "column-place", "column-roughen#1"];
    expect(order.map(at)).toEqual(order.map(at).toSorted((a, b) => a - b));
    expect(build.waits.filter(({ plain, removal }) => plain && !removal)).toEqual([]);
  });

  test.each([
    ["16 in", "400 mm"],
    ["5 ft", "150 mm"],
    ["7 ft 8 in", "10 in"],
    ["10 ft", "500 mm"],
    ["12 ft", "29 in"],
  ])("%s high and %s wide the form holds, whatever it is made of", (high, side) => {
    for (const lumber of ["bought", "salvaged"]) {
      const most = mostCarried(units, [
        ["footing", "Footing", { number: 1 }],
        ["column", "Column", { high, long: side, wide: side, lumber, open: "hatch", made: "place", trial: true }],
      ]);
      expect(most, lumber).toBeGreaterThan(15);
      expect(most, lumber).toBeLessThanOrEqual(100);
    }
  });
});
