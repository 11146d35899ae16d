import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { offersOf } from "..";
import { framesFor } from "./scaffold";

const columns = (answers = {}): readonly Put[] => [
  ["footing", "Footing", { number: 1 }],
  ["column", "Column"],
  ["scaffold", "Scaffold", answers],
];

describe.each(["us", "metric"] as const)("a scaffold in %s", (units) => {
  test("stands, guarded and looked over, before anybody works where it serves, and comes down after", () => {
    const { build, plan } = holds(units, columns());
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    const top = offersOf(builtFrom(units, columns())).find(({ kind }) => kind === "top")!;
    const served = build.steps.filter((step) => step.reaches.some(({ any }) => any.some(({ place }) => place === top.place)));
    expect(served.length).toBeGreaterThan(0);
    for (const { id } of served) {
      expect(at(id).start, id).toBeGreaterThanOrEqual(at("scaffold-look-over").finish);
      expect(at(id).finish, id).toBeLessThanOrEqual(at("scaffold-take").start);
    }
    expect(at("scaffold-set").finish).toBeLessThanOrEqual(at("scaffold-guard").start);
    expect(build.waits.filter(({ plain, id }) => plain && id.startsWith("scaffold"))).toEqual([]);
  });

  test("hired frames are ordered, come, and are given back; frames in hand need no delivery", () => {
    const { build, plan } = holds(units, columns());
    const stock = plan.stands.stock.find(({ of }) => of === "scaffold-frames")!;
    expect(Math.min(...stock.left)).toBe(0);
    expect(stock.left[stock.left.length - 1]).toBe(build.deliveries.find(({ id }) => id === "scaffold-hire")!.brings[0]!.number);
    expect(holds(units, columns({ frames: "own" })).build.deliveries.some(({ id }) => id === "scaffold-hire")).toBe(false);
  });

  test("narrower than a quarter of its height it is tied: 29 CFR 1926.451 (c)(1)", () => {
    const said = (answers: object) => {
      const { build } = holds(units, [["scaffold", "Scaffold", answers as never]]);
      return build.steps[build.at.step.get("scaffold-set")!]!.cautions.some((caution) => caution.includes("tied"));
    };
    const [low, high] = units === "us" ? ["20 ft", "20 ft 1 in"] : ["6 m", "6.01 m"];
    const wide = units === "us" ? "5 ft" : "1.5 m";
    expect(said({ high: low, wide })).toBe(false);
    expect(said({ high, wide })).toBe(true);
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("scaffold", units), (answers) => {
        holds(units, columns(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("scaffold", "us"), metric: oneAtItsEnd("scaffold", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, columns(all[units][i]));
  });
});

/** Bays of 7 ft and lifts of 6 ft 6 in, one frame more than bays in every lift. */
test.each([
  [7, 6.5, 2],
  [14, 6.5, 3],
  [14.1, 6.6, 8],
] as const)("%f ft long and %f ft high take %i frames", (long_ft, high_ft, frames) => {
  expect(framesFor(long_ft * 304.8, high_ft * 304.8).frames).toBe(frames);
});
