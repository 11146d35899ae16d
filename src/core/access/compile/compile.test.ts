import { expect, test } from "vitest";
import { say } from "../../../../test/fixtures/say";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import { ask, compile } from "./compile";

/** Everything that can be said of a small build but times. */
const { build } = smallCase({
  places: [place("yard"), place("cage", { id: "door", passes: ["person"], through: "yard" })],
  pieces: [
    { id: "prop" },
    { id: "panel", closes: ["cage.door"], heldBy: [["prop"]] },
    { id: "deck", makes: ["yard.door"], fills: ["cage"], heldBy: [["panel"], ["panel", "prop"]] },
    { id: "slab", heldBy: [["deck"]] },
  ],
  steps: [
    step("set", { puts: ["prop", "panel", "deck"], leansOn: [{ piece: "prop" }] }),
    step("look", {
      sort: "inspection",
      reaches: [{ place: "cage" }],
      leansOn: [{ piece: "prop" }],
      holdPoint: { places: ["cage", "yard"] },
    }),
    step("tie", { reaches: [{ place: "cage" }], done: { start: "2027-03-06T08:00", finish: "2027-03-06T09:00" } }),
    step("pour", { puts: ["slab"] }),
    step("strip", { takes: ["prop", "panel", "deck"] }),
  ],
  waits: [
    { id: "v", from: "pour", to: "strip", why: "" },
    { id: "w", from: "set", to: "pour", why: "" },
  ],
  choices: [{ id: "c", either: [{ name: "x", waits: [{ from: "look", to: "pour" }] }] }],
});

test("statements stand in the document's order: places, pieces, steps, waits, choices, then what dates have refuted, then what was asked", () => {
  const program = compile(build, [[[0, 3]], [[1, 3]]]);
  ask(program, 3, 1);
  const all = Array.from({ length: program.facts.count }, (_, fact) => fact).reverse();
  expect(program.facts.inOrder(all).map((fact) => say(program.facts.statement(fact)))).toEqual([
    "ways(yard person)",
    "ways(yard sight)",
    "ways(cage person)",
    "through(cage.door)",
    "up-down(set strip prop)",
    "closes(panel cage.door)",
    "up-down(set strip panel)",
    "held(panel)",
    "fills(deck cage)",
    "makes(deck yard.door)",
    "up-down(set strip deck)",
    "held(deck)",
    "held(slab)",
    "leans(set prop)",
    "reach(look cage person)",
    "leans(look prop)",
    "hold-point(look cage)",
    "hold-point(look yard)",
    "reach(tie cage person)",
    "done(tie strip)",
    "done(tie set)",
    "wait(pour strip v)",
    "wait(set pour w)",
    "choice(c)",
    "refused()",
    "refused()",
    "asked(pour look)",
  ]);
});

test("of a piece with several sets of holders each is named once, the sets as they are written", () => {
  const { facts } = compile(build);
  const held = facts.statements.filter(({ rule }) => rule === "held");
  expect(held.map(({ piece, pieces, detail }) => [piece, pieces, detail?.sets])).toEqual([
    ["panel", ["prop"], ["prop"]],
    ["deck", ["panel", "prop"], ["panel", "panel and prop"]],
    ["slab", ["deck"], ["deck"]],
  ]);
});
