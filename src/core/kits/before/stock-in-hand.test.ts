import { describe, expect, test } from "vitest";
import { oneAtItsEnd } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const stock = (answers = {}): readonly Put[] => [["stock-in-hand", "Barn", answers]];

describe.each(["us", "metric"] as const)("stock in hand in %s", (units) => {
  test("is there from the start; what is salvaged takes hours at the store and has no grade yet", () => {
    const { build } = holds(units, stock({ number: 12 }));
    expect(build.stock).toMatchObject([{ id: "barn-stock", inHand: 12, unit: "sheet" }]);
    const sort = build.steps.find(({ id }) => id === "barn-sort")!;
    // 12 sheets, 2.97 m2 each, at 0.35 h/m2.
    expect(sort.work.likely_min).toBe(Math.round((12 * 2.97 * 0.35 * 60) / 15) * 15);
    expect(unknownOf(builtFrom(units, stock())).map(({ code }) => code)).toEqual(["salvaged-grade"]);
    expect(unknownOf(builtFrom(units, stock({ "says-grade": "sawyer, No. 2" })))).toEqual([]);
  });

  test("new stock takes no hours", () => {
    const { build } = holds(units, [["layout", "Layout"], ...stock({ salvaged: false })]);
    expect(build.stock).toHaveLength(1);
    expect(build.steps.some(({ id }) => id.startsWith("barn"))).toBe(false);
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("stock-in-hand", "us"), metric: oneAtItsEnd("stock-in-hand", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, [["layout", "Layout"], ...stock(all[units][i])]);
  });
});
