import { describe, expect, test } from "vitest";
import { holds, mostCarried } from "../../../../test/fixtures/kits/kit-check";

describe.each(["us", "metric"] as const)("a footing in %s", (units) => {
  test("with usual answers is dug, tied, looked at and poured in this order", () => {
    const { build, plan } = holds(units, [["footing", "Footing"]]);
    const at = (id: string) => plan.steps[build.at.step.get(id) as number]!.start;
    const order = ["footing-set-out#1", "footing-dig#1", "footing-tie#1", "footing-starters#1", "footing-photo", "footing-place"];
    expect(order.map(at)).toEqual(order.map(at).toSorted((a, b) => a - b));
    expect(build.waits.filter(({ plain, removal }) => plain && !removal)).toEqual([]);
  });

  test("between boards they hold, come off and are filled in", () => {
    for (const thick of ["8 in", "12 in", "20 in", "30 in", "35 in"]) {
      for (const lumber of ["bought", "salvaged"]) {
        const most = mostCarried(units, [["footing", "Footing", { sides: "boards", thick, deep: "40 in", lumber }]]);
        expect(most, `${thick} ${lumber}`).toBeGreaterThan(10);
        expect(most, `${thick} ${lumber}`).toBeLessThanOrEqual(100);
      }
    }
  });
});
