import { describe, expect, test } from "vitest";
import { realistic } from "../../../test/bench/realistic";
import { place, smallCase, step } from "../../../test/fixtures/small";
import { drained } from "../base";
import type { Build } from "../build";
import { access, inEveryOrder, may } from "./index";

const pairsOf = (build: Build): string[] =>
  drained(inEveryOrder(build, access(build))).map(([before, after]) => `${build.steps[before]!.id} ${build.steps[after]!.id}`);

/** A cage with sides that faces close one after the other; ties reach in through any. */
const cage = (sides: readonly string[], more: object[] = []) =>
  smallCase({
    places: [place("cage", ...sides.map((id) => ({ id, passes: ["arm"] as const })))],
    pieces: sides.map((id) => ({ id: `face-${id}`, closes: [`cage.${id}`] })),
    steps: [
      step("tie", { reaches: [{ place: "cage", need: "arm" }] }),
      ...sides.map((id, i) => step(`set-${id}`, { puts: [`face-${id}`], ...(i === 0 ? {} : { after: [`set-${sides[i - 1]}`] }) })),
      ...more,
    ] as ReturnType<typeof step>[],
  }).build;

describe("steps that come one before the other whatever is chosen", () => {
  test("bars are tied before the last side is closed, whichever they are tied through", () => {
    expect(pairsOf(cage(["north", "south", "east"]))).toEqual(["tie set-east"]);
  });

  test("what comes after the last side follows and is not said", () => {
    expect(pairsOf(cage(["north", "south"], [step("pour", { after: ["set-south"] })]))).toEqual(["tie set-south"]);
  });

  test("none where a face comes off again and bars could be tied then", () => {
    const again = cage(["north", "south"], [step("strip", { takes: ["face-north", "face-south"], after: ["set-south"] })]);
    expect(access(again).arcs.forced).toContain(0);
    expect(pairsOf(again)).toEqual([]);
  });

  test("none where nothing is chosen, and none where there is no order", () => {
    expect(pairsOf(cage(["north"]))).toEqual([]);
    const { build } = smallCase({ steps: [step("a", { after: ["b"] }), step("b", { after: ["a"] })] });
    expect(pairsOf(build)).toEqual([]);
  });
});

test.each([1, 2, 3, 4, 5, 6])("of a drawn build, no order has one of them the other way round (%i)", (start) => {
  const build = realistic(60, start);
  const pairs = drained(inEveryOrder(build, access(build)));
  expect(pairs.length).toBeGreaterThan(0);
  for (const [before, after] of pairs) expect(may(build, after, before).verdict).toBe("no");
});
