import { describe, expect, test } from "vitest";
import { builtFrom, holds, type Looked, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const below: readonly Put[] = [
  ["layout", "Layout"],
  ["permits", "Permit"],
  ["footing", "Footing"],
  ["column", "Column"],
  ["deck-slab", "Slab"],
];

const goes = ({ build, plan }: Looked, a: string, b: string) => {
  const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
  expect(at(a).finish, `${a} before ${b}`).toBeLessThanOrEqual(at(b).start);
};

describe.each(["us", "metric"] as const)("columns, a slab on a deck and timber on it, in %s", (units) => {
  test("a roof on posts: bolts go into the deck's form, posts onto the slab, and no link is typed", () => {
    const looked = holds(units, [...below, ["post-roof", "Roof"]]);
    goes(looked, "roof-set-bolts", "slab-place");
    goes(looked, "slab-place", "roof-set-post-bases");
    goes(looked, "layout-paint-marks", "footing-dig#1");
    goes(looked, "permit-issue", "footing-dig#2");
    expect(looked.build.waits.filter(({ plain, removal }) => plain && removal === undefined)).toEqual([]);
    expect(looked.plan.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  });

  test("a building with a trench to it: bolts and sleeve before the pour, cable when the room is dry", () => {
    const puts: readonly Put[] = [
      ...below,
      ["small-building", "Shed"],
      ["house-trench", "Trench", { cast: ["slab/cast"], room: ["shed/dry"] }],
    ];
    const looked = holds(units, puts);
    goes(looked, "shed-set-bolts", "slab-place");
    goes(looked, "trench-set-sleeve", "slab-place");
    goes(looked, "trench-set-sleeve", "trench-lay-conduit");
    goes(looked, "slab-place", "shed-set-sills");
    goes(looked, "shed-set-joinery", "trench-pull-cable");
    // The slab is over head height: nobody gets at the walls from the ground.
    goes(looked, "shed-set-roof-scaffold", "shed-sheathe");
    goes(looked, "shed-paint-2", "shed-take-roof-scaffold");
    expect(looked.build.waits.filter(({ plain, removal }) => plain && removal === undefined)).toEqual([]);
    expect(looked.plan.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    const codes = unknownOf(builtFrom(units, puts)).map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(["ground", "soffit", "timber-sizes", "conductors", "which-inspections"]));
    expect(codes).not.toContain("stands-on");
  });

  test("a building on four footings gets beams and a floor before its walls", () => {
    const looked = holds(units, [
      ["footing", "Footing", { number: 4 }],
      ["small-building", "Shed"],
    ]);
    goes(looked, "footing-place", "shed-set-sills");
    goes(looked, "shed-set-sills", "shed-frame-floor");
    goes(looked, "shed-frame-floor", "shed-frame-walls");
    goes(looked, "shed-sheathe", "shed-set-roof-scaffold");
  });

  test("one visit sees the bars of the slab before it is poured", () => {
    const looked = holds(units, [...below, ["permits", "Visit", { permit: false, visits: ["together"], together: ["slab/cast"] }]]);
    goes(looked, "visit-inspect-together", "slab-place");
    goes(looked, "slab-tie", "visit-inspect-together");
  });
});
