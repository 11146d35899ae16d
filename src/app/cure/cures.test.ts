import { describe, expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import type { Build } from "../../core/build";
import { plan } from "../../core/plan";
import { bareStrengths, curesOf, dateOf, drawnWords, firstCure, stripOrder } from "./cures";

const steps = [{ id: "a", fixed: "2027-04-03" }, { id: "b", fixed: "2027-06-05" }, { id: "strip" }, { id: "strike" }];
const carried = { sort: "soffit", step: "strike", span: "9 ft" };
const sides = { sort: "sides", step: "strip" };

function cured(document: Parameters<typeof buildOf>[0]) {
  const build: Build = buildOf(document);
  const made = plan(build);
  if (made.status !== "planned") throw new Error("no plan");
  return { build, made, cures: curesOf(build, made) };
}
const two = () =>
  cured({
    steps,
    pours: [
      { ...slabPour({ removals: [] }), id: "later", step: "b" },
      { ...slabPour({ removals: [carried, sides] }), id: "first", step: "a" },
    ],
  });

describe("which pour is looked at first", () => {
  test("before all of them the next to be placed", () => {
    const { build, cures } = two();
    expect(cures.map(({ pour }) => pour.id)).toEqual(["first", "later"]);
    expect(firstCure(build, cures, "2027-01-01")?.pour.id).toBe("first");
  });

  test("then the one with something still held, until that is off", () => {
    const { build, cures } = two();
    expect(firstCure(build, cures, "2027-04-10")?.pour.id).toBe("first");
    const off = dateOf(build, Math.max(...cures[0]!.sheet.removals.map(({ planned }) => planned)));
    expect(off < "2027-06-01").toBe(true);
    expect(firstCure(build, cures, "2027-06-01")?.pour.id).toBe("later");
  });

  test("after all of them the last, and none where there are none", () => {
    const { build, cures } = two();
    expect(firstCure(build, cures, "2028-01-01")?.pour.id).toBe("later");
    expect(firstCure(build, [], "2028-01-01")).toBeNull();
  });
});

test("drawing and list tell the same steps in the same order, with the same dates and states", () => {
  const { build, cures } = two();
  const rows = stripOrder(build, cures, "us");
  expect(drawnWords(build, cures[0]!, "us").map(({ date, state }) => ({ date, state }))).toEqual(
    rows.map(({ date, state }) => ({ date, state })),
  );
  // The entry that is changed is the one as written, wherever its date puts it.
  expect(rows.map(({ step, entry }) => [step, entry])).toEqual([
    ["strip", 1],
    ["strike", 0],
  ]);
});

test("a step with no more than a strength says who waits for it, and is told until its pour is written", () => {
  const document = {
    steps: [
      { id: "a", name: "Pour the pad", pour: { strength: "3000 psi" } },
      { id: "b", name: "Strip", after: ["a"] },
    ],
    waits: [{ id: "w", from: "a", to: "b", least: "70 % of a" }],
  };
  const { build, made } = cured(document);
  const [row, ...more] = bareStrengths(build, made, "us");
  expect(more).toEqual([]);
  expect(row?.says).toMatch(/^3000 psi is asked of it, and “Strip” waits for it; write down in Forms/);
  const written = cured({ steps, pours: [slabPour({ removals: [] })] });
  expect(bareStrengths(written.build, written.made, "us")).toEqual([]);
});
