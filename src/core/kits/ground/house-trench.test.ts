import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";
import { trenchSizes } from "./digging";

const trench = (answers = {}): readonly Put[] => [["house-trench", "Trench", answers]];

describe.each(["us", "metric"] as const)("a trench to the house in %s", (units) => {
  test("marks, dig, conduit, string, inspection, sand, tape, fill, cable: from what each reaches", () => {
    const { build, plan } = holds(units, trench());
    const at = (id: string) => plan.steps[build.at.step.get(`trench-${id}`)!]!;
    const order = [
      "paint-marks",
      "photo-marks",
      "dig",
      "lay-bed",
      "lay-conduit",
      "pull-string",
      "inspect-trench",
      "sand-over",
      "lay-tape",
      "fill",
      "pull-cable",
    ];
    for (let i = 1; i < order.length; i++) expect(at(order[i - 1]!).finish, order[i]).toBeLessThanOrEqual(at(order[i]!).start);
    expect(at("photo-conduit").finish).toBeLessThanOrEqual(at("sand-over").start);
    expect(build.waits.filter(({ plain }) => plain)).toEqual([]);
  });

  test("the cable is pulled once the room it ends in is dry", () => {
    const shed: Put = ["small-building", "Shed"];
    const { build, plan } = holds(units, [shed, ...trench({ room: ["shed/dry"] })]);
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    for (const id of ["hang-wrap", "lay-underlay", "set-joinery"])
      expect(at("trench-pull-cable").start, id).toBeGreaterThanOrEqual(at(`shed-${id}`).finish);
  });

  test("says how much earth is left over the conduit", () => {
    const { build } = holds(units, trench({ deep: units === "us" ? "24 in" : "600 mm" }));
    const caution = build.steps[build.at.step.get("trench-lay-conduit")!]!.cautions[0];
    expect(caution).toContain(units === "us" ? "here about 18 in." : "here about 448 mm.");
  });

  test("deep sides are laid back or held; a ladder from 4 ft; somebody competent is asked for", () => {
    const deep = (sides: string) => holds(units, trench({ deep: "6 ft", sides, soil: "C" })).build;
    const [sloped, shored] = [deep("slope"), deep("shore")];
    const dig = (build: typeof sloped) => build.steps[build.at.step.get("trench-dig")!]!;
    expect(dig(sloped).cautions[0]).toContain("1.5 to 1");
    expect(dig(sloped).puts).toEqual(["trench-hole", "trench-ladder"]);
    expect(dig(shored).puts).toEqual(["trench-hole", "trench-shoring", "trench-ladder"]);
    const fill = shored.steps[shored.at.step.get("trench-fill")!]!;
    expect(fill.takes).toEqual(["trench-shoring", "trench-ladder"]);
    expect(unknownOf(builtFrom(units, trench({ deep: "6 ft" }))).map(({ code }) => code)).toContain("trench-soil");
    expect(unknownOf(builtFrom(units, trench({ deep: "4 ft 11 in" }))).map(({ code }) => code)).not.toContain("trench-soil");
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("house-trench", units), (answers) => {
        holds(units, trench(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("house-trench", "us"), metric: oneAtItsEnd("house-trench", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, trench(all[units][i]));
  });
});

/** Table B-1 of 29 CFR 1926 Subpart P, Appendix B: 1 1/2 to 1 for C, 1 to 1 for B, 3/4 to 1 for A; from 5 ft on. */
test.each([
  ["C", 6, 1 + 2 * 1.5 * 6],
  ["B", 5, 1 + 2 * 5],
  ["A", 8, 1 + 2 * 0.75 * 8],
  ["rock", 8, 1],
  ["C", 4.9, 1],
] as const)("a trench in %s, %f ft deep and 1 ft wide at the bottom, is %f ft wide at the top", (soil, deep_ft, top_ft) => {
  const lengths: Readonly<Record<string, number>> = { long: 10 * 304.8, deep: deep_ft * 304.8, wide: 304.8 };
  const choices: Readonly<Record<string, string>> = { soil, sides: "slope" };
  const answers = { length_mm: (key: string) => lengths[key]!, choice: (key: string) => choices[key]! };
  const sizes = trenchSizes({ answers } as never);
  expect(sizes.top_mm / 304.8).toBeCloseTo(top_ft, 6);
  // Ten feet of a trapezoid, from the plain formula.
  expect(sizes.bank_m3 / 0.3048 ** 3).toBeCloseTo(((1 + top_ft) / 2) * deep_ft * 10, 6);
});
