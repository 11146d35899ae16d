import { describe, expect, it } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import { plan, verifyPlan } from ".";

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "2 h", hands: 1, ...rest });

function planned(document: PartialDocument) {
  const build = buildOf(document);
  const made = plan(build);
  expect([made.status, verifyPlan(build, made)]).toEqual(["planned", []]);
  return (id: string) => made.steps[build.at.step.get(id)!]!;
}

describe("a choice that dates refute is given up for another", () => {
  it("a cold joint: fresh on fresh is too early, so the joint is prepared first", () => {
    const step = planned({
      steps: [row("lower"), row("prepare"), row("upper", { notBefore: "2027-03-14" })],
      waits: [{ id: "cool", from: "lower", to: "upper", least: "20 h" }],
      choices: [
        {
          id: "joint",
          name: "Joint",
          either: [
            { name: "fresh on fresh", waits: [{ from: "lower", to: "upper", most: "60 min" }] },
            {
              name: "prepared",
              waits: [
                { from: "lower", to: "prepare", least: "24 h" },
                { from: "prepare", to: "upper" },
              ],
            },
          ],
        },
      ],
    });
    expect(step("prepare").start).toBeGreaterThanOrEqual(step("lower").finish + 24 * 60);
    expect(step("upper").start).toBeGreaterThanOrEqual(step("prepare").finish);
  });

  it("held by another set, or by itself after 28 days: where the pour cannot be so early, the shores stay or others take over", () => {
    const step = planned({
      pieces: [
        { id: "shores", name: "Shores", sort: "shore" },
        { id: "others", name: "Other shores", sort: "shore" },
        { id: "slab", name: "Slab", sort: "concrete", heldBy: [["shores"], ["others"]], holdsItself: "28 d" },
      ],
      steps: [
        row("shore", { puts: ["shores"] }),
        row("pour", { sort: "pour", puts: ["slab"] }),
        row("strip", { takes: ["shores"], deadline: "2027-03-20" }),
        row("second", { puts: ["others"], notBefore: "2027-03-13" }),
      ],
    });
    expect(step("second").finish).toBeLessThanOrEqual(step("strip").start);
  });

  it("and the other way round: where the other set comes too late, the concrete holds itself", () => {
    const step = planned({
      pieces: [
        { id: "shores", name: "Shores", sort: "shore" },
        { id: "others", name: "Other shores", sort: "shore" },
        { id: "slab", name: "Slab", sort: "concrete", heldBy: [["shores"], ["others"]], holdsItself: "28 d" },
      ],
      steps: [
        row("shore", { puts: ["shores"] }),
        row("pour", { sort: "pour", puts: ["slab"] }),
        row("strip", { takes: ["shores"], deadline: "2027-05-01" }),
        row("second", { puts: ["others"], notBefore: "2027-06-05" }),
      ],
    });
    expect(step("strip").start).toBeGreaterThanOrEqual(step("pour").finish + 28 * 1440);
  });

  it("an alternative that is only an upper wait", () => {
    const step = planned({
      steps: [row("a", { work: "1 h" }), row("b", { work: "1 h" })],
      waits: [{ id: "wait", from: "a", to: "b", least: "3 h" }],
      choices: [{ id: "joint", name: "Joint", either: [{ waits: [{ from: "a", to: "b", most: "1 h" }] }, { waits: [] }] }],
    });
    expect(step("b").start).toBeGreaterThanOrEqual(step("a").finish + 180);
  });

  it("a way that is there for two hours only, where another is always open", () => {
    planned({
      places: [
        {
          id: "room",
          name: "Room",
          ways: [
            { id: "plank", name: "plank", passes: ["person"] },
            { id: "stair", name: "stair", passes: ["person"] },
          ],
        },
      ],
      pieces: [{ id: "planks", name: "Planks", goesAfter: "2 h", makes: ["room.plank"] }],
      steps: [row("lay", { work: "3 h", puts: ["planks"] }), row("work", { work: "3 h", reaches: [{ place: "room" }] })],
    });
  });
});
