import { describe, expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import { writtenId } from "../../base";
import type { Piece, Step } from "../../build";
import { crewOf, freeId, share, the, writtenAmount, writtenNeed, writtenPiece, writtenReach, writtenSize } from "./written";

const { build, at } = smallCase({
  usual: "weekends",
  calendars: [{ id: "shop", week: { mon: ["8:00-16:00"] } }],
  places: [
    { id: "cage", ways: [{ id: "side", passes: ["person"] }] },
    { id: "yard", ways: [{ id: "gate", passes: ["person"] }] },
  ],
  pieces: [
    { id: "bare" },
    {
      id: "panel",
      sort: "form",
      closes: ["cage.side"],
      makes: ["yard.gate"],
      fills: ["yard"],
      heldBy: [["bare", "steel"], ["bare"]],
      holdsItself: { is: "2 d", from: "own guess" },
      goesAfter: "3 d",
      off: [
        { place: "cage", need: "arm", depth: "300 mm" },
        { place: "yard", need: "unit", piece: "panel" },
      ],
      size: { long: "2 m", wide: "1 m", thick: "18 mm" },
      weight: "25 kg",
    },
    { id: "steel" },
  ],
  steps: [
    step("plain", { work: "90 min" }),
    step("ranged", { work: { low: "1 h", likely: "2 h", high: "5 h" }, hands: 3, place: "cage", calendar: "shop" }),
    step("round", {
      reaches: [{ any: [{ place: "cage" }, { place: "yard", need: "hand", depth: "50 mm" }] }, { place: "yard", need: "hose" }],
    }),
    step("tie-part"),
    step("tie-part-2"),
  ],
});
const of = (id: string) => build.steps[at(id)] as Step;
const piece = (id: string) => build.pieces[build.at.piece.get(id) ?? -1] as Piece;

describe("ids", () => {
  test("are written without the number of a copy", () => {
    expect(["face#2", "face#12", "face"].map(writtenId)).toEqual(["face", "face", "face"]);
  });

  test("that are free are those that no place, piece or step has, counted from 2", () => {
    expect(["new", "cage", "steel", "plain#2", "tie-part"].map((id) => freeId(build, id))).toEqual([
      "new",
      "cage-2",
      "steel-2",
      "plain-2",
      "tie-part-3",
    ]);
  });
});

describe("work and crew", () => {
  test("a share of the work is an own guess, of all three figures where there are three, and never nothing", () => {
    expect(share(of("plain"), 0.5)).toEqual({ is: "45 min", from: "own guess" });
    expect(share(of("ranged"), 0.5)).toEqual({ low: "30 min", likely: "60 min", high: "150 min", from: "own guess" });
    expect(share(of("plain"), 0.001)).toEqual({ is: "1 min", from: "own guess" });
  });

  test("the same hands, place and calendar; the usual calendar is not written", () => {
    expect(crewOf(of("plain"), build)).toEqual({ hands: [{ role: "hands", number: 1 }] });
    expect(crewOf(of("ranged"), build)).toEqual({ place: "cage", hands: [{ role: "hands", number: 3 }], calendar: "shop" });
  });
});

describe("names inside a sentence", () => {
  test.each([
    ["Last face", "the last face"],
    ["The last face", "the last face"],
    ["a brace", "a brace"],
    ["An end-piece", "an end-piece"],
    ["My panel", "my panel"],
    ["Each prop", "each prop"],
    ["Both doors", "both doors"],
    ["All of it", "all of it"],
    ["Ann's form", "Ann's form"],
    ["T-post", "the T-post"],
    ["OSB sheet", "the OSB sheet"],
    ["Cross-brace, left", "the cross-brace, left"],
    ["2nd panel", "2nd panel"],
    ["north panel", "the north panel"],
    ["Anchor", "the anchor"],
    ["Pergola post", "the pergola post"],
    ["McNeil form", "the McNeil form"],
    ["Owners' door", "Owners' door"],
  ])("%s", (name, inside) => {
    expect(the(name)).toBe(inside);
  });
});

describe("a piece written again", () => {
  test("says all that the first says, and of its own way out speaks of itself", () => {
    expect(writtenPiece(piece("panel"), "panel-again")).toEqual({
      sort: "form",
      closes: ["cage.side"],
      makes: ["yard.gate"],
      fills: ["yard"],
      heldBy: [["bare", "steel"], ["bare"]],
      holdsItself: { is: "2 d", from: "own guess" },
      goesAfter: "3 d",
      off: [
        { place: "cage", need: "arm", depth: "300 mm" },
        { place: "yard", need: "unit", piece: "panel-again" },
      ],
      size: { long: "2000 mm", wide: "1000 mm", thick: "18 mm" },
      weight: "25 kg",
    });
    expect(writtenSize({ long: 1, wide: 2.5, thick: 3 })).toEqual({ long: "1 mm", wide: "2.5 mm", thick: "3 mm" });
  });

  test("says nothing of what the first does not have", () => {
    expect(Object.keys(writtenPiece(piece("bare"), "more"))).toEqual(["sort"]);
  });
});

test("reaches are written with what they need: one place plainly, several as any of them", () => {
  const [either, hose] = of("round").reaches;
  expect(either && writtenReach(either)).toEqual({
    any: [
      { place: "cage", need: "person" },
      { place: "yard", need: "hand", depth: "50 mm" },
    ],
  });
  expect(hose && writtenReach(hose)).toEqual({ place: "yard", need: "hose" });
  const bare = { kind: "unit", long_mm: 1, wide_mm: 1, thick_mm: 1, mass_kg: 1, piece: null } as const;
  expect(writtenNeed(bare)).toEqual({ need: "unit" });
});

test("an amount of working time is written back with its calendar", () => {
  const lasts = { on: { kind: "working", calendar: "weekends" as never }, amount: 480, text: "8 h", from: null } as const;
  expect(writtenAmount(lasts)).toEqual({ is: "8 h", on: "weekends" });
  expect(writtenAmount({ ...lasts, from: "drawing" })).toEqual({ is: "8 h", on: "weekends", from: "drawing" });
  expect(writtenAmount({ ...lasts, on: { kind: "elapsed" } })).toBe("8 h");
});
