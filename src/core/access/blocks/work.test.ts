import { describe, expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import { ClauseSearch } from "../../graph";
import { compile } from "../compile/compile";
import { orderLayer } from "../compile/layers";
import { findBlocks, findingsOf } from "./blocks";

/** Two rings of links that have nothing to do with each other. */
const { build } = smallCase({
  steps: ["a", "b", "c", "d"].map((id) => step(id)),
  waits: [
    ["a", "b"],
    ["b", "a"],
    ["c", "d"],
    ["d", "c"],
  ].map(([from, to]) => ({ id: `${from}-${to}`, from, to, least: "1 h", why: "" })),
});

function told(left: number) {
  const program = compile(build);
  const problem = orderLayer(program);
  const search = new ClauseSearch(problem);
  expect(search.solve()).toBe("no");
  const work = { left };
  const found = findBlocks(program, problem, search, 20, work);
  return { ...found, findings: findingsOf(program, found), work };
}

describe("work allowed on blocks", () => {
  test("with enough of it all are told, and nothing is said of work", () => {
    const { blocks, all, findings, work } = told(100_000);
    expect([blocks.length, all, blocks.every(({ minimal }) => minimal)]).toEqual([2, true, true]);
    expect(findings.some(({ detail }) => "spent" in detail)).toBe(false);
    expect(work.left).toBeLessThan(100_000);
    expect(work.left).toBeGreaterThan(0);
  });

  test("without any the refutation is told as it is, and that neither it nor the rest was looked into", () => {
    const { blocks, all, findings } = told(0);
    expect([blocks.length, all, blocks[0]?.minimal]).toEqual([1, false, false]);
    expect(findings[0]?.because?.length).toBeGreaterThanOrEqual(2);
    expect(findings[0]?.detail.spent).toEqual(["set", "rest"]);
  });

  test("with some of it the first is minimal, of the last it is said that it may be more than is needed, and that there may be others", () => {
    const some = Array.from({ length: 500 }, (_, i) => i).find((left) => {
      const { blocks } = told(left);
      return blocks.length === 2 && blocks[0]?.minimal === true && blocks[1]?.minimal === false;
    });
    expect(some).toBeGreaterThan(0);
    const { findings } = told(some as number);
    expect(findings.map(({ detail }) => detail.spent)).toEqual([undefined, ["set", "rest"]]);
  });
});
