import { describe, expect, test } from "vitest";
import { buildOf, type PartialDocument } from "../../../../test/fixtures/make";
import { place, step } from "../../../../test/fixtures/small";
import { buildClocks } from "../../pour";
import { plan, verifyPlan } from "..";
import { checkHoldPoints } from "./hold-points";

const cage = place("cage", { id: "north", passes: ["person"] }, { id: "top", passes: ["person", "hose"] });
const yard = place("yard");
const look = step("look", { sort: "inspection", reaches: [{ place: "cage", need: "sight" }], holdPoint: { places: ["cage"] } });
const tie = step("tie", { reaches: [{ place: "cage" }] });
/** Both ways of the cage. */
const shut = { id: "shut", closes: ["cage.north", "cage.top"] };
const concrete = { id: "concrete", fills: ["cage"] };

const named = (document: PartialDocument): PartialDocument =>
  Object.fromEntries(
    Object.entries(document).map(([list, members]) => [
      list,
      (members as { id: string }[]).map((member) => ({ name: member.id, ...member })),
    ]),
  );

/** What the second look has against these steps, each from one hour to another: "look tie" or "look concrete", "look" alone where it does not see the place. */
function faults(document: PartialDocument, hours: Readonly<Record<string, readonly [number, number]>>): string[] {
  const build = buildOf(named(document));
  const at = (end: 0 | 1) => build.steps.map(({ id }) => 60 * hours[id]![end]!);
  const found = checkHoldPoints({ build, clocks: buildClocks(build), start: at(0), finish: at(1), arrives: [] });
  return found.map(({ step, other, piece }) => [step, other, piece].filter(Boolean).join(" "));
}

describe("the second look at a hold point", () => {
  test("lets work be done before it, refuses it after and across it", () => {
    const document = { places: [cage], steps: [look, tie] };
    expect(faults(document, { tie: [0, 2], look: [2, 3] })).toEqual([]);
    expect(faults(document, { look: [0, 1], tie: [1, 2] })).toEqual(["look tie"]);
    expect(faults(document, { tie: [0, 2], look: [1, 3] })).toEqual(["look tie"]);
  });

  test("refuses what fills the place before it is done", () => {
    const document = { places: [cage], pieces: [concrete], steps: [look, step("pour", { puts: ["concrete"] })] };
    expect(faults(document, { look: [0, 2], pour: [2, 3] })).toEqual([]);
    expect(faults(document, { look: [0, 2], pour: [1, 3] })).toEqual(["look concrete"]);
  });

  test("refuses an inspection that does not see the place, also where it could go elsewhere", () => {
    const close = step("close", { puts: ["shut"] });
    const late = { close: [0, 1], look: [1, 2] } as const;
    const bare = { ...look, reaches: [] };
    const either = { ...look, reaches: [{ any: [{ place: "cage", need: "sight" }, { place: "yard" }] }] };
    for (const one of [bare, either]) {
      const document = { places: [cage, yard], pieces: [shut], steps: [one, close] };
      expect(faults(document, late)).toEqual(["look"]);
      expect(faults(document, { look: [0, 1], close: [1, 2] })).toEqual([]);
    }
    // Goes there and nowhere else: the look at reaches refuses it.
    expect(faults({ places: [cage], pieces: [shut], steps: [look, close] }, late)).toEqual([]);
  });

  test("lets work that may be elsewhere go on while the place is closed from its start to its finish, and not a moment longer", () => {
    const steps = [
      look,
      step("close", { puts: ["shut"] }),
      step("open", { takes: ["shut"] }),
      { ...tie, reaches: [{ any: [{ place: "cage" }, { place: "yard" }] }] },
    ];
    const document = { places: [cage, yard], pieces: [shut], steps };
    const from = { look: [0, 1], close: [1, 2] } as const;
    expect(faults(document, { ...from, tie: [2, 4], open: [4, 5] })).toEqual([]);
    expect(faults(document, { ...from, tie: [2, 4], open: [3, 5] })).toEqual(["look tie"]);
    expect(faults(document, { ...from, tie: [1, 4], open: [4, 5] })).toEqual(["look tie"]);
    expect(faults(document, { ...from, open: [2, 3], tie: [3, 4] })).toEqual(["look tie"]);
  });

  test("takes a way for closed with what made it gone, and a place for open with one way left", () => {
    const lid = { id: "lid", closes: ["cage.north"] };
    const ladder = { id: "ladder", makes: ["cage.top"], fromStart: true };
    const steps = [look, step("cover", { puts: ["lid"] }), step("ladder-down", { takes: ["ladder"] }), tie];
    const document = { places: [cage], pieces: [lid, ladder], steps };
    const from = { look: [0, 1], cover: [1, 2] } as const;
    expect(faults(document, { ...from, "ladder-down": [1, 2], tie: [2, 3] })).toEqual([]);
    expect(faults(document, { ...from, "ladder-down": [2, 4], tie: [3, 4] })).toEqual(["look tie"]);
    expect(faults(document, { ...from, "ladder-down": [3, 4], tie: [2, 3] })).toEqual(["look tie"]);
  });

  test("relies on nothing that goes by itself, nor on what the work itself puts up or takes down", () => {
    const hours = { look: [0, 1], close: [1, 2], tie: [2, 3] } as const;
    const sheet = { ...shut, goesAfter: "30 d" };
    const steps = [look, step("close", { puts: ["shut"] }), tie];
    expect(faults({ places: [cage], pieces: [shut], steps }, hours)).toEqual([]);
    expect(faults({ places: [cage], pieces: [sheet], steps }, hours)).toEqual(["look tie"]);
    const uncovers = [look, step("close", { puts: ["shut"] }), { ...tie, takes: ["shut"] }];
    expect(faults({ places: [cage], pieces: [shut], steps: uncovers }, hours)).toEqual(["look tie"]);
  });

  test("lets a filler be placed by any means, a closer only be set with nobody in the place and no machine", () => {
    const setting = (piece: object, need: object) =>
      faults(
        {
          places: [place("cage", { id: "top", passes: ["person", "machine"] })],
          pieces: [{ id: "it", ...piece }],
          steps: [look, step("set", { puts: ["it"], reaches: [{ place: "cage", ...need }] })],
        },
        { look: [0, 1], set: [1, 2] },
      );
    for (const need of ["person", "machine"]) {
      expect(setting({ closes: ["cage.top"] }, { need })).toEqual(["look set"]);
      expect(setting({ fills: ["cage"] }, { need })).toEqual([]);
    }
    expect(setting({ closes: ["cage.top"] }, { need: "arm", depth: "300 mm" })).toEqual([]);
    expect(setting({ closes: ["cage.top"] }, { need: "hose" })).toEqual([]);
    expect(setting({}, { need: "hose" })).toEqual(["look set"]);
  });

  test("counts what a piece needs to come off as work there", () => {
    const panel = { id: "panel", off: [{ place: "cage", need: "arm", depth: "1 in" }] };
    const document = {
      places: [cage],
      pieces: [panel],
      steps: [look, step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] })],
    };
    expect(faults(document, { set: [0, 1], strip: [1, 2], look: [2, 3] })).toEqual([]);
    expect(faults(document, { set: [0, 1], look: [1, 2], strip: [2, 3] })).toEqual(["look strip"]);
  });

  test("a sound plan stands; with the work and the inspection in each other's place it is refused", () => {
    const build = buildOf(named({ places: [cage], pieces: [concrete], steps: [tie, look, step("pour", { puts: ["concrete"] })] }));
    const made = plan(build);
    expect(verifyPlan(build, made)).toEqual([]);
    const [work, inspection, pour] = made.steps;
    const wrong = { ...made, steps: [inspection!, work!, pour!] };
    expect(verifyPlan(build, wrong).filter(({ rule }) => rule === "hold-point")).toEqual([
      { rule: "hold-point", step: "look", other: "tie", place: "cage", at: inspection!.start },
    ]);
  });
});
