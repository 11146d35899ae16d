import { describe, expect, test } from "vitest";
import { builtFrom, type Put } from "../../../test/fixtures/kits/kit-check";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { apply } from "../edit";
import { answerAgain, kits, putIn, remarksOf, takeOut } from ".";

const codesOf = (document: unknown): readonly string[] =>
  remarksOf(document).map(({ code, where, detail }) => [code, where.id ?? "", detail.other ?? ""].join(" ").trim());
const withWall: readonly Put[] = [
  ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft" }],
  ["wall", "Wall"],
  ["stair", "Steps", { sort: "earth", to: ["wall/top"] }],
];

describe("what leans on something", () => {
  test("is remarked once that is taken out, and no more once it joins something else or goes too", () => {
    const document = builtFrom("us", withWall);
    expect(codesOf(document)).toEqual([]);
    const without = apply(document, takeOut(document, "wall").edits).document;
    expect(codesOf(without)).toEqual(["kit.hangs steps"]);
    expect(codesOf(apply(without, answerAgain(without, "steps", { to: [] }).edits).document)).toEqual([]);
    expect(codesOf(apply(without, takeOut(without, "steps").edits).document)).toEqual([]);
  });

  test("is remarked where there are fewer of what it joined", () => {
    const document = builtFrom("us", [
      ["footing", "Pads"],
      ["column", "Columns"],
    ]);
    const one = apply(document, answerAgain(document, "pads", { number: 1 }).edits).document;
    expect(codesOf(one)).toContain("kit.hangs columns");
  });
});

describe("parts laid over each other", () => {
  test("are told once, of the later one; beside each other, on each other and far below each other they are not", () => {
    const pads = builtFrom("us", [["footing", "Pads"]]);
    const more = (kit: string, answers: Readonly<Record<string, string | number>>) =>
      codesOf(apply(pads, putIn(pads, kit, "It", answers).edits).document);
    expect(more("pier", {})).toEqual(["kit.overlap it Pads"]);
    expect(more("pier", { right: "30 in", number: 1 })).toEqual([]);
    expect(more("pier", { right: "18 in", number: 1 })).toEqual(["kit.overlap it Pads"]);
    expect(more("column", {})).toEqual([]);
    // A floor over pads that lie deeper than it is thick.
    expect(more("ground-slab", {})).toEqual([]);
    expect(more("footing", { right: "4 ft", deep: "20 in" })).toEqual([]);
    expect(more("footing", { right: "2 ft" })).toEqual(["kit.overlap it Pads"]);
  });

  test("no kit says it of itself or of what it joins", () => {
    for (const { id } of kits) expect(codesOf(builtFrom("metric", [[id, "Alone"]])), id).toEqual([]);
    expect(
      codesOf(
        builtFrom("us", [
          ["footing", "Pads"],
          ["column", "Columns"],
          ["deck-slab", "Slab"],
          ["small-building", "House"],
          ["stair", "Steps", { to: ["slab/bears"] }],
        ]),
      ),
    ).toEqual([]);
  });

  test("a hand that wrote nonsense into a body does not throw", () => {
    const document = builtFrom("us", [
      ["footing", "Pads"],
      ["pier", "Piers"],
    ]) as { solids: Record<string, unknown>[] };
    const solids = document.solids.map((solid) => ({ ...solid, at: { x: 3, y: null }, size: "big" }));
    expect(codesOf({ ...document, solids })).toEqual([]);
    expect(codesOf({ parts: "none", site: 4, pours: [{ id: "a" }] })).toEqual([]);
  });
});

describe("a start in the cold months", () => {
  const begun = (start: string, site: object = {}, puts: readonly Put[] = [["footing", "Pads"]]) => {
    const empty = emptyBuild("us") as { site: object };
    return codesOf(builtFrom("us", puts, { ...empty, start, site: { ...empty.site, ...site } }));
  };

  test.each([
    ["2027-12-04", 40, true],
    ["2027-10-02", 40, true],
    ["2028-03-04", 40, true],
    ["2027-06-05", 40, false],
    ["2027-06-05", -35, true],
    ["2027-12-04", -35, false],
    ["2027-12-04", 5, false],
  ])("%s at latitude %i: %s", (start, latitude, told) => {
    expect(begun(start, { latitude })).toEqual(told ? ["kit.winter-unknown"] : []);
  });

  test("where there are dates, the months in which concrete is placed count, not the first day", () => {
    const said = (start: string, poured: readonly number[]) => {
      const empty = emptyBuild("us") as { site: object };
      const document = builtFrom("us", [["footing", "Pads"]], { ...empty, start, site: { ...empty.site, latitude: 40 } });
      return remarksOf(document, poured).map(({ code, detail }) => [code, detail.month]);
    };
    expect(said("2027-08-07", [8, 9])).toEqual([]);
    expect(said("2027-08-07", [9, 12, 1])).toEqual([["kit.winter-pour", 12]]);
    expect(said("2027-03-06", [4, 5])).toEqual([]);
    expect(said("2027-03-06", [])).toEqual([]);
  });

  test("is not remarked once temperatures are written, or where nothing is poured", () => {
    const month = { low: "30 °F", high: "45 °F" };
    expect(begun("2027-12-04", { usualTemperatures: Array.from({ length: 12 }, () => month) })).toEqual([]);
    expect(begun("2027-12-04", {}, [["layout", "Layout"]])).toEqual([]);
  });
});
