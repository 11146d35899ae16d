import { describe, expect, it } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import { plan, verifyPlan } from ".";

const people = ["ann", "ben", "cem", "dot", "eve", "fay", "gil", "hal"].map((id) => ({ id, name: id }));
const ladder = [{ id: "ladder", name: "ladder", passes: ["person", "arm"] }];
const pit = { id: "pit", name: "Pit", room: 3, ways: ladder };
const top = { id: "top", name: "Top", ways: ladder };
const row = (id: string, rest: Record<string, unknown>) => ({ id, name: id, work: "3 h", hands: 1, ...rest });
const inPit = [{ place: "pit" }];
const armInPit = [{ place: "pit", need: "arm", depth: "300 mm" }];

function made(document: PartialDocument) {
  const build = buildOf({ people, ...document });
  const found = plan(build);
  expect(verifyPlan(build, found)).toEqual([]);
  /** The most of these steps at work in one minute. */
  const atOnce = (...ids: string[]): number => {
    const steps = ids.map((id) => found.steps[build.at.step.get(id)!]!);
    return Math.max(...steps.map(({ start }) => steps.filter((s) => s.start <= start && start < s.finish).length));
  };
  return { found, build, atOnce };
}

describe("room", () => {
  it("lets three at once into a pit for three, and the other two after them", () => {
    const ids = ["a", "b", "c", "d", "e"];
    const { atOnce } = made({ places: [pit], steps: ids.map((id) => row(id, { reaches: inPit })) });
    expect(atOnce(...ids)).toBe(3);
  });

  it("counts all of a step's people: three and two are never in the pit together", () => {
    const { atOnce } = made({ places: [pit], steps: [row("a", { hands: 3, reaches: inPit }), row("b", { hands: 2, place: "pit" })] });
    expect(atOnce("a", "b")).toBe(1);
  });

  it("says of one step for five that there is no room for it, and keeps everybody else out", () => {
    const { found, atOnce } = made({ places: [pit], steps: [row("a", { hands: 5, reaches: inPit }), row("b", { reaches: inPit })] });
    expect(found.findings.find((f) => f.code === "plan.room-too-small")!.detail).toEqual({ step: "a", place: "pit", people: 5, room: 3 });
    expect(atOnce("a", "b")).toBe(1);
  });

  it("does not count who only reaches in, though the step is drawn there", () => {
    const { atOnce } = made({
      places: [pit, top],
      steps: [row("in", { hands: 3, reaches: inPit }), row("hose", { hands: 3, place: "pit", reaches: [...armInPit, { place: "top" }] })],
    });
    expect(atOnce("in", "hose")).toBe(2);
  });

  it("counts three people of a step that reaches an arm into the pit from the top as three on the top", () => {
    const { atOnce } = made({
      places: [pit, { ...top, room: 3 }],
      steps: [
        row("hose", { hands: 3, place: "pit", reaches: [...armInPit, { place: "top" }] }),
        row("sweep", { reaches: [{ place: "top" }] }),
      ],
    });
    expect(atOnce("hose", "sweep")).toBe(1);
  });

  it("leaves one of a step's people for each other place it works in", () => {
    const both = [{ place: "pit" }, { place: "top" }];
    const first = made({ places: [pit, top], steps: [row("a", { hands: 3, reaches: both }), row("b", { reaches: inPit })] });
    expect(first.atOnce("a", "b")).toBe(2);
    const second = made({ places: [pit, top], steps: [row("a", { hands: 3, reaches: both }), row("b", { hands: 2, reaches: inPit })] });
    expect(second.atOnce("a", "b")).toBe(1);
  });
});

describe("a place taken alone", () => {
  const taken = made({
    places: [{ ...top, below: ["pit"] }, pit],
    steps: [
      row("fill", { reaches: [{ place: "top" }], alone: ["top"] }),
      row("sweep", { reaches: inPit }),
      row("hose", { place: "pit", reaches: armInPit }),
    ],
  });

  it("is kept from those who work below it, not from those who only reach in", () => {
    expect(taken.atOnce("fill", "sweep")).toBe(1);
    expect(taken.atOnce("fill", "hose")).toBe(2);
  });

  it("is looked at once where places lie below each other in a ring", () => {
    const { build, found } = taken;
    const places = build.places.map((p, q) => ({ ...p, below: [build.places[1 - q]!.id] }));
    expect(verifyPlan({ ...build, places }, found)).toEqual([]);
  });
});
