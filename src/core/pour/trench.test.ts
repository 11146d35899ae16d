import { describe, expect, test } from "vitest";
import { deckOf, elementOf, pourOf } from "../../../test/fixtures/pour-model";
import type { FormSpec, Lumber, PourElement } from "../build";
import { pitVolume, topWidth_ft, trenchVolume_ft3_ft } from "../concrete";
import { type Cut, trenchFor } from "./trench";

const ft = 304.8;
const inch = 25.4;
const wood = (size: string): Lumber => ({
  size,
  flat: false,
  pieces: 1,
  grade: null,
  salvaged: false,
  measured_mm: null,
  wet: false,
  reused: false,
  from: null,
});
const form: Extract<FormSpec, { kind: "wall" }> = {
  kind: "wall",
  sheathing: { kind: "plywood", ply: "3/4", plyClass: "I", grain: "across", boards: null, reused: false, from: null },
  studs: { stuff: wood("2x4"), spacing_mm: 300 },
  wales: { stuff: wood("2x4"), at_mm: [300, 900] },
  ties: null,
  strongbacks: null,
  mass_kg_m: null,
  footSealed: true,
  holdDown: null,
  brace: { stuff: wood("2x4"), spacing_mm: 1200, run_mm: 4 * ft, rise_mm: 5 * ft, lands: "stake", foot: null },
};
const wall = (change: Partial<PourElement> = {}): PourElement =>
  elementOf({
    id: "wall",
    shape: { kind: "wall", long_mm: 20 * ft, thick_mm: ft, high_mm: 6 * ft, batter: { a: 0, b: 0 } },
    ...change,
  });
const cut = (change: Partial<Cut> = {}): Cut => ({ soil: "C", earth: "common earth", deep_mm: 6 * ft, disturbed: false, ...change });
const of = (element: PourElement, change: Partial<Cut> = {}) => trenchFor(pourOf(), element, cut(change));

describe("a trench", () => {
  // A ditch beside a form is as wide as form and bracing need (common practice, no source).
  test("is as wide as element, form, braces and room to work need, on the sides that are formed", () => {
    const bare = of(wall()).trench!;
    expect(bare.wide_mm / ft).toBeCloseTo(1 + 2 * 2, 9);
    const formed = of(wall({ form })).trench!;
    const beside = (0.75 + 3.5 + 3.5) / 12 + 4 + 2;
    expect(formed.wide_mm / ft).toBeCloseTo(1 + 2 * beside, 9);
    expect(formed.long_mm / ft).toBeCloseTo(20 + 2 * beside, 9);
    const oneSided = wall({ form, faces: [{ face: "b", against: "earth", visible: false }] });
    expect(of(oneSided).trench!.wide_mm / ft).toBeCloseTo(1 + beside, 9);
    const earth = wall({ faces: [{ face: "sides", against: "earth", visible: false }] });
    expect(of(earth).trench!.wide_mm / ft).toBeCloseTo(1, 9);
  });

  test("6 ft deep in soil C and 4 ft at its floor it is 22 ft wide at its top", () => {
    expect(topWidth_ft(6, 4, "C")).toBeCloseTo(22, 9);
    const narrow = wall({ shape: { kind: "wall", long_mm: 20 * ft, thick_mm: 4 * ft, high_mm: 6 * ft, batter: { a: 0, b: 0 } } });
    const trench = of({ ...narrow, faces: [{ face: "sides", against: "earth", visible: false }] }).trench!;
    expect(trench.topWide_mm / ft).toBeCloseTo(22, 9);
    expect(trench.topLong_mm / ft).toBeCloseTo(20 + 18, 9);
  });

  test("under 5 ft, or in rock, its sides may stand; at 5 ft they may not", () => {
    expect(of(wall(), { deep_mm: 4.9 * ft }).trench).toMatchObject({ protect: false });
    const low = of(wall(), { deep_mm: 4.9 * ft }).trench!;
    expect(low.topWide_mm).toBe(low.wide_mm);
    expect(of(wall(), { deep_mm: 5 * ft }).trench).toMatchObject({ protect: true });
    expect(of(wall(), { soil: "rock" }).trench).toMatchObject({ protect: false });
  });

  test("ground once dug counts as B at best", () => {
    expect(of(wall(), { soil: "A" }).trench!.topWide_mm).toBeLessThan(of(wall(), { soil: "A", disturbed: true }).trench!.topWide_mm);
    expect(of(wall(), { soil: "A", disturbed: true }).trench!.soil).toBe("B");
    expect(of(wall(), { soil: "C", disturbed: true }).trench!.soil).toBe("C");
  });

  test("what is dug swells, what is filled is packed, the rest goes away", () => {
    const trench = of(wall(), { deep_mm: 4 * ft }).trench!;
    const bank = (24 * 5 * 4 * ft ** 3) / 1e9;
    expect(trench.bank_m3).toBeCloseTo(bank, 9);
    expect(trench.loose_m3).toBeCloseTo(1.25 * bank, 9);
    expect(trench.fill_m3).toBeCloseTo(bank - (20 * 4 * ft ** 3) / 1e9, 9);
    expect(trench.away_m3).toBeCloseTo(Math.max(0, (bank - trench.fill_m3 / 0.9) * 1.25), 9);
    const tight = of(wall({ faces: [{ face: "sides", against: "earth", visible: false }] }), { deep_mm: 4 * ft }).trench!;
    expect(tight.fill_m3).toBe(0);
    expect(tight.away_m3).toBeCloseTo(tight.loose_m3, 12);
  });

  test("a pit with slopes all around, far longer than wide, holds what a foot of trench holds times its length", () => {
    expect(pitVolume(1e6, 4, 6, 1.5) / 1e6 / trenchVolume_ft3_ft(6, 4, "C")).toBeCloseTo(1, 4);
    expect(pitVolume(3, 2, 5, 0)).toBeCloseTo(30, 12);
  });

  test("a battered wall wants room for its foot, a column for its side", () => {
    const battered = wall({ shape: { kind: "wall", long_mm: 20 * ft, thick_mm: ft, high_mm: 6 * ft, batter: { a: 0.125, b: 0 } } });
    expect(of(battered).trench!.wide_mm / ft).toBeCloseTo(1.75 + 4, 9);
    expect(of(elementOf()).trench!.wide_mm / ft).toBeCloseTo(5, 9);
    expect(
      of(elementOf({ form: { kind: "edge", boards: wood("2x6"), stakes: { spacing_mm: 900, by: null }, holdDown: null } })).trench!
        .wide_mm / inch,
    ).toBeCloseTo(60 + 6, 6);
  });
});

describe("what is found", () => {
  const codes = (change: Partial<Cut>) => of(wall(), change).findings.map((f) => f.code);

  test("marks and spoil always, a way out from 4 ft, protection from 5, an engineer over 20", () => {
    expect(codes({ deep_mm: 3 * ft })).toEqual(["trench.marks", "trench.spoil"]);
    expect(codes({ deep_mm: 4 * ft })).toEqual(["trench.marks", "trench.ladder", "trench.spoil"]);
    expect(codes({ deep_mm: 5 * ft })).toEqual(["trench.marks", "trench.protect", "trench.ladder", "trench.spoil"]);
    expect(codes({ deep_mm: 20 * ft })).toContain("trench.protect");
    expect(of(wall(), { deep_mm: 21 * ft })).toMatchObject({ trench: null, findings: [{ code: "trench.engineer", severity: "stop" }] });
  });

  test("a depth of nothing, or none, is out of range", () => {
    for (const deep_mm of [0, -300, Number.NaN]) {
      const found = of(wall(), { deep_mm });
      expect(found.trench).toBeNull();
      expect(found.findings[0]).toMatchObject({
        code: "pour.out-of-range",
        detail: { element: "wall", what: "depth of the cut", most: 20 },
      });
    }
  });

  test("what lies on its form wants no trench", () => {
    const barrel = deckOf({ shape: { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 700, thick_mm: 200 } });
    expect(of(barrel)).toEqual({ trench: null, findings: [] });
  });
});
