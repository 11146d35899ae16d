import { describe, expect, test } from "vitest";
import { barsOf, buildWith, deckOf, elementOf, pourOf } from "../../../test/fixtures/pour-model";
import { type ElapsedMinute, never } from "../base";
import type { Build, Pour, PourElement } from "../build";
import { footingLoad } from "./footing-load";
import { pourSheets } from "./sheet";
import { type PourDates, shopping } from "./shopping";

const at = (minute: number): ElapsedMinute => minute as ElapsedMinute;
const ids = (...list: string[]) => list as unknown as PourElement["pieces"];

const partial = {
  stock: [
    { id: "sheets", name: "Form plywood", unit: "sheet", inHand: 4 },
    { id: "cement", name: "Cement", unit: "sack", inHand: 2 },
    { id: "dry-mix", name: "Dry mix, 20 kg", unit: "bag", inHand: 10, yields: "9.4 L" },
    { id: "rope", name: "Rope", unit: "coil", inHand: 1 },
  ],
  calendars: [{ id: "yard", name: "Yard", week: { mon: ["8:00-16:00"] } }],
  deliveries: [
    { id: "first", name: "First sheets", calendar: "yard", promised: "2027-03-08", ordered: true, brings: [{ of: "sheets", number: 3 }] },
    { id: "second", name: "More sheets", calendar: "yard", lead: "5 d", ordered: false, brings: [{ of: "sheets", number: 9 }] },
    { id: "concrete", name: "Concrete", calendar: "yard", lead: "3 d", ordered: false },
  ],
  pieces: [
    { id: "wall-form", name: "Wall form", uses: [{ of: "sheets", number: 8, loss: 2 }] },
    { id: "deck-form", name: "Deck form", uses: [{ of: "sheets", number: 6 }] },
  ],
  steps: [
    { id: "set-wall", name: "Set", work: "2 h", puts: ["wall-form"], needs: ["second"] },
    { id: "take-wall", name: "Take", work: "1 h", takes: ["wall-form"] },
    { id: "set-deck", name: "Deck", work: "2 h", puts: ["deck-form"] },
    { id: "pour-porch", name: "Pour", sort: "pour", work: "6 h", hands: 6, needs: ["concrete"] },
  ],
};
const buildOf = (pour: Partial<Pour> = {}): Build => buildWith([pourOf(pour)], {}, partial);
const dates = (up: number, gone: number, deckUp: number): PourDates => ({
  pieces: [
    { up: at(up), gone: at(gone) },
    { up: at(deckUp), gone: at(9000) },
  ],
  starts: [at(up), at(gone - 60), at(deckUp), at(5000)],
  orderBy: [null, at(40), at(3000)],
});
const list = (build: Build, when: PourDates | null) => shopping(build, pourSheets(build), when);
const line = (build: Build, when: PourDates | null, what: string) => list(build, when).filter((one) => one.what === what);

describe("stock", () => {
  test("what comes back from stripping in time is not bought again", () => {
    const [sheets] = line(buildOf(), dates(100, 2000, 2000), "plywood");
    expect(sheets).toMatchObject({ name: "Form plywood", needed: 14, inHand: 4, ordered: 3, back: 6, toBuy: 1, unit: "sheet" });
    expect(sheets).toMatchObject({ neededBy: 100, orderBy: 40, for: ["Wall form", "Deck form"] });
  });

  test("when both stand at once all of it is needed at once, from the second on", () => {
    const [sheets] = line(buildOf(), { ...dates(100, 3000, 2000) }, "plywood");
    expect(sheets).toMatchObject({ needed: 14, back: 0, toBuy: 7, neededBy: 100 });
    const late: PourDates = {
      ...dates(100, 3000, 2000),
      pieces: [
        { up: at(2000), gone: at(3000) },
        { up: at(100), gone: at(9000) },
      ],
    };
    expect(line(buildOf(), late, "plywood")[0]).toMatchObject({ neededBy: 2000 });
  });

  test("without a plan nothing comes back and nothing has a date", () => {
    expect(line(buildOf(), null, "plywood")[0]).toMatchObject({ needed: 14, back: 0, toBuy: 7, neededBy: null, orderBy: null });
  });

  test("a piece that is never put up needs nothing; stock nobody uses is not listed", () => {
    const one: PourDates = {
      ...dates(100, 2000, 2000),
      pieces: [
        { up: never, gone: never },
        { up: at(100), gone: at(900) },
      ],
    };
    expect(line(buildOf(), one, "plywood")[0]).toMatchObject({ needed: 6, toBuy: 0, orderBy: null, neededBy: 100 });
    expect(list(buildOf(), one).some((l) => l.name === "Rope")).toBe(false);
  });

  test("concrete from sacks is bought as sacks, less those in hand", () => {
    const mix = { ...pourOf().mix, cement_kg_m3: 300 };
    const build = buildOf({ sacks: "cement" as Pour["sacks"], placed: "by hand", mix });
    const sacks = pourSheets(build)[0]!.day!.sacks!;
    expect(sacks).toBeGreaterThan(10);
    expect(line(build, dates(100, 200, 300), "cement sacks")[0]).toMatchObject({
      needed: sacks,
      inHand: 2,
      toBuy: sacks - 2,
      neededBy: 5000,
    });
    expect(line(build, dates(100, 200, 300), "concrete")).toEqual([]);
  });

  test("bags of dry mix are counted by what one gives, not by its cement", () => {
    const build = buildOf({ sacks: "dry-mix" as Pour["sacks"], placed: "by hand" });
    const { day } = pourSheets(build)[0]!;
    expect(day!.bags).toBe(Math.ceil(day!.order_m3 / 0.0094));
    expect(pourSheets(build)[0]!.findings.some((f) => f.code === "pour.cement-unknown")).toBe(false);
    expect(line(build, null, "cement sacks")[0]).toMatchObject({
      name: "Dry mix, 20 kg",
      needed: day!.bags,
      toBuy: day!.bags! - 10,
      unit: "bag",
    });
  });
});

describe("what is counted from the figures", () => {
  const form: PourElement["form"] = {
    kind: "edge",
    boards: { size: "2x6", flat: false, pieces: 1, grade: null, salvaged: false, measured_mm: null, wet: false, reused: false, from: null },
    stakes: { spacing_mm: 900, by: { name: "stake", carries_kN: 1, from: null } },
    holdDown: null,
  };
  const slab = (change: Partial<PourElement> = {}) =>
    deckOf({ shape: { kind: "slab", long_mm: 3657.6, wide_mm: 2743.2, thick_mm: 120 }, form, ...change });

  test("concrete by the day of its step, ordered in time", () => {
    const build = buildOf();
    const [concrete] = line(build, dates(100, 200, 300), "concrete");
    expect(concrete).toMatchObject({ name: "Porch", unit: "m3", neededBy: 5000, orderBy: 3000, long_mm: null });
    expect(concrete!.toBuy).toBeCloseTo(pourSheets(build)[0]!.day!.order_m3, 12);
  });

  test("boards, stakes and bars of an element with no piece of stock, by the length they are bought in", () => {
    const build = buildOf({ elements: [slab({ bars: [barsOf({ size: 4, number: 8, long_mm: 3000 })] })] });
    const all = list(build, dates(100, 200, 300));
    const boards = all.filter((l) => l.what === "lumber");
    expect(boards.every((l) => l.name === "2x6" && l.neededBy === 5000 && l.orderBy === null)).toBe(true);
    expect(boards.reduce((sum, l) => sum + l.toBuy * l.long_mm!, 0)).toBeGreaterThanOrEqual(2 * (3657.6 + 2743.2) - 1);
    expect(all.find((l) => l.what === "bars")).toMatchObject({ name: "4", toBuy: 4, long_mm: 6096, for: ["Deck"] });
    expect(all.find((l) => l.what === "fasteners")).toMatchObject({ name: "stake", toBuy: 16 });
  });

  test("by the step that puts its piece, where it has one without stock of its own", () => {
    const build = buildOf({ elements: [slab({ pieces: ids("deck-form") })] });
    const bare = { ...build, pieces: build.pieces.map((piece) => ({ ...piece, uses: [] })) };
    expect(line(bare, dates(100, 200, 300), "lumber")[0]).toMatchObject({ neededBy: 300 });
    expect(line(build, dates(100, 200, 300), "lumber")).toEqual([]);
  });

  test("the same size for two pours is a line each, since each is ordered for its own date", () => {
    const one = pourOf({ id: "a", elements: [slab()] });
    const two = pourOf({ id: "b", elements: [slab({ name: "Other" })] });
    const build = buildWith([one, two], {}, partial);
    const boards = line(build, dates(100, 200, 300), "fasteners");
    expect(boards.map((l) => [l.toBuy, l.for])).toEqual([
      [16, ["Deck"]],
      [16, ["Other"]],
    ]);
    expect(line(build, dates(100, 200, 300), "concrete")).toHaveLength(2);
  });

  test("plastic over a slab laps and hangs over", () => {
    const build = buildOf({ elements: [slab()], cure: { ...pourOf().cure, how: "covered" } });
    expect(line(build, null, "cover")[0]!.toBuy).toBeCloseTo(3.6576 * 2.7432 * 1.1, 9);
    expect(line(buildOf({ elements: [slab()] }), null, "cover")).toEqual([]);
  });

  test("the most pressing comes first, what has no date last", () => {
    const build = buildOf({ elements: [slab()] });
    const keys = list(build, dates(100, 200, 300)).map((l) => l.orderBy ?? l.neededBy ?? Number.POSITIVE_INFINITY);
    expect(keys).toEqual([...keys].sort((a, b) => a - b));
  });
});

describe("load on a footing", () => {
  const footing = elementOf({
    id: "footing",
    name: "Footing",
    number: 2,
    shape: { kind: "footing", long_mm: 600, wide_mm: 600, thick_mm: 300 },
  });
  const held = {
    ...partial,
    pieces: [
      { id: "footing", name: "Footing", fromStart: true, holdsItself: true },
      { id: "columns", name: "Columns", heldBy: [["footing"]] },
      { id: "deck", name: "Deck", heldBy: [["columns"]] },
    ],
    steps: [
      { id: "up", name: "Up", work: "1 h", puts: ["columns", "deck"] },
      { id: "pour-porch", name: "Pour", sort: "pour", work: "6 h", hands: 6 },
    ],
  };
  const elements = [
    { ...footing, pieces: ids("footing") },
    elementOf({ number: 2, pieces: ids("columns") }),
    deckOf({ pieces: ids("deck") }),
  ];
  const kN_m3 = (2402.77 * 9.80665) / 1000;

  test("is its own weight, the columns' and the deck's on both, and what is stated", () => {
    const build = buildWith([pourOf({ elements })], {}, held);
    const load = footingLoad(build, 0, 0, [{ name: "Roof and snow", force_kN: 10 }])!;
    expect(load.own_kN).toBeCloseTo(0.108 * kN_m3, 6);
    expect(load.above.map((a) => a.element)).toEqual([1, 2]);
    expect(load.force_kN).toBeCloseTo(load.own_kN + (0.3048 ** 2 * 1.8288 + (3.6576 * 2.7432 * 0.1524) / 2) * kN_m3 + 10, 6);
    expect(load.pressure_kPa).toBeCloseTo(load.force_kN / 0.36, 9);
    expect(load.findings.map((f) => [f.code, f.severity])).toEqual([["quantity.ask-before-you-dig", "look"]]);
  });

  test("another footing of the same piece stands beside it, not on it", () => {
    const pads = elementOf({ ...footing, id: "pads" as never });
    const load = footingLoad(buildWith([pourOf({ elements: [footing, pads] })]), 0, 0)!;
    expect([load.above, load.force_kN]).toEqual([[], load.own_kN]);
  });

  test("says that it is only a part where nothing is written on it or nothing stated", () => {
    const alone = footingLoad(buildWith([pourOf({ elements: [footing] })]), 0, 0)!;
    expect(alone.findings.map((f) => [f.code, f.severity, f.detail.lacks])).toEqual([
      ["quantity.ask-before-you-dig", "note", undefined],
      ["quantity.footing-part", "note", "the-concrete-above"],
    ]);
    const build = buildWith([pourOf({ elements })], {}, held);
    expect(footingLoad(build, 0, 0)!.findings[1]?.detail.lacks).toBe("building-snow-people");
  });

  test("a footing without a dimension or a load that is no figure has no sum", () => {
    const flat = elementOf({ shape: { kind: "footing", long_mm: 600, wide_mm: 0, thick_mm: 300 } });
    expect(footingLoad(buildWith([pourOf({ elements: [flat] })]), 0, 0)).toBeNull();
    expect(footingLoad(buildWith([pourOf({ elements })], {}, held), 0, 0, [{ name: "x", force_kN: Number.NaN }])).toBeNull();
  });
});
