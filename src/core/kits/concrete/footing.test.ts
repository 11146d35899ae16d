import { describe, expect, test } from "vitest";
import { inOrder, verdictOf } from "../../../../test/fixtures/kits/in-order";
import { holds, type Looked, mostCarried } from "../../../../test/fixtures/kits/kit-check";

describe.each(["us", "metric"] as const)("a footing in %s", (units) => {
  test("with usual answers is dug, tied, looked at and poured in this order", () => {
    const { build, plan } = holds(units, [["footing", "Footing"]]);
    const at = (id: string) => plan.steps[build.at.step.get(id) as number]!.start;
    const order = ["footing-set-out#1", "footing-dig#1", "footing-tie#1", "footing-starters#1", "footing-photo", "footing-place"];
    expect(order.map(at)).toEqual(order.map(at).toSorted((a, b) => a - b));
    expect(build.waits.filter(({ plain, removal }) => plain && !removal)).toEqual([]);
  });

  const stepOf = ({ build }: Looked, id: string) => build.steps.find((step) => step.id === id);

  test("cast against earth, the hole over it is filled and compacted once the forms of what stands in it are off, and before shores stand on it", () => {
    const looked = holds(units, [
      ["footing", "Footing"],
      ["column", "Column"],
      ["deck-slab", "Slab"],
    ]);
    for (const before of ["column-tie#1", "column-set-faces#2", "column-close#1", "column-strip#2"])
      expect(verdictOf(looked, before, "footing-fill-in#1"), before).toBe("must");
    for (const after of ["slab-shore", "slab-scaffold-up"]) expect(verdictOf(looked, "footing-fill-in#2", after), after).toBe("must");
    expect(stepOf(looked, "footing-fill-in#1")?.name).toContain("compacted");
  });

  test("posts on it get their bases before earth covers them", () => {
    const looked = holds(units, [
      ["footing", "Footing"],
      ["post-roof", "Roof"],
    ]);
    expect(verdictOf(looked, "roof-set-post-bases", "footing-fill-in#1")).toBe("must");
    expect(verdictOf(looked, "roof-stand-posts", "footing-fill-in#2")).toBe("must");
  });

  test("behind a retaining wall the drain lies at the foot before the footing's hole is filled, and the rest comes on top", () => {
    const looked = holds(units, [
      ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft" }],
      ["retaining-wall", "Wall"],
    ]);
    inOrder(looked, ["wall-strip", "wall-pipe", "wall-board", "strip-fill-in", "wall-fill"]);
    for (const before of ["wall-pipe", "wall-board", "wall-stone"]) expect(verdictOf(looked, before, "strip-fill-in"), before).toBe("must");
    expect(verdictOf(looked, "strip-fill-in", "wall-fill")).toBe("must");
  });

  test("nothing is left to fill where the concrete comes up to the ground, and beside boards there always is", () => {
    const flush = holds(units, [["footing", "Footing", { thick: "30 in", deep: "30 in", number: 1 }]]);
    expect(stepOf(flush, "footing-fill-in")).toBeUndefined();
    const boarded = holds(units, [["footing", "Footing", { thick: "30 in", deep: "30 in", number: 1, sides: "boards" }]]);
    expect(verdictOf(boarded, "footing-strip", "footing-fill-in")).toBe("must");
  });

  test("its solid lies under the ground, as deep as it is dug", () => {
    const { build } = holds(units, [["footing", "Footing", { number: 1, thick: "10 in", deep: "34 in" }]]);
    const [solid] = build.solids;
    expect(solid?.at_mm.z).toBeCloseTo(-34 * 25.4, 0);
    expect((solid?.at_mm.z ?? 0) + (solid?.size_mm.high ?? 0)).toBeCloseTo(-24 * 25.4, 0);
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
