import { describe, expect, test } from "vitest";
import { barsOf, buildWith, deckOf, elementOf, pourOf } from "../../../test/fixtures/pour-model";
import type { FormSpec, Lumber, PourElement, Sheathing } from "../build";
import { formGoods } from "./form-goods";
import { quantities } from "./quantities";

const ft = 304.8;
const inch = 25.4;
const wood = (size: string, change: Partial<Lumber> = {}): Lumber => ({
  size,
  flat: false,
  pieces: 1,
  grade: "DF-L No 2",
  salvaged: false,
  measured_mm: null,
  wet: false,
  reused: false,
  from: null,
  ...change,
});
const ply = (change: Partial<Sheathing> = {}): Sheathing => ({
  kind: "plywood",
  ply: "3/4",
  plyClass: "I",
  grain: "across",
  boards: null,
  reused: false,
  from: null,
  ...change,
});
const columnForm: Extract<FormSpec, { kind: "column" }> = {
  kind: "column",
  sheathing: ply(),
  battens: null,
  bands: { stuff: wood("2x4", { pieces: 2 }), at_mm: [100, 300, 600, 1000, 1500], bolt: { name: "1/2 in rod", carries_kN: 9, from: null } },
  mass_kg: null,
  footSealed: true,
  holdDown: null,
  brace: null,
};
const wallForm: Extract<FormSpec, { kind: "wall" }> = {
  kind: "wall",
  sheathing: ply(),
  studs: { stuff: wood("2x4"), spacing_mm: 12 * inch },
  wales: { stuff: wood("2x4", { pieces: 2 }), at_mm: [300, 900, 1500] },
  ties: { by: { name: "snap tie", carries_kN: 13, from: null }, spacing_mm: 24 * inch },
  strongbacks: null,
  mass_kg_m: null,
  footSealed: true,
  holdDown: null,
  brace: null,
};
const deckForm: Extract<FormSpec, { kind: "deck" }> = {
  kind: "deck",
  sheathing: ply(),
  joists: { stuff: wood("2x6"), spacing_mm: 12 * inch },
  stringers: { stuff: wood("4x4"), spacing_mm: 4 * ft },
  shores: { stuff: wood("4x4"), spacing_mm: 4 * ft, high_mm: 7 * ft, unbraced_mm: null },
  mudsills: null,
  buggies: false,
  brace: null,
};
const edgeForm: Extract<FormSpec, { kind: "edge" }> = {
  kind: "edge",
  boards: wood("2x6"),
  stakes: { spacing_mm: 3 * ft, by: { name: "stake", carries_kN: 1, from: null } },
  holdDown: null,
};
const wall = (change: Partial<PourElement> = {}): PourElement =>
  elementOf({
    id: "wall",
    shape: { kind: "wall", long_mm: 16 * ft, thick_mm: 8 * inch, high_mm: 6 * ft, batter: { a: 0, b: 0 } },
    form: wallForm,
    ...change,
  });
const of = (...elements: PourElement[]) => quantities(buildWith([pourOf({ elements })]), 0);
const feet = (stock: readonly { long_mm: number; number: number }[]) => stock.map((s) => [Math.round(s.long_mm / ft), s.number]);

describe("forms", () => {
  test("a column: four sides, two of them over the edges of the others, four pieces and bolts a band, for each alike", () => {
    const goods = formGoods(elementOf({ form: columnForm, number: 2 }))!;
    expect(goods.panels.map((p) => [Math.round(p.long_mm / inch), Math.round((p.wide_mm / inch) * 100) / 100, p.number])).toEqual([
      [72, 12, 4],
      [72, 13.5, 4],
    ]);
    expect(goods.lumber.reduce((sum, need) => sum + need.number, 0)).toBe(2 * 5 * 4 * 2);
    expect(goods.lumber[0]!.long_mm / inch).toBeCloseTo(12 + 1.5 + 12, 9);
    expect(goods.fasteners).toEqual([{ name: "1/2 in rod", number: 40, what: "fasteners" }]);
  });

  test("with battens the strong grain lies across them, and the bands run farther around", () => {
    const goods = formGoods(elementOf({ form: { ...columnForm, battens: { stuff: wood("2x4", { flat: true }), spacing_mm: 6 * inch } } }))!;
    expect(goods.panels[0]!.long_mm / inch).toBeCloseTo(12, 9);
    expect(goods.lumber[0]).toMatchObject({ number: 12, long_mm: 6 * ft });
    expect(goods.lumber[1]!.long_mm / inch).toBeCloseTo(12 + 1.5 + 3 + 12, 9);
    expect(
      of(elementOf({ form: { ...columnForm, battens: { stuff: wood("2x4"), spacing_mm: 150 } } })).findings.map((f) => f.detail.sheets),
    ).toEqual([2]);
  });

  test("a wall of 16 by 6 ft with both faces: studs at 12 in, three rows of doubled wales, ties every 2 ft", () => {
    const found = of(wall());
    expect(found.formArea_m2 / ft ** 2 / 1e-6).toBeCloseTo(2 * 96 + 2 * 4, 6);
    expect(found.fasteners).toEqual([{ name: "snap tie", number: 27, what: "ties" }]);
    const bought = found.lumber.find((l) => l.size === "2x4")!.stock.reduce((sum, s) => sum + s.long_mm * s.number, 0);
    expect(bought / ft).toBeGreaterThanOrEqual(34 * 6 + 12 * 16);
    expect(bought / ft).toBeLessThan(1.1 * (34 * 6 + 12 * 16));
    const cut = found.sheets[0]!.cut;
    expect(cut.sheets.length).toBeLessThanOrEqual(cut.sheetsAtLeast + 1);
    expect(cut.sheetsAtLeast).toBe(Math.ceil((2 * 96 + 8) / 32));
  });

  test("only formed faces are sheathed", () => {
    const faces = [
      { face: "b", against: "earth", visible: false },
      { face: "ends", against: "old work", visible: false },
    ] as const;
    const goods = formGoods(wall({ faces }))!;
    expect(goods.panels.map((p) => p.name)).toEqual(["a"]);
    expect(of(wall({ faces })).formArea_m2 / ft ** 2 / 1e-6).toBeCloseTo(96, 6);
  });

  test("boards in the place of plywood run across the studs", () => {
    const goods = formGoods(wall({ form: { ...wallForm, sheathing: ply({ kind: "boards", ply: null, boards: wood("1x6") }) } }))!;
    expect(goods.panels).toEqual([]);
    const boards = goods.lumber.filter((need) => need.size === "1x6");
    expect(boards[0]).toMatchObject({ long_mm: 16 * ft, number: Math.ceil(72 / 5.5), run: true });
  });

  test("a deck of 12 by 9 ft: joists at 12 in, stringers and shores at 4 ft", () => {
    const found = of(deckOf({ form: deckForm }));
    expect(feet(found.lumber.find((l) => l.size === "2x6")!.stock)).toEqual([[10, 13]]);
    const posts = formGoods(deckOf({ form: deckForm }))!.lumber.filter((need) => need.size === "4x4");
    expect(posts.map((need) => [Math.round(need.long_mm / ft), need.number])).toEqual([
      [12, 4],
      [7, 16],
    ]);
    expect(found.sheets[0]!.cut.sheets.length).toBeLessThanOrEqual(5);
    expect(found.sheets[0]!.cut.sheetsAtLeast).toBe(4);
  });

  test("boards around a footing stand on each other until they are as high as it", () => {
    const footing = elementOf({ shape: { kind: "footing", long_mm: 10 * ft, wide_mm: 2 * ft, thick_mm: 10 * inch }, form: edgeForm });
    const goods = formGoods(footing)!;
    expect(goods.lumber[0]).toMatchObject({ size: "2x6", number: 2, run: true });
    expect(goods.lumber[0]!.long_mm / ft).toBeCloseTo(24, 6);
    expect(goods.fasteners[0]).toEqual({ name: "stake", number: 9, what: "fasteners" });
  });

  test("a form that does not suit its shape, a spacing of nothing, and none at all ask for nothing", () => {
    expect(formGoods(elementOf())).toBeNull();
    expect(formGoods(deckOf({ form: wallForm }))).toBeNull();
    expect(of(wall({ form: { ...wallForm, studs: { stuff: wood("2x4"), spacing_mm: 0 } } })).fasteners).toHaveLength(1);
    expect(of(wall({ form: { ...wallForm, studs: { stuff: wood("2x4"), spacing_mm: 0.1 } } })).lumber).toEqual([]);
    expect(
      of(elementOf({ shape: { kind: "column", long_mm: 0, wide_mm: 300, high_mm: 300, round: false }, form: columnForm })).sheets,
    ).toEqual([]);
  });

  test("a shore longer than lumber is sold is told", () => {
    const high = { ...deckForm, shores: { ...deckForm.shores, high_mm: 18 * ft } };
    expect(of(deckOf({ form: high })).findings.find((f) => f.code === "quantity.too-long")?.detail).toEqual({
      element: "deck",
      what: "4x4",
      long_mm: 18 * ft,
      stock_mm: 16 * ft,
    });
  });
});

describe("bars", () => {
  test("eight of 7 ft come out of four of 20, weighed as bought", () => {
    const found = of(elementOf({ number: 2, bars: [barsOf()] })).bars;
    expect(found.map((b) => [b.size, feet(b.stock)])).toEqual([[5, [[20, 4]]]]);
    expect(found[0]!.mass_kg / 0.45359237).toBeCloseTo(4 * 20 * 1.043, 6);
  });

  test("a bar of 30 ft is two with a lap between", () => {
    expect(feet(of(elementOf({ bars: [barsOf({ long_mm: 30 * ft, number: 3 })] })).bars[0]!.stock)).toEqual([[20, 6]]);
    expect(feet(of(elementOf({ bars: [barsOf({ long_mm: 38.5 * ft, number: 1 })] })).bars[0]!.stock)).toEqual([[20, 3]]);
  });

  test("sizes that are not made are left out", () => {
    expect(of(elementOf({ bars: [barsOf({ size: 12 })] })).bars).toEqual([]);
  });
});
