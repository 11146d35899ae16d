import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const dug = (answers = {}) =>
  [
    ["layout", "Layout", answers],
    ["drain-line", "Drain"],
  ] as const;

describe.each(["us", "metric"] as const)("layout and marks in %s", (units) => {
  test("come before any digging, are photographed first, and have not expired when it ends", () => {
    const { build, plan } = holds(units, dug());
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    const dig = at("drain-dig");
    for (const id of ["layout-paint-marks", "layout-photo-marks", "layout-set-boards", "layout-check-lines"])
      expect(at(id).finish, id).toBeLessThanOrEqual(dig.start);
    expect(dig.finish - at("layout-paint-marks").finish).toBeLessThanOrEqual(28 * 1440);
    expect(at("layout-take-boards").start).toBeGreaterThanOrEqual(dig.finish);
    expect(build.waits.filter(({ plain }) => plain)).toEqual([]);
  });

  test.each([
    // Asked on Saturday the 3rd, which counts as Monday the 5th; two full days' notice: Thursday the 8th.
    [3, 5],
    [10, 16],
  ])("come %i working days of the office after the request", (notice, day) => {
    const { build, plan } = holds(units, dug({ notice }));
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    expect(Math.floor(at("layout-ask-marks").finish / 1440)).toBe(0);
    expect(Math.floor(at("layout-paint-marks").start / 1440)).toBe(day);
  });

  test("without marks say that nobody has asked for them", () => {
    expect(unknownOf(builtFrom(units, dug({ marks: false }))).map(({ code }) => code)).toContain("utility-marks");
    expect(unknownOf(builtFrom(units, dug())).map(({ code }) => code)).not.toContain("utility-marks");
  });

  test("stand with any answers", () => {
    fc.assert(
      fc.property(someAnswers("layout", units), (answers) => {
        holds(units, dug(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("layout", "us"), metric: oneAtItsEnd("layout", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, dug(all[units][i]));
  });
});
