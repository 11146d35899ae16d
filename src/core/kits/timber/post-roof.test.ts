import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unknownOf } from "..";

const roof = (answers = {}): readonly Put[] => [
  ["footing", "Footing", { number: 4 }],
  ["post-roof", "Roof", answers],
];

describe.each(["us", "metric"] as const)("a roof on posts in %s", (units) => {
  test("goes up on four footings once their concrete is strong enough, and braces come out when it holds itself", () => {
    const { build, plan } = holds(units, roof());
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    const order = [
      "footing-place",
      "roof-drill-anchors",
      "roof-set-post-bases",
      "roof-stand-posts",
      "roof-set-beams",
      "roof-set-rafters",
      "roof-board-roof",
    ];
    for (let i = 1; i < order.length; i++) expect(at(order[i - 1]!).finish, order[i]).toBeLessThanOrEqual(at(order[i]!).start);
    const lean = build.steps[build.at.step.get("roof-drill-anchors")!]!.leansOn;
    expect(lean.map(({ piece, once }) => [piece, once!.text])).toEqual(
      [1, 2, 3, 4].map((n) => [`footing-concrete#${n}`, "50 % of footing-place"]),
    );
    expect(at("roof-take-braces").start).toBeGreaterThanOrEqual(at("roof-board-roof").finish);
    expect(at("roof-inspect-frame").finish).toBeLessThanOrEqual(at("roof-lay-underlay").start);
    expect(at("roof-take-roof-scaffold").start).toBeGreaterThanOrEqual(at("roof-lay-roofing").finish);
    expect(build.waits.filter(({ plain, id }) => plain && id.startsWith("roof"))).toEqual([]);
  });

  test("is reached from a scaffold where one is there, and that stays until the covering is on", () => {
    const { build, plan } = holds(units, [["scaffold", "Scaffold"], ...roof({ scaffold: ["scaffold/scaffold"] })]);
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    expect(build.at.step.has("roof-set-roof-scaffold")).toBe(false);
    expect(at("scaffold-look-over").finish).toBeLessThanOrEqual(at("roof-set-rafters").start);
    expect(at("scaffold-take").start).toBeGreaterThanOrEqual(at("roof-lay-roofing").finish);
  });

  test("without a base says that nobody has said what it stands on; answers take the others off the list", () => {
    const codes = (answers = {}) => unknownOf(builtFrom(units, [["post-roof", "Roof", answers]])).map(({ code }) => code);
    expect(codes()).toEqual(["stands-on", "timber-sizes", "roof-load"]);
    expect(codes({ "says-sizes": "engineer", "says-load": "building office, 30 psf" })).toEqual(["stands-on"]);
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("post-roof", units), (answers) => {
        holds(units, roof(answers));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("post-roof", "us"), metric: oneAtItsEnd("post-roof", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, roof(all[units][i]));
  });
});
