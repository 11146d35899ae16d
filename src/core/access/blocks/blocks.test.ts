import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";
import { ruleOf } from "../index";
import { mostBlocks } from "./blocks";

describe("blocks", () => {
  test("those that have nothing to do with each other are each told, in the order found", () => {
    const { blocks, codes } = small({
      places: [place("pit", { id: "slit", passes: ["sight"] }), place("shaft", { id: "slit", passes: ["sight"] })],
      steps: [
        step("dig", { reaches: [{ place: "pit" }] }),
        step("sink", { reaches: [{ place: "shaft" }] }),
        step("a", { after: ["b"] }),
        step("b", { after: ["a"] }),
      ],
    });
    expect([...blocks].sort()).toEqual([
      ["wait(b a b>a)", "wait(a b a>b)"],
      ["ways(pit person)", "reach(dig pit person)"],
      ["ways(shaft person)", "reach(sink shaft person)"],
    ]);
    expect([...codes].sort()).toEqual(["access.blocked", "access.blocked", "access.ring"]);
  });

  test("one cause that blocks several steps is told for each of them", () => {
    const panel = { id: "panel", closes: ["cage.door"] };
    const seal = (id: string) => step(id, { reaches: [{ place: "cage" }], after: ["set"] });
    const { blocks } = small({ places: [place("cage")], pieces: [panel], steps: [step("set", { puts: ["panel"] }), seal("x"), seal("y")] });
    expect(blocks.map((b) => b.at(-2)).sort()).toEqual(["reach(x cage person)", "reach(y cage person)"]);
  });

  test("no more than a handful are told", () => {
    const many = Array.from({ length: 30 }, (_, i) => step(`s${i}`, { reaches: [{ place: "pit" }] }));
    const { blocks, result } = small({ places: [place("pit", { id: "slit", passes: ["sight"] })], steps: many });
    expect(blocks).toHaveLength(mostBlocks);
    expect(result.findings.some(({ detail }) => "spent" in detail)).toBe(false);
    expect({ ...result, findings: [], arcs: null }).toEqual({
      possible: false,
      findings: [],
      statements: [],
      amounts: [],
      arcs: null,
      choices: [],
      order: new Int32Array(),
    });
  });

  test("two that share what a piece does are both told: only what was asked or written is set aside", () => {
    const steps = [step("up", { puts: ["p"], after: ["down", "x"] }), step("down", { takes: ["p"] }), step("x", { after: ["down"] })];
    expect([...small({ pieces: [{ id: "p" }], steps }).blocks].sort()).toEqual([
      ["up-down(up down p)", "wait(down up down>up)"],
      ["up-down(up down p)", "wait(x up x>up)", "wait(down x down>x)"],
    ]);
  });

  test("of several sets the one left by trying facts, then reaches, then links, from the end of the document", () => {
    const steps = [step("a", { after: ["c"] }), step("b", { after: ["a"] }), step("c", { after: ["b", "a"] })];
    expect(small({ steps }).blocks).toEqual([["wait(c a c>a)", "wait(a b a>b)", "wait(b c b>c)"]]);
    const twoWays = [step("a", { after: ["b"] }), step("b", { after: ["a", "c"] }), step("c", { after: ["b"] })];
    expect(small({ steps: twoWays }).blocks[0]).toEqual(["wait(b a b>a)", "wait(a b a>b)"]);
  });

  test("a step that puts up and takes down the same piece is a ring of one statement", () => {
    const { blocks, codes, result } = small({ pieces: [{ id: "p" }], steps: [step("both", { puts: ["p"], takes: ["p"] })] });
    expect([blocks, codes]).toEqual([[["up-down(both both p)"]], ["access.ring"]]);
    expect(result.findings[0]?.where).toEqual({ list: "steps", id: "both" });
    expect(result.findings[0]?.detail).toEqual({ steps: ["both"] });
  });

  test("where: a piece that nothing holds is told at the piece", () => {
    const { result } = small({ pieces: [{ id: "p", heldBy: [["q"]] }, { id: "q" }], steps: [step("up", { puts: ["p"] })] });
    expect(result.findings[0]?.where).toEqual({ list: "pieces", id: "p" });
    expect(result.findings[0]?.because?.every((s) => ruleOf(s)?.kind === "reach")).toBe(true);
  });

  test("leaning on what is taken down before is a block", () => {
    const lean = step("lean", { leansOn: [{ piece: "p", once: "2 d" }], after: ["down"] });
    const { blocks, result } = small({ pieces: [{ id: "p" }], steps: [step("up", { puts: ["p"] }), step("down", { takes: ["p"] }), lean] });
    expect(blocks).toEqual([["leans(lean p)", "wait(down lean down>lean)"]]);
    expect(result.findings[0]).toMatchObject({ code: "access.blocked", where: { list: "steps", id: "lean" } });
    expect(result.findings[0]?.because?.[0]?.detail).toEqual({ once: "2 d" });
  });

  test("leaning on what one takes down oneself traps it", () => {
    const down = step("down", { takes: ["p"], leansOn: [{ piece: "p" }] });
    expect(small({ pieces: [{ id: "p" }], steps: [step("up", { puts: ["p"] }), down] }).blocks).toEqual([["leans(down p)"]]);
  });
});
