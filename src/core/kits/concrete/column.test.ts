import { describe, expect, test } from "vitest";
import { verdictOf } from "../../../../test/fixtures/kits/in-order";
import { builtFrom, holds, mostCarried } from "../../../../test/fixtures/kits/kit-check";
import { parseSigned } from "../../base";
import { apply } from "../../edit";
import { checkAnswers, putIn } from "..";

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
    ["column", "face"],
    ["wall", "face"],
  ])("of a %s the bars are looked at before the last face goes on, in every order: from the top nobody sees their foot", (kit, open) => {
    const looked = holds(units, [
      ["footing", "Footing", { number: 1 }],
      [kit, "It", { open }],
    ]);
    for (const look of ["it-photo", "it-inspect"]) expect(verdictOf(looked, look, "it-close"), look).toBe("must");
  });

  test("with clean-outs at the foot the look may come after the form is closed around the bars", () => {
    const looked = holds(units, [
      ["footing", "Footing", { number: 1 }],
      ["column", "It", { open: "hatch" }],
    ]);
    expect(verdictOf(looked, "it-inspect", "it-place")).toBe("must");
    expect(verdictOf(looked, "it-inspect", "it-set-faces")).not.toBe("must");
  });

  test("the part in the ground comes on top of the height that is asked for, and is counted before a form is too high", () => {
    const pads = builtFrom(units, [["footing", "Footing", { deep: "1.5 m", thick: "300 mm" }]]);
    const high = (answers: Readonly<Record<string, string>>) => {
      const made = apply(pads, putIn(pads, "column", "Column", answers).edits).document as {
        readonly pours: readonly { readonly elements: readonly { readonly shape: { readonly high: string } }[] }[];
      };
      return parseSigned("length", made.pours[1]?.elements[0]?.shape.high ?? "") ?? 0;
    };
    expect(high({ head: "2 m" })).toBeCloseTo(3200, -1);
    expect(high({ measured: "foot", high: "2 m" })).toBeCloseTo(2000, -1);
    const [fault] = checkAnswers(pads, "column", { head: "3 m" });
    expect(fault?.code).toBe("kit.range");
    expect(fault?.detail.most).toBeCloseTo(2500, -1);
    expect(checkAnswers(pads, "column", { head: "2.4 m" })).toEqual([]);
    const onFloor = builtFrom(units, [["ground-slab", "Floor", { above: "200 mm" }]]);
    expect(checkAnswers(onFloor, "column", { head: "3 m" })).toEqual([]);
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
        ["column", "Column", { measured: "foot", high, long: side, wide: side, lumber, open: "hatch", made: "place", trial: true }],
      ]);
      expect(most, lumber).toBeGreaterThan(15);
      expect(most, lumber).toBeLessThanOrEqual(100);
    }
  });
});
