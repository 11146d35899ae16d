import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Build, readDocument } from "../../src/core/build";
import { brute, validOrders } from "./brute";
import { judge } from "./judge";
import { anyDocument, type Loose, large, randomDocument } from "./random-builds";
import { sat } from "./sat";
import { inTime } from "./times";

const read = (document: Loose): Build => {
  const { build, findings } = readDocument(document);
  if (build === null) throw new Error(JSON.stringify(findings));
  return build;
};

const everyOrder = (n: number): number[][] =>
  n === 0
    ? [[]]
    : everyOrder(n - 1).flatMap((order) => Array.from({ length: n }, (_, i) => [...order.slice(0, i), n - 1, ...order.slice(i)]));

/** Which step may come before which, and whether there is an order at all, from a list of orders. */
function answersOf(n: number, orders: Iterable<readonly number[]>) {
  const may = Array.from({ length: n }, () => new Array<boolean>(n).fill(false));
  let possible = false;
  for (const order of orders) {
    possible = true;
    order.forEach((a, i) => {
      for (const b of order.slice(i + 1)) may[a]![b] = true;
    });
  }
  return { possible, may };
}

describe("the judges agree with each other", () => {
  test("walking over sets of steps finds what judging every order one by one finds", () => {
    fc.assert(
      fc.property(anyDocument(), (document) => {
        const build = read(document);
        const n = build.steps.length;
        fc.pre(n <= 6);
        const judged = everyOrder(n).filter((order) => judge(build, order).valid);
        expect(answersOf(n, judged)).toEqual(brute(build));
        expect([...validOrders(build)].map(String).sort()).toEqual(judged.map(String).sort());
      }),
      { numRuns: 150, seed: 1 },
    );
  });

  test("so does a general-purpose solver (logic-solver, MiniSat) given the same build as formulas", () => {
    for (let start = 0; start < 150; start++) {
      const build = read(randomDocument(start));
      const { possible, may } = brute(build);
      const other = sat(build);
      expect(other.possible, `build ${start}`).toBe(possible);
      for (const a of build.steps.keys())
        for (const b of build.steps.keys()) if (a !== b) expect(other.may(a, b), `${start}: ${a} before ${b}`).toBe(may[a]![b]);
    }
  });

  test("what can be met in time is met by some order", () => {
    let met = 0;
    for (let start = 0; start < 300; start++) {
      const build = read(randomDocument(start));
      const times = inTime(build);
      if (!times?.possible) continue;
      met++;
      expect(brute(build).possible, `build ${start}`).toBe(true);
      const order = [...build.steps.keys()].sort((a, b) => times.start[a]! - times.start[b]!);
      expect(judge(build, order).broken, `build ${start}`).toEqual([]);
    }
    expect(met).toBeGreaterThan(50);
  });

  test("large builds are of the size asked for and read without a stop", () => {
    for (let start = 0; start < 20; start++) {
      const build = read(randomDocument(start, large));
      expect(build.steps.length).toBeGreaterThanOrEqual(large.steps[0]);
      expect(build.steps.length).toBeLessThanOrEqual(large.steps[1]);
    }
  });
});
