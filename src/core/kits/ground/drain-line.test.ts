import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { holds, type Put } from "../../../../test/fixtures/kits/kit-check";

const drain = (answers = {}): readonly Put[] => [["drain-line", "Drain", answers]];

describe.each(["us", "metric"] as const)("a drain in %s", (units) => {
  test("is dug, lined, laid, run with water while it can still be moved, then covered", () => {
    const { build, plan } = holds(units, drain({ inspected: true }));
    const at = (id: string) => plan.steps[build.at.step.get(`drain-${id}`)!]!;
    const order = ["dig", "lay-fleece", "lay-pipe", "water-test", "place-stone", "fill"];
    for (let i = 1; i < order.length; i++) expect(at(order[i - 1]!).finish, order[i]).toBeLessThanOrEqual(at(order[i]!).start);
    for (const id of ["photo-pipe", "inspect-pipe"]) expect(at(id).finish, id).toBeLessThanOrEqual(at("place-stone").start);
    expect(build.waits.filter(({ plain }) => plain)).toEqual([]);
  });

  test("falls as far as was answered over its length", () => {
    const { build } = holds(units, drain({ long: units === "us" ? "50 ft" : "15 m", fall: 2 }));
    const note = build.steps[build.at.step.get("drain-lay-fleece")!]!.notes;
    expect(note).toContain(units === "us" ? "Fall 2 in 100, 12 in over" : "Fall 2 in 100, 300 mm over");
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("drain-line", units), (answers) => {
        holds(units, drain(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("drain-line", "us"), metric: oneAtItsEnd("drain-line", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, drain(all[units][i]));
  });
});
