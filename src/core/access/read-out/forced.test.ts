import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import { ClauseSearch } from "../../graph";
import { compile } from "../compile/compile";
import { orderLayer } from "../compile/layers";
import { forcedRows } from "./forced";
import { Reasons } from "./reasons";
import { readRows } from "./rows";
import { Settled } from "./settled";

/** Rows with what they are, how many other answers were looked at, and the precedences asked for the other way round. */
function told(partial: Parameters<typeof smallCase>[0]) {
  const { build } = smallCase(partial);
  const program = compile(build);
  const search = new ClauseSearch(orderLayer(program));
  expect(search.solve()).toBe("yes");
  const settled = new Settled(program, search, search);
  const rows = readRows(program, settled, new Reasons(program));
  const pair = (from: number, to: number) => `${build.steps[from]?.id}<${build.steps[to]?.id}`;
  const asked: string[] = [];
  let others = 0;
  search.addArc = (from, to) => {
    asked.push(pair(to, from));
    return ClauseSearch.prototype.addArc.call(search, from, to);
  };
  search.solve = (assumed = [], budget, lead) => {
    if (assumed.length === 0) others++;
    return ClauseSearch.prototype.solve.call(search, assumed, budget, lead);
  };
  const forced = forcedRows(program, settled, rows);
  const all = [...rows.atom].map((atom, r) => `${pair(program.from.at(atom), program.to.at(atom))}${forced[r] === 1 ? "!" : ""}`);
  return { rows: all, others, asked };
}

const [a, b, c, d] = ["a", "b", "c", "d"].map((id) => step(id));
const steps = [a, b, c, d] as object[];
const waits = (...pairs: (readonly [string, string])[]) => pairs.map(([from, to]) => ({ from, to }));
const links = (...pairs: (readonly [string, string])[]) => pairs.map(([from, to]) => ({ id: `${from}-${to}`, from, to, why: "" }));
const choice = (id: string, ...either: (readonly (readonly [string, string])[])[]) => ({
  id,
  either: either.map((pairs, i) => ({ name: `${i}`, waits: waits(...pairs) })),
});

describe("what holds in every order", () => {
  test("what leaves no choice is forced, and nothing is asked", () => {
    expect(told({ steps, waits: links(["a", "b"], ["b", "c"]) })).toEqual({ rows: ["a<b!", "b<c!"], others: 0, asked: [] });
  });

  test("so is what follows from that, though it was chosen", () => {
    const choices = [choice("x", [["a", "c"]], [["d", "a"]])];
    expect(told({ steps, waits: links(["a", "b"], ["b", "c"]), choices })).toEqual({
      rows: ["a<b!", "b<c!", "a<c!"],
      others: 0,
      asked: [],
    });
  });

  test("what another answer does without is free, and not asked about", () => {
    const choices = [choice("x", [["a", "b"]], [["b", "a"]]), choice("y", [["c", "d"]], [["d", "c"]])];
    expect(told({ steps, choices })).toEqual({ rows: ["a<b", "c<d"], others: 1, asked: [] });
  });

  test("of three ways to go, as many answers are looked at as still show something", () => {
    const three = choice("x", [["a", "b"]], [["b", "a"]], [["c", "a"]]);
    const again = choice("y", [["b", "c"]], [["b", "c"]], [["c", "b"]]);
    expect(told({ steps, choices: [three, again] })).toEqual({ rows: ["a<b", "b<c"], others: 2, asked: [] });
  });

  test("what every answer looked at does is asked the other way round", () => {
    const partial = {
      places: [place("cage")],
      pieces: [{ id: "panel", closes: ["cage.door"] }],
      steps: [
        step("set", { puts: ["panel"] }),
        step("strip", { takes: ["panel"] }),
        step("tie", { reaches: [{ place: "cage" }] }),
        ...steps,
      ],
    };
    const either = [
      [
        ["tie", "a"],
        ["a", "set"],
      ],
      [
        ["tie", "b"],
        ["b", "set"],
      ],
    ] as const;
    expect(told({ ...partial, choices: [choice("x", ...either)] })).toEqual({
      rows: ["tie<set!", "set<strip!", "tie<a", "a<set"],
      others: 2,
      asked: ["tie<set"],
    });
  });

  test("and free where the answer is yes", () => {
    // The other answer that is looked at goes the same way as the first.
    const five = [
      ["c", "d"],
      ["c", "d"],
      ["c", "d"],
      ["c", "d"],
      ["c", "d"],
      ["d", "c"],
    ] as const;
    const choices = [choice("x", ...five.map((pair) => [pair]))];
    expect(told({ steps, choices })).toEqual({ rows: ["c<d"], others: 1, asked: ["c<d"] });
  });
});
