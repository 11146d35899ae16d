import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const built = (answers = {}): readonly Put[] => [
  ["house-trench", "Trench", { marks: false }],
  ["footing", "Footing", { number: 1 }],
  ["small-building", "Shed"],
  ["permits", "Permit", answers],
];

describe.each(["us", "metric"] as const)("permit and visits in %s", (units) => {
  test("nobody digs before the office has issued the permit, after its own working days", () => {
    const { build, plan } = holds(units, built());
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    // Handed in on Saturday the 3rd, which counts as Monday the 5th; fifteen working days later is Monday the 26th.
    expect(Math.floor(at("permit-issue").start / 1440)).toBe(23);
    for (const id of ["trench-dig", "footing-dig"]) expect(at(id).start, id).toBeGreaterThanOrEqual(at("permit-issue").finish);
    expect(build.waits.filter(({ plain }) => plain)).toEqual([]);
  });

  test("lines are seen before any digging; one visit stops the work at all that it sees", () => {
    const { build, plan } = holds(units, built({ visits: ["lines", "together"], together: ["trench/trench"] }));
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    expect(at("permit-inspect-lines").finish).toBeLessThanOrEqual(at("trench-dig").start);
    const seen = build.steps[build.at.step.get("permit-inspect-together")!]!;
    expect(seen.holdPoint!.places).toEqual(["trench-trench"]);
    expect(at("trench-fill").start).toBeGreaterThanOrEqual(at("permit-inspect-together").finish);
  });

  test("the last visit comes after the walls are closed, and is asked for on the inspector's days", () => {
    const { build, plan } = holds(units, built());
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    expect(at("permit-inspect-final").start).toBeGreaterThanOrEqual(at("shed-nail-siding").finish);
    expect(build.bookings.map(({ step }) => step)).toContain("permit-inspect-final");
  });

  test("without anything to see last, it says that nobody has said what that visit sees", () => {
    const codes = unknownOf(builtFrom(units, [["permits", "Permit", { permit: false }]])).map(({ code }) => code);
    expect(codes).toEqual(["which-inspections", "permit", "final-visit"]);
  });

  test("stand with any answers", () => {
    fc.assert(
      fc.property(someAnswers("permits", units), (answers) => {
        holds(units, built(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("permits", "us"), metric: oneAtItsEnd("permits", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, built(all[units][i]));
  });
});
