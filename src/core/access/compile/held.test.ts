import { describe, expect, test } from "vitest";
import { small, step } from "../../../../test/fixtures/small";

const wall = (over: object = {}) => ({ id: "wall", heldBy: [["prop"]], ...over });
const pieces = (over: object = {}, ...more: object[]) => [{ id: "prop" }, wall(over), ...more];
const up = step("up", { puts: ["wall"] });
const prop = step("prop-up", { puts: ["prop"] });
const away = step("away", { takes: ["prop"] });

describe("when it is put up", () => {
  test("its holders stand", () => {
    expect(small({ pieces: pieces(), steps: [up, prop] }).rows).toEqual(["prop-up < up: held(up prop-up wall) must"]);
  });

  test("or the same step puts them up", () => {
    expect(small({ pieces: pieces(), steps: [step("both", { puts: ["wall", "prop"] })] }).rows).toEqual([]);
  });

  test("all of a set, or another set", () => {
    const held = wall({ heldBy: [["prop", "brace"], ["guy"]] });
    const build = { pieces: [{ id: "prop" }, { id: "brace" }, { id: "guy" }, held] };
    const steps = [up, prop, step("brace-up", { puts: ["brace"] }), step("guy-up", { puts: ["guy"] })];
    const { rows, result } = small({ ...build, steps });
    expect(rows).toEqual(["prop-up < up: held(up prop-up wall) chosen", "brace-up < up: held(up brace-up wall) chosen"]);
    expect(result.choices).toHaveLength(1);
    const [choice] = result.choices;
    expect(choice?.options.map((o) => o.arcs)).toEqual([
      [
        [1, 0],
        [2, 0],
      ],
      [[3, 0]],
    ]);
    expect(result.statements[choice?.statement ?? -1]).toMatchObject({
      rule: "held",
      piece: "wall",
      step: "up",
      pieces: ["prop", "brace", "guy"],
    });
    expect(result.statements[choice?.statement ?? -1]?.other).toBeUndefined();
    expect(result.statements[choice?.statement ?? -1]?.detail).toEqual({ sets: ["prop and brace", "guy"], claims: false });
  });

  test("holders that nobody puts up hold nothing", () => {
    const { blocks, codes } = small({ pieces: pieces(), steps: [up] });
    expect(blocks).toEqual([["held(wall)"]]);
    expect(codes).toEqual(["access.held"]);
  });

  test("a set of which one goes by itself holds nothing either", () => {
    const held = wall({ heldBy: [["prop", "net"]] });
    const steps = [up, prop, step("net-up", { puts: ["net"] })];
    expect(small({ pieces: [{ id: "prop" }, { id: "net", goesAfter: "1 d" }, held], steps }).blocks).toEqual([["held(wall)"]]);
  });

  test("what it is held by is told after what stands before it in the document", () => {
    const { blocks } = small({
      places: [{ id: "pit", ways: [{ id: "door", passes: ["person"] }] }],
      pieces: [{ id: "prop" }, { id: "lid", closes: ["pit.door"] }, wall()],
      steps: [
        step("up", { puts: ["wall"], reaches: [{ place: "pit" }] }),
        step("lid-on", { puts: ["lid"] }),
        step("prop-up", { puts: ["prop"], after: ["lid-on"] }),
      ],
    });
    expect(blocks).toEqual([
      ["ways(pit person)", "closes(lid pit.door)", "held(wall)", "reach(up pit person)", "wait(lid-on prop-up lid-on>prop-up)"],
    ]);
  });

  test("what goes by itself holds nothing, and that is said", () => {
    const { blocks, result } = small({ pieces: [{ id: "prop", goesAfter: "1 d" }, wall()], steps: [up, prop] });
    expect(blocks).toEqual([["held(wall)"]]);
    expect(result.findings[1]).toEqual({
      code: "access.holds-nothing",
      severity: "look",
      where: { list: "pieces", id: "wall", key: "heldBy" },
      detail: { piece: "wall", holder: "prop" },
    });
  });
});

describe("when a holder is taken down", () => {
  test("never, when nothing else holds and it stays for good", () => {
    const { blocks } = small({ pieces: pieces(), steps: [up, prop, away] });
    expect(blocks).toEqual([["held(wall)"]]);
  });

  test("after it is gone", () => {
    const { rows } = small({ pieces: pieces(), steps: [up, prop, away, step("wall-down", { takes: ["wall"] })] });
    expect(rows).toContain("wall-down < away: held(away wall-down wall) must");
  });

  test("together with it, lowered as one", () => {
    const { order } = small({ pieces: pieces(), steps: [step("lower", { takes: ["wall", "prop"] }), up, prop] });
    expect(order).toBe("prop-up up lower");
  });

  test("once it holds itself, with its amount", () => {
    const { rows, order } = small({ pieces: pieces({ holdsItself: "3 d" }), steps: [away, up, prop] });
    expect(rows).toContain("up + 3 d < away: held(away up wall) must");
    expect(order).toBe("prop-up up away");
  });

  test("a claim without an amount is worth nothing, and that is said", () => {
    const { blocks, result } = small({ pieces: pieces({ holdsItself: true }), steps: [up, prop, away] });
    expect(blocks).toEqual([["held(wall)"]]);
    expect(result.findings.map((f) => [f.code, f.severity, f.where.key])).toEqual([
      ["access.held", "stop", undefined],
      ["access.holds-itself", "look", "holdsItself"],
    ]);
  });

  test("handed over to another set, also one that the same step puts up", () => {
    const other = { ...wall(), heldBy: [["prop"], ["tie"]] };
    const swap = step("swap", { takes: ["prop"], puts: ["tie"] });
    expect(small({ pieces: [{ id: "prop" }, { id: "tie" }, other], steps: [swap, up, prop] }).order).toBe("prop-up up swap");
    const before = [step("tie-up", { puts: ["tie"] }), up, prop, away];
    expect(small({ pieces: [{ id: "prop" }, { id: "tie" }, other], steps: before }).rows).toContain(
      "tie-up < away: held(away tie-up wall) chosen",
    );
  });

  test("before it is put up at all, when something else then holds it", () => {
    const other = { ...wall(), heldBy: [["prop"], ["tie"]] };
    const steps = [prop, { ...away, after: ["prop-up"] }, step("tie-up", { puts: ["tie"], after: ["away"] }), { ...up, after: ["tie-up"] }];
    const { order, rows } = small({ pieces: [{ id: "prop" }, { id: "tie" }, other], steps });
    expect(order).toBe("prop-up away tie-up up");
    expect(rows).toContain("away < up: held(away up wall) must redundant");
  });

  test("what stands from the start is held too, and holds itself at once when it ever does", () => {
    const old = { id: "wall", fromStart: true, heldBy: [["ground"]] };
    const ground = { id: "ground", fromStart: true };
    const dig = step("dig", { takes: ["ground"] });
    expect(small({ pieces: [ground, old], steps: [dig] }).blocks).toEqual([["held(wall)"]]);
    expect(small({ pieces: [ground, { ...old, holdsItself: "1 d" }], steps: [dig] }).codes).toEqual([]);
  });

  test("the whole stack: nothing goes from under what stands on it", () => {
    const stack = [{ id: "a" }, { id: "b", heldBy: [["a"]] }, { id: "c", heldBy: [["b"]] }];
    const steps = [
      step("a-down", { takes: ["a"] }),
      step("b-down", { takes: ["b"] }),
      step("c-down", { takes: ["c"] }),
      step("c-up", { puts: ["c"] }),
      step("b-up", { puts: ["b"] }),
      step("a-up", { puts: ["a"] }),
    ];
    expect(small({ pieces: stack, steps }).order).toBe("a-up b-up c-up c-down b-down a-down");
  });
});

test("what it is asked whenever a holder is taken down is told in the order of the steps that do so", () => {
  const steps = [
    step("up", { puts: ["wall", "prop", "brace"] }),
    step("brace-off", { takes: ["brace"] }),
    step("prop-off", { takes: ["prop"] }),
  ];
  const held = wall({ heldBy: [["prop", "brace"]], holdsItself: "1 h" });
  const { rows } = small({ pieces: [{ id: "prop" }, { id: "brace" }, held], steps });
  expect(rows.filter((row) => row.includes("1 h <"))).toEqual([
    "up + 1 h < brace-off: held(brace-off up wall) must",
    "up + 1 h < prop-off: held(prop-off up wall) must",
  ]);
});
