import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const fenced = (answers = {}): readonly Put[] => [
  ["house-trench", "Trench"],
  ["drain-line", "Drain"],
  ["site-fence", "Fence", answers],
];

describe.each(["us", "metric"] as const)("a site fence in %s", (units) => {
  test("stands before anybody digs or climbs into what is open, and goes when that is filled", () => {
    const { build, plan } = holds(units, fenced());
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    for (const id of ["drain-dig", "drain-lay-pipe", "trench-lay-bed", "trench-lay-tape"]) {
      expect(at(id).start, id).toBeGreaterThanOrEqual(at("fence-set").finish);
      expect(at(id).finish, id).toBeLessThanOrEqual(at("fence-take").start);
    }
    expect(build.waits.filter(({ plain }) => plain)).toEqual([]);
  });

  test("somebody looks round every so many days, or says that nobody does", () => {
    const { build, plan } = holds(units, fenced({ every: 2, who: "Ines, next door" }));
    const wait = build.waits.findIndex(({ id }) => id === "fence-weekdays");
    const visits = plan.visits.filter((visit) => visit.wait === wait);
    expect(visits.length).toBeGreaterThan(2);
    expect(new Set(visits.map(({ who }) => who))).toEqual(new Set(["Ines, next door"]));
    expect(visits[1]!.at - visits[0]!.at).toBe(2 * 1440);
    const codes = (answers: object) => unknownOf(builtFrom(units, fenced(answers))).map(({ code }) => code);
    expect(codes({ every: 2 })).toContain("who-looks");
    expect(codes({ every: 2, who: "Ines" })).not.toContain("who-looks");
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("site-fence", units), (answers) => {
        holds(units, fenced(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("site-fence", "us"), metric: oneAtItsEnd("site-fence", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, fenced(all[units][i]));
  });
});
