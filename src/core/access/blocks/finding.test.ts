import { describe, expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { findingOf } from "./finding";
import { notesOn } from "./notes";

const { build } = smallCase({ steps: [step("a"), step("b"), step("c")] });
const said = {
  ways: { rule: "ways", place: "q", need: "person" },
  closes: { rule: "closes", piece: "p", place: "q", way: "q.w" },
  upDown: { rule: "up-down", piece: "p", step: "c", other: "b" },
  reach: { rule: "reach", step: "b", id: "1" },
  leans: { rule: "leans", step: "b", piece: "p" },
  off: { rule: "off", step: "b", piece: "p", id: "1" },
  held: { rule: "held", piece: "p", pieces: ["h"] },
  holdPoint: { rule: "hold-point", step: "a", place: "q" },
  work: { rule: "work", step: "a" },
  deadline: { rule: "deadline", step: "a" },
  notBefore: { rule: "not-before", step: "a" },
  fixed: { rule: "fixed", step: "a" },
  wait: { rule: "wait", id: "w", step: "c", other: "a" },
  choice: { rule: "choice", id: "ch" },
  refused: { rule: "refused", id: "1" },
  asked: { rule: "asked", step: "a", other: "c" },
} as const satisfies Record<string, Statement>;
const found = (...because: Statement[]) => findingOf(build, because);

describe("a block is called by the first of these that it speaks of", () => {
  test.each<readonly [string, readonly Statement[]]>([
    ["access.refused", [said.wait, said.refused, said.work, said.asked]],
    ["access.refuted", [said.off, said.work, said.refused]],
    ["access.late", [said.off, said.work]],
    ["access.late", [said.wait, said.deadline]],
    ["access.late", [said.wait, said.notBefore]],
    ["access.late", [said.wait, said.fixed]],
    ["access.trapped", [said.held, said.holdPoint, said.off]],
    ["access.trapped", [said.held, said.upDown, said.reach]],
    ["access.trapped", [said.upDown, said.leans]],
    ["access.hold-point", [said.held, said.holdPoint, said.reach]],
    ["access.held", [said.reach, said.held]],
    ["access.blocked", [said.ways, said.closes, said.reach]],
    ["access.blocked", [said.leans, said.wait]],
    ["access.blocked", [{ ...said.upDown, other: "c" }, said.reach]],
    ["access.held", [said.upDown, said.held, said.wait]],
    ["access.ring", [said.wait, said.choice]],
    ["access.ring", [said.upDown, said.wait]],
  ])("%s", (code, because) => {
    expect(found(...because)).toMatchObject({ code, severity: "stop", because });
  });
});

test("its steps stand in document order, each once", () => {
  expect(found(said.wait, said.upDown, said.reach).detail).toEqual({ steps: ["a", "b", "c"] });
  expect(found(said.held, said.ways).detail).toEqual({ steps: [] });
});

describe("it is shown at", () => {
  test.each<readonly [string, object, readonly Statement[]]>([
    ["the step asked about", { list: "steps", id: "a" }, [said.reach, said.asked]],
    ["the first step that is asked for something", { list: "steps", id: "b" }, [said.upDown, said.reach, said.wait]],
    ["the step that puts up, where no other is named", { list: "steps", id: "c" }, [said.held, said.upDown]],
    ["the piece", { list: "pieces", id: "p" }, [said.held, said.ways]],
    ["the place", { list: "places", id: "q" }, [said.ways, said.closes]],
    ["the choice", { list: "choices", id: "ch" }, [said.choice]],
    ["the choices, where nothing has a name", { list: "choices" }, [{ rule: "choice" }]],
  ])("%s", (_, where, because) => {
    expect(found(...because).where).toEqual(where);
  });
});

test("notes: holders that go by themselves, each once, and a piece said to hold itself without an amount; only of what is held", () => {
  const noted = smallCase({
    pieces: [
      { id: "prop" },
      { id: "net", goesAfter: "1 d" },
      { id: "wall", heldBy: [["net", "prop"], ["net"]], holdsItself: true },
      { id: "kerb", heldBy: [["prop"]], holdsItself: "2 d" },
      { id: "free", holdsItself: true },
      { id: "fence", heldBy: [["prop"], ["prop", "net"]] },
    ],
    steps: [step("up", { puts: ["net", "prop", "wall", "kerb", "free"] })],
  });
  expect(notesOn(noted.build)).toEqual([
    {
      code: "access.holds-nothing",
      severity: "look",
      where: { list: "pieces", id: "wall", key: "heldBy" },
      detail: { piece: "wall", holder: "net" },
    },
    { code: "access.holds-itself", severity: "look", where: { list: "pieces", id: "wall", key: "holdsItself" }, detail: { piece: "wall" } },
    {
      code: "access.holds-nothing",
      severity: "look",
      where: { list: "pieces", id: "fence", key: "heldBy" },
      detail: { piece: "fence", holder: "net" },
    },
  ]);
});
