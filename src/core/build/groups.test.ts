import { describe, expect, test } from "vitest";
import { buildOf, readOf } from "../../../test/fixtures/make";

const columns = {
  places: [
    { id: "cage", ways: [{ id: "north" }, { id: "south" }] },
    { id: "yard", ways: [{ id: "gate" }] },
  ],
  pieces: [
    { id: "face", closes: ["cage.north"], heldBy: [["brace"]] },
    { id: "brace" },
    { id: "deck", heldBy: [["face"]], closes: ["cage"] },
  ],
  steps: [
    { id: "tie", work: "3 h", reaches: [{ place: "cage" }] },
    { id: "set", puts: ["face", "brace"], after: ["tie", "tidy"] },
    { id: "tidy", reaches: [{ place: "yard" }] },
    { id: "brush", reaches: [{ place: "cage" }], leansOn: [{ piece: "face#2" }], after: ["set#1"] },
    { id: "lay", puts: ["deck"], after: ["set"] },
  ],
  groups: [
    {
      id: "column",
      count: 2,
      members: ["cage", "face", "brace", "tie", "set"],
      differences: { "2": { tie: { work: "5 h", name: "Tie the tall one" } } },
    },
  ],
};

describe("groups", () => {
  const build = buildOf(columns);
  const step = (id: string) => build.steps[build.at.step.get(id) ?? -1];
  const piece = (id: string) => build.pieces[build.at.piece.get(id) ?? -1];
  const befores = (id: string) => build.waits.filter((wait) => wait.to === id).map((wait) => wait.from);

  test("members become numbered copies in their place in the list, all else stays alone", () => {
    expect(build.steps.map((one) => one.id)).toEqual(["tie#1", "tie#2", "set#1", "set#2", "tidy", "brush", "lay"]);
    expect(step("tie#2")?.group).toEqual({ group: "column", copy: 2, written: "tie" });
    expect(step("tidy")?.group).toBe(null);
    expect(build.groups).toEqual([{ id: "column", name: "column", count: 2 }]);
  });

  test("inside the group a reference means the same copy", () => {
    expect(step("tie#2")?.reaches).toEqual([{ any: [{ place: "cage#2", need: { kind: "person" } }] }]);
    expect(piece("face#1")?.heldBy).toEqual([["brace#1"]]);
    expect(piece("face#2")?.closes).toEqual([{ place: "cage#2", way: "north" }]);
    expect(befores("set#2")).toEqual(["tie#2", "tidy"]);
    expect([piece("face#2")?.up, piece("brace#1")?.up]).toEqual([build.at.step.get("set#2"), build.at.step.get("set#1")]);
  });

  test("from outside it means all copies, or the one that is named", () => {
    expect(step("brush")?.reaches.map((reach) => reach.any[0]?.place)).toEqual(["cage#1", "cage#2"]);
    expect(step("brush")?.leansOn).toEqual([{ piece: "face#2", once: null }]);
    expect(befores("brush")).toEqual(["set#1"]);
    expect(befores("lay")).toEqual(["set#1", "set#2"]);
    expect(piece("deck")?.heldBy).toEqual([["face#1", "face#2"]]);
    expect(piece("deck")?.closes.map((way) => `${way.place}.${way.way}`)).toEqual([
      "cage#1.north",
      "cage#1.south",
      "cage#2.north",
      "cage#2.south",
    ]);
  });

  test("a copy keeps its difference, the others do not have it", () => {
    expect([step("tie#1")?.work.likely_min, step("tie#2")?.work.likely_min]).toEqual([180, 300]);
    expect([step("tie#1")?.name, step("tie#2")?.name]).toEqual(["tie", "Tie the tall one"]);
  });

  test("null takes a key away from one copy", () => {
    const groups = [{ id: "g", count: 2, members: ["a"], differences: { "1": { a: { after: null } } } }];
    const some = buildOf({ steps: [{ id: "a", after: ["b"] }, { id: "b" }], groups });
    expect(some.waits.map((wait) => [wait.from, wait.to])).toEqual([["b", "a#2"]]);
  });

  test("what is wrong in a difference is said at the group", () => {
    const groups = [{ id: "g", count: 2, members: ["a"], differences: { "1": { a: { work: "long" } }, "3": { a: {} }, "2": { b: {} } } }];
    const { findings, build: none } = readOf({ steps: [{ id: "a" }], groups });
    expect(none).toBe(null);
    expect(findings.map((finding) => [finding.code, finding.where.key, finding.detail.sort])).toEqual([
      ["build.unknown-id", "differences", "group-member"],
      ["build.unknown-id", "differences", "copy"],
    ]);
    const good = [{ ...groups[0], differences: { "1": { a: { work: "long" } } } }];
    expect(readOf({ steps: [{ id: "a" }], groups: good }).findings[0]).toMatchObject({
      code: "build.quantity",
      where: { list: "groups", id: "g", key: "differences" },
    });
  });

  test("a wait between copies stays in the copy, one from outside is one for each", () => {
    const groups = [{ id: "g", count: 2, members: ["a", "b", "w"] }];
    const steps = [{ id: "a" }, { id: "b" }, { id: "c" }];
    const some = buildOf({
      steps,
      groups,
      waits: [
        { id: "w", from: "a", to: "b", least: "1 d" },
        { id: "v", from: "a", to: "c" },
        { id: "u", from: "c", to: "b#2" },
      ],
    });
    expect(some.waits.map((wait) => [wait.id, wait.from, wait.to])).toEqual([
      ["w#1", "a#1", "b#1"],
      ["w#2", "a#2", "b#2"],
      ["v#1", "a#1", "c"],
      ["v#2", "a#2", "c"],
      ["u", "c", "b#2"],
    ]);
  });
});

describe("what steps make", () => {
  test("closes at a step makes a piece of the step's name, in each copy", () => {
    const groups = [{ id: "g", count: 2, members: ["cage", "cap"] }];
    const some = buildOf({
      places: [{ id: "cage", ways: [{ id: "top" }] }],
      steps: [
        { id: "cap", name: "Cap it", closes: ["cage.top"] },
        { id: "open", takes: ["cap#2"] },
      ],
      groups,
    });
    expect(some.pieces.map((piece) => [piece.id, piece.name, piece.closes[0]?.place, piece.up, piece.down])).toEqual([
      ["cap#1", "Cap it", "cage#1", 0, -1],
      ["cap#2", "Cap it", "cage#2", 1, 2],
    ]);
    expect(some.steps[1]?.puts).toEqual(["cap#2"]);
  });

  test("a trial in rounds is a chain of steps with its gap between; what it decides waits for the last", () => {
    const some = buildOf({
      pieces: [{ id: "sample" }],
      steps: [
        {
          id: "try",
          puts: ["sample"],
          takes: ["sample"],
          notBefore: "2027-04-03",
          deadline: "2027-05-01",
          trial: { rounds: 3, gap: "2 d", decides: ["mix"], what: "slump" },
        },
        { id: "mix" },
        { id: "look", after: ["try"] },
        { id: "buy", after: ["look"] },
      ],
      waits: [{ id: "w", from: "buy", to: "try", fromEnd: "start", least: "1 d" }],
    });
    expect(
      some.steps.slice(0, 3).map((step) => [step.id, step.trial?.round, step.puts, step.takes, step.notBefore, step.deadline]),
    ).toEqual([
      ["try#1", 1, ["sample"], [], "2027-04-03", null],
      ["try#2", 2, [], [], null, null],
      ["try#3", 3, [], ["sample"], null, "2027-05-01"],
    ]);
    expect(some.waits.map((wait) => [wait.from, wait.to, wait.least?.amount ?? null, wait.plain])).toEqual([
      ["try#1", "try#2", 2880, true],
      ["try#2", "try#3", 2880, true],
      ["try#3", "mix", null, true],
      ["try#3", "look", null, true],
      ["look", "buy", null, true],
      ["buy", "try#1", 1440, false],
    ]);
  });

  test("one round is the step itself", () => {
    const some = buildOf({ steps: [{ id: "try", trial: { decides: ["mix"] } }, { id: "mix" }] });
    expect(some.steps.map((step) => step.id)).toEqual(["try", "mix"]);
    expect(some.waits.map((wait) => [wait.id, wait.from, wait.to])).toEqual([["try>mix", "try", "mix"]]);
  });
});
