import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const steps = [step("a"), step("b"), step("c")];
const wait = (over: object) => ({ id: "w", from: "a", to: "b", why: "so", ...over });

describe("waits", () => {
  test.each([
    [{ least: "2 h" }, "a + 2 h < b: wait(a b w) must"],
    [{ least: "2 h", most: "5 h" }, "a + 2 h within 5 h < b: wait(a b w) must"],
    [{ most: "5 h" }, "a within 5 h < b: wait(a b w) must time"],
    [{}, "a < b: wait(a b w) must"],
    [{ fromEnd: "start", least: "2 h" }, "a + 2 h < b: wait(a b w) must time"],
    [{ toEnd: "finish" }, "a + 0 min < b: wait(a b w) must time"],
    [{ fromEnd: "start", toEnd: "finish", most: "1 h" }, "a within 1 h < b: wait(a b w) must time"],
  ])("%j", (over, row) => {
    const { rows, result } = small({ steps, waits: [wait(over)] });
    expect(rows).toEqual([row]);
    expect(result.statements[0]).toEqual({ rule: "wait", id: "w", step: "a", other: "b", detail: { plain: false, ...over } });
    const { fromEnd = "finish", toEnd = "start" } = over as { fromEnd?: string; toEnd?: string };
    expect([result.arcs.fromEnd[0], result.arcs.toEnd[0]]).toEqual([fromEnd === "finish" ? 1 : 0, toEnd === "finish" ? 1 : 0]);
  });

  test("only those that order take part in the order", () => {
    const back = { id: "v", from: "b", to: "a", fromEnd: "start", least: "1 h", why: "" };
    expect(small({ steps, waits: [wait({}), back] }).codes).toEqual([]);
    const { blocks, codes, result } = small({ steps, waits: [wait({}), { ...back, fromEnd: "finish" }] });
    expect(blocks).toEqual([["wait(a b w)", "wait(b a v)"]]);
    expect(codes).toEqual(["access.ring"]);
    expect(result.findings[0]?.because?.map((s) => s.detail)).toEqual([{ plain: false }, { plain: false, least: "1 h" }]);
  });

  test("a row with an amount is never redundant, a bare one beside it is", () => {
    const three = [step("a"), step("b", { after: ["a"] }), step("c", { after: ["a", "b"] })];
    const { rows } = small({
      steps: three,
      waits: [
        { id: "w", from: "a", to: "c", least: "1 h", why: "" },
        { id: "v", from: "a", to: "b", least: "1 h", why: "" },
      ],
    });
    expect(rows).toEqual([
      "a < b: wait(a b a>b) must redundant",
      "a < c: wait(a c a>c) must redundant",
      "b < c: wait(b c b>c) must",
      "a + 1 h < c: wait(a c w) must",
      "a + 1 h < b: wait(a b v) must",
    ]);
  });
});

describe("choices", () => {
  const either = (first: object[], second: object[]) => [
    {
      id: "joint",
      either: [
        { name: "one", waits: first },
        { name: "two", waits: second },
      ],
    },
  ];

  test("the first alternative is the default, the rows say which was taken and with what amounts", () => {
    const { rows, result } = small({
      steps,
      choices: either(
        [
          { from: "b", to: "a" },
          { from: "b", to: "c", least: "1 h" },
        ],
        [{ from: "c", to: "a" }],
      ),
    });
    expect(rows).toEqual(["b < a: choice(b a joint) chosen", "b + 1 h < c: choice(b c joint) chosen"]);
    expect(result.statements[1]).toEqual({
      rule: "choice",
      id: "joint",
      step: "b",
      other: "c",
      detail: { either: ["one", "two"], by: "one", least: "1 h" },
    });
    expect(result.choices.map(({ chosen, options }) => [chosen, options.map((o) => o.arcs)])).toEqual([
      [
        0,
        [
          [
            [1, 0],
            [1, 2],
          ],
          [[2, 0]],
        ],
      ],
    ]);
  });

  test("the second when the first cannot be, and then it is forced", () => {
    const { rows, result } = small({
      steps,
      waits: [wait({})],
      choices: either([{ from: "b", to: "a" }], [{ from: "c", to: "a", least: "3 h" }]),
    });
    expect(rows).toEqual(["a < b: wait(a b w) must", "c + 3 h < a: choice(c a joint) must"]);
    expect(result.statements[1]?.detail).toMatchObject({ by: "two" });
    expect(result.choices).toEqual([]);
  });

  test("a precedence that both ask for is forced only without amounts", () => {
    const { rows } = small({
      steps,
      choices: [
        ...either(
          [{ from: "a", to: "b" }],
          [
            { from: "a", to: "b" },
            { from: "c", to: "b" },
          ],
        ),
        {
          id: "other",
          either: [
            { name: "x", waits: [{ from: "a", to: "c", least: "1 h" }] },
            { name: "y", waits: [{ from: "a", to: "c" }] },
          ],
        },
      ],
    });
    expect(rows).toEqual(["a < b: choice(a b joint) must", "a + 1 h < c: choice(a c other) chosen"]);
  });

  test("what every alternative leads to is no open question of its own", () => {
    const { rows, result } = small({
      places: [place("cage")],
      pieces: [{ id: "panel", closes: ["cage.door"] }],
      steps: [
        step("set", { puts: ["panel"] }),
        step("strip", { takes: ["panel"] }),
        step("tie", { reaches: [{ place: "cage" }] }),
        step("x"),
        step("y"),
      ],
      choices: either(
        [
          { from: "tie", to: "x" },
          { from: "x", to: "set" },
        ],
        [
          { from: "tie", to: "y" },
          { from: "y", to: "set" },
        ],
      ),
    });
    expect(rows[0]).toBe("tie < set: closes(tie set panel cage.door person) must redundant");
    expect(result.choices.map(({ statement }) => result.statements[statement]?.rule)).toEqual(["choice"]);
  });

  test("neither can be", () => {
    const { blocks } = small({
      steps,
      waits: [wait({})],
      choices: either(
        [{ from: "b", to: "a" }],
        [
          { from: "b", to: "a" },
          { from: "c", to: "a" },
        ],
      ),
    });
    expect(blocks).toEqual([["wait(a b w)", "choice(joint)"]]);
  });
});
