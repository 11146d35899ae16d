import { expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const panel = (id: string, at: string) => ({ id, closes: [`${at}.door`] });
const told = (partial: Parameters<typeof small>[0]) => {
  const { result } = small(partial);
  return result.choices.map(({ statement, options, chosen }) => ({
    said: result.statements[statement],
    options: options.map(({ arcs }) => arcs),
    chosen,
  }));
};

test("a choice is told by the reason of its row, with both steps", () => {
  const steps = [step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] }), step("tie", { reaches: [{ place: "cage" }] })];
  const [only, ...more] = told({ places: [place("cage")], pieces: [panel("panel", "cage")], steps });
  expect(more).toEqual([]);
  expect(only?.said).toMatchObject({ rule: "closes", step: "tie", other: "set", piece: "panel" });
  expect([only?.options, only?.chosen]).toEqual([[[[2, 0]], [[1, 2]]], 0]);
});

test("one that does not matter to the order found is not told", () => {
  const steps = [
    step("set", { puts: ["panel"] }),
    step("strip", { takes: ["panel"] }),
    step("look", { reaches: [{ any: [{ place: "yard" }, { place: "cage" }] }] }),
  ];
  const [only, ...more] = told({ places: [place("cage"), place("yard")], pieces: [panel("panel", "cage")], steps });
  expect(more).toEqual([]);
  expect(only).toEqual({
    said: expect.objectContaining({ rule: "reach", step: "look" }),
    options: [[], [[2, 0]]],
    chosen: 0,
  });
});

test("under an option the way that is still open is told, not the usual one that is refuted; what is refuted is no option", () => {
  const steps = [
    step("set", { puts: ["panel"] }),
    step("strip", { takes: ["panel"] }),
    step("look", { reaches: [{ any: [{ place: "yard" }, { place: "pit" }, { place: "cage" }] }], after: ["set"] }),
  ];
  const pit = place("pit", { id: "slit", passes: ["sight"] });
  const all = told({ places: [place("cage"), place("yard"), pit], pieces: [panel("panel", "cage")], steps });
  expect(all.map(({ options }) => options)).toEqual([[[], [[1, 2]]]]);
});

test("an alternative tells all its precedences, those too that are asked for elsewhere", () => {
  const wait = (from: string, to: string) => ({ from, to });
  const either = [
    { name: "x", waits: [wait("a", "b"), wait("c", "b")] },
    { name: "y", waits: [wait("c", "a")] },
  ];
  const steps = [step("a"), step("b"), step("c")];
  const [only] = told({ steps, waits: [{ id: "w", ...wait("a", "b"), why: "" }], choices: [{ id: "how", either }] });
  const arcs = [
    [
      [0, 1],
      [2, 1],
    ],
    [[2, 0]],
  ];
  expect([only?.options, only?.chosen]).toEqual([arcs, 0]);
});

test("ways that lead through each other in a ring are gone round once, and steps alone are told", () => {
  const way = (id: string, through?: string) => ({ id, passes: ["person"], ...(through === undefined ? {} : { through }) });
  const steps = [step("set", { puts: ["panel"] }), step("work", { reaches: [{ any: [{ place: "near" }, { place: "yard" }] }] })];
  const all = told({
    places: [place("near", way("door", "far")), place("far", way("gap", "near"), way("door")), place("yard")],
    pieces: [panel("panel", "far")],
    steps,
  });
  expect(
    all
      .find(({ said }) => said?.rule === "reach")
      ?.options.flat(2)
      .every((s) => s < steps.length),
  ).toBe(true);
  expect(all.every(({ chosen }) => chosen >= 0)).toBe(true);
});
