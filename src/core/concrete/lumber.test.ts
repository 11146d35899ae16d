import { describe, expect, test } from "vitest";
import {
  allowed,
  allowedOf,
  area_in2,
  type Grade,
  grades,
  inertia_in4,
  isTimber,
  modulus_in3,
  type Section,
  sectionOf,
  sections,
  turned,
} from ".";

const grade = (name: string) => grades[name] as Grade;
const section = (name: string) => sections[name] as Section;
const plain = { duration: 1, wet: false, repetitive: false } as const;
const sawn = (wide_in: number, deep_in: number): Section => ({ name: "measured", wide_in, deep_in });

describe("adjusted values of sawn lumber", () => {
  // University form design lecture, weeks 7 to 9: read.
  test("a wet stud, a reused batten on its flat, a wet joist and a wet shore", () => {
    const stud = allowed(grade("DF-L No 2"), "2x4", { duration: 1.25, wet: true, repetitive: true });
    expect(stud.bending).toBeCloseTo(1649.5, 1);
    expect(stud.shear).toBeCloseTo(218.25, 9);
    expect(stud.bearing).toBeCloseTo(418.75, 9);
    expect(stud.elasticity).toBeCloseTo(1.44e6, 3);
    expect(stud.elasticityMin).toBeCloseTo(522e3, 3);
    const batten = allowed(grade("DF-L No 2"), "2x4 flat", { duration: 1, wet: true, repetitive: true });
    expect(batten.bending).toBeCloseTo(1451.6, 1);
    expect(batten.shear).toBeCloseTo(174.6, 9);
    const joist = allowed(grade("HF Sel"), "4x4", { duration: 1.25, wet: true, repetitive: true });
    expect([joist.bending, joist.shear].map((psi) => Math.round(psi * 10) / 10)).toEqual([2565.9, 181.9]);
    expect(allowed(grade("HF Sel"), "4x6", { duration: 1.25, wet: true, repetitive: false }).compression).toBeCloseTo(1650, 6);
  });

  test("wind adds 60 %, three side by side 15, and neither touches bearing and stiffness", () => {
    const dry = allowed(grade("DF-L No 2"), "2x10", plain);
    const wind = allowed(grade("DF-L No 2"), "2x10", { ...plain, duration: 1.6, repetitive: true });
    expect(wind.bending / dry.bending).toBeCloseTo(1.6 * 1.15, 9);
    expect([wind.shear / dry.shear, wind.compression / dry.compression]).toEqual([1.6, 1.6]);
    expect([wind.bearing, wind.elasticity, wind.elasticityMin]).toEqual([dry.bearing, dry.elasticity, dry.elasticityMin]);
  });

  // NDS Supplement 4A: 0.85 above 1150 psi with the size factor in it, 0.8 above 750 psi.
  test("water weakens bending only above 1150 psi and compression only above 750", () => {
    const board = section("1x6");
    const of = (bending: number, compression: number) => {
      const g = { ...grade("DF-L No 2"), bending, compression };
      const [dry, wet] = [allowedOf(g, board, plain), allowedOf(g, board, { ...plain, wet: true })];
      return [wet.bending / dry.bending, wet.compression / dry.compression];
    };
    expect(of(1150, 750)).toEqual([1, 1]);
    expect(of(1151, 751)).toEqual([0.85, 0.8]);
  });

  // NDS Supplement 4A: CF; 2x4 to 2x10 and 4x4 to 4x8 read, the others from memory.
  test.each([
    ["2x4", 1.5, 1.15],
    ["2x6", 1.3, 1.1],
    ["2x8", 1.2, 1.05],
    ["2x10", 1.1, 1],
    ["2x12", 1, 1],
    ["4x4", 1.5, 1.15],
    ["4x6", 1.3, 1.1],
    ["4x8", 1.3, 1.05],
    ["4x10", 1.2, 1],
    ["4x12", 1.1, 1],
    ["1x6", 1, 1],
  ])("a %s has a size factor of %d in bending and %d in compression", (name, bending, compression) => {
    const g = grade("HF No 2");
    expect(allowed(g, name, plain).bending).toBeCloseTo(g.bending * bending, 9);
    expect(allowed(g, name, plain).compression).toBeCloseTo(g.compression * compression, 9);
  });

  test("deeper than the tables 0.9, a 3 in piece as a 2 in one", () => {
    const g = grade("HF No 2");
    expect(allowedOf(g, sawn(1.5, 13.25), plain).bending).toBeCloseTo(0.9 * 850, 9);
    expect(allowedOf(g, sawn(1.5, 13.25), plain).compression).toBeCloseTo(0.9 * 1300, 9);
    expect(allowedOf(g, sawn(3.5, 13.25), plain).bending).toBeCloseTo(850, 9);
    expect(allowedOf(g, sawn(3, 9.25), plain).bending).toBeCloseTo(1.1 * 850, 9);
    expect(allowedOf(g, sawn(3.1, 9.25), plain).bending).toBeCloseTo(1.2 * 850, 9);
  });

  // NDS Supplement 4A, Cfu: 2x4 read, the others from memory.
  test.each([
    ["2x3 flat", 1.5, 1],
    ["2x4 flat", 1.5, 1.1],
    ["2x6 flat", 1.3, 1.15],
    ["2x10 flat", 1.1, 1.2],
    ["4x6 flat", 1.3, 1.05],
    ["4x10 flat", 1.2, 1.1],
    ["1x6 flat", 1, 1],
  ])("a %s used flat has its size factor %d and a flat use factor of %d", (name, size, flat) => {
    expect(allowed(grade("HF No 2"), name, plain).bending).toBeCloseTo(850 * size * flat, 9);
  });

  test("southern pine goes by its own table of depths, the deepest row beyond it, flat factor all the same", () => {
    const pine = grade("SP No 2");
    expect(allowed(pine, "2x8", plain)).toMatchObject({ bending: 925, compression: 1350 });
    expect(allowed(pine, "2x12", plain)).toMatchObject({ bending: 750, compression: 1250 });
    expect(allowedOf(pine, sawn(1.5, 13.25), plain)).toMatchObject({ bending: 750, compression: 1250 });
    expect(allowed(pine, "2x6 flat", plain).bending).toBeCloseTo(1000 * 1.15, 9);
  });

  test("a post takes the lower of its grade and the table of posts, value by value", () => {
    const post = section("6x6");
    expect(allowedOf(grade("DF-L No 2"), post, plain)).toEqual({
      bending: 500,
      shear: 125,
      bearing: 405,
      elasticity: 1.0e6,
      elasticityMin: 370e3,
      compression: 500,
    });
    const weak = { ...grade("DF-L No 2"), bending: 300, shear: 90, bearing: 200, elasticity: 8e5, elasticityMin: 3e5, compression: 400 };
    expect(allowedOf(weak, post, plain)).toEqual({
      bending: 300,
      shear: 90,
      bearing: 200,
      elasticity: 8e5,
      elasticityMin: 3e5,
      compression: 400,
    });
    expect(["4x4", "4x12", "6x6", "6x8"].map((name) => isTimber(section(name)))).toEqual([false, false, true, true]);
    expect(allowedOf(grade("DF-L No 2"), sawn(7.5, 5.5), plain).bending).toBe(500);
  });

  test("a size that stands in no table is named", () => {
    expect(() => allowed(grade("DF-L No 2"), "9x9", plain)).toThrow("9x9");
  });
});

describe("sections", () => {
  test("what was measured with equal sides, and a table size flat that has no flat", () => {
    expect(sectionOf("4x4", true, { wide: 3.4, deep: 3.6 })).toEqual({ name: "4x4 flat", wide_in: 3.6, deep_in: 3.4 });
    expect(sectionOf("2x6", true, null)).toEqual({ name: "2x6 flat", wide_in: 5.5, deep_in: 1.5 });
    expect(sectionOf("2x6", false, null)).toEqual({ name: "2x6", wide_in: 1.5, deep_in: 5.5 });
    expect(sectionOf("6x6", true, null)).toEqual({ name: "6x6", wide_in: 5.5, deep_in: 5.5 });
  });

  test("metric sizes are as wide and deep as their names say, on edge and flat", () => {
    expect(area_in2(section("45x95")) * 645.16).toBeCloseTo(45 * 95, 6);
    expect(modulus_in3(section("45x145")) * 25.4 ** 3).toBeCloseTo((45 * 145 ** 2) / 6, 3);
    expect(section("45x95 flat").deep_in * 25.4).toBeCloseTo(45, 9);
    expect(sectionOf("95x95", true, null)?.name).toBe("95x95");
  });

  test("turned on its other face a piece keeps its area and name", () => {
    const edge = section("2x6");
    expect(turned(edge)).toEqual({ name: "2x6", wide_in: 5.5, deep_in: 1.5 });
    expect(area_in2(turned(edge))).toBe(area_in2(edge));
    // NDS Supplement, dressed 2x6: A 8.25, S 7.563, I 20.80.
    expect(area_in2(edge)).toBe(8.25);
    expect(modulus_in3(edge)).toBeCloseTo(7.563, 3);
    expect(inertia_in4(edge)).toBeCloseTo(20.8, 2);
  });
});
