import { describe, expect, test } from "vitest";
import { judge } from "./judge";
import { type Loose, randomDocument } from "./random-builds";
import { read } from "./shard";

/** Which orders of the steps, written as their ids, the judge lets pass. */
function passing(parts: Loose, ...orders: readonly string[]): boolean[] {
  const build = read({ ...randomDocument(0), places: [], pieces: [], waits: [], choices: [], ...parts });
  return orders.map(
    (order) =>
      judge(
        build,
        order.split(" ").map((id) => build.at.step.get(id)!),
      ).valid,
  );
}

const cage = {
  id: "cage",
  ways: [
    { id: "north", passes: ["arm"] },
    { id: "top", passes: ["sight"] },
  ],
};
const step = (id: string, more: Loose = {}): Loose => ({ id, work: "1 h", ...more });
const arm = (place: string) => [{ place, need: "arm", depth: "300 mm" }];

describe("judging orders worked out by hand", () => {
  test("bars are tied before the face goes on, or after it is off again", () => {
    const parts = {
      places: [cage],
      pieces: [{ id: "face", closes: ["cage.north"] }],
      steps: [step("tie", { reaches: arm("cage") }), step("close", { puts: ["face"] }), step("strip", { takes: ["face"] })],
    };
    expect(passing(parts, "tie close strip", "close tie strip", "close strip tie", "strip close tie")).toEqual([true, false, true, false]);
  });

  test("an arm does not get deeper than its way, a person at the same way does", () => {
    const reach = (passes: string[]) => ({
      places: [{ id: "foot", ways: [{ id: "top", passes, depth: "600 mm" }] }],
      steps: [step("clean", { reaches: [{ place: "foot", need: "arm", depth: "2400 mm" }] })],
    });
    expect([passing(reach(["arm"]), "clean"), passing(reach(["person"]), "clean")]).toEqual([[false], [true]]);
  });

  test("a deck cannot be unscrewed while standing on it", () => {
    const parts = {
      places: [{ id: "deck-top", ways: [{ id: "deck", passes: ["person"] }] }],
      pieces: [{ id: "deck", makes: ["deck-top.deck"] }],
      steps: [
        step("lay", { puts: ["deck"], reaches: [{ place: "deck-top" }] }),
        step("unscrew", { takes: ["deck"], reaches: [{ place: "deck-top" }] }),
      ],
    };
    expect(passing(parts, "lay unscrew")).toEqual([false]);
    const fromBelow = { ...parts, steps: [parts.steps[0]!, step("unscrew", { takes: ["deck"] })] };
    expect(passing(fromBelow, "lay unscrew")).toEqual([true]);
  });

  test("guys hold a cage until the form does, and only in that order", () => {
    const parts = {
      pieces: [{ id: "guys" }, { id: "form" }, { id: "bars", heldBy: [["guys"], ["form"]] }],
      steps: [step("guy", { puts: ["guys", "bars"] }), step("form", { puts: ["form"] }), step("let-go", { takes: ["guys"] })],
    };
    expect(passing(parts, "guy form let-go", "guy let-go form")).toEqual([true, false]);
  });

  test("a slab that holds itself once it has an amount lets the shores go; a deck that only claims to does not", () => {
    const shored = (holdsItself: unknown) => ({
      pieces: [{ id: "shores" }, { id: "slab", heldBy: [["shores"]], holdsItself }],
      steps: [step("shore", { puts: ["shores"] }), step("cast", { puts: ["slab"] }), step("strike", { takes: ["shores"] })],
    });
    expect([passing(shored("3 d"), "shore cast strike"), passing(shored(true), "shore cast strike")]).toEqual([[true], [false]]);
  });

  test("a strength is that of the pour it names: fill held by props until the vault is hard, not until the fill is old", () => {
    const parts = {
      pieces: [{ id: "props" }, { id: "fill", heldBy: [["props"]], holdsItself: "75 % of cast" }],
      steps: [
        step("prop", { puts: ["props"] }),
        step("fill", { puts: ["fill"] }),
        step("cast", { sort: "pour", pour: { strength: "28 MPa" } }),
        step("strike", { takes: ["props"] }),
      ],
    };
    expect(passing(parts, "prop fill cast strike", "prop fill strike cast", "prop cast fill strike")).toEqual([true, false, true]);
  });

  test("a place behind two closings, and a clean-out that does not reopen filled concrete", () => {
    const parts = {
      places: [
        { id: "shaft", ways: [{ id: "hatch", passes: ["person"] }] },
        { ...cage, ways: [{ id: "hole", passes: ["arm"], through: "shaft" }] },
      ],
      pieces: [
        { id: "lid", closes: ["shaft.hatch"] },
        { id: "concrete", fills: ["cage"] },
      ],
      steps: [step("clean", { reaches: arm("cage") }), step("cover", { puts: ["lid"] }), step("cast", { puts: ["concrete"] })],
    };
    expect(passing(parts, "clean cover cast", "cover clean cast", "cast clean cover", "clean cast cover")).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });

  test("ways that lead through each other do not open each other", () => {
    const ring = (a: string, b: string) => ({ id: a, ways: [{ id: "door", passes: ["person"], through: b }] });
    const parts = { places: [ring("inner", "outer"), ring("outer", "inner")], steps: [step("enter", { reaches: [{ place: "inner" }] })] };
    expect(passing(parts, "enter")).toEqual([false]);
  });

  test("nobody works at an inspected place between the inspection and its closing", () => {
    const parts = {
      places: [cage],
      pieces: [{ id: "concrete", fills: ["cage"] }],
      steps: [
        step("tie", { reaches: arm("cage") }),
        step("inspect", { holdPoint: { places: ["cage"] } }),
        step("cast", { puts: ["concrete"] }),
      ],
    };
    expect(passing(parts, "tie inspect cast", "inspect tie cast", "tie cast inspect")).toEqual([true, false, false]);
  });

  test("an inspection sees the place before it is closed, and what is opened again after it is not worked at", () => {
    const parts = {
      places: [{ id: "cage", ways: [{ id: "north", passes: ["person"] }] }],
      pieces: [{ id: "face", closes: ["cage.north"] }],
      steps: [
        step("close", { puts: ["face"] }),
        step("open", { takes: ["face"] }),
        step("cut", { reaches: [{ place: "cage" }] }),
        step("inspect", { holdPoint: { places: ["cage"] } }),
      ],
    };
    const orders = ["cut inspect close open", "cut close inspect open", "inspect close open cut", "close open cut inspect"];
    expect(passing(parts, ...orders)).toEqual([true, false, false, true]);
  });

  test("a panel set by an arm closes the place after the inspection; somebody in it works there", () => {
    const parts = (need: Loose) => ({
      places: [
        {
          id: "cage",
          ways: [
            { id: "north", passes: ["person"] },
            { id: "top", passes: ["sight"] },
          ],
        },
      ],
      pieces: [{ id: "face", closes: ["cage.north"] }],
      steps: [step("set", { puts: ["face"], reaches: [{ place: "cage", ...need }] }), step("inspect", { holdPoint: { places: ["cage"] } })],
    });
    const orders = ["inspect set", "set inspect"];
    expect(passing(parts({ need: "arm", depth: "300 mm" }), ...orders)).toEqual([true, true]);
    expect(passing(parts({ need: "person" }), ...orders)).toEqual([false, true]);
  });
});
