import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arc_mm, facesOf, finished_m2, foot_m2, formed_m2, netVolume_m3, type PouredShape, plan_m2, solid_m3 } from ".";

const inch = 25.4;
const ft = 304.8;
const yd3 = 0.9144 ** 3;
const column = (round: boolean): PouredShape => ({ kind: "column", long_mm: ft, wide_mm: ft, high_mm: 6 * ft, round });
const wall = (a: number, b: number): Extract<PouredShape, { kind: "wall" }> => ({
  kind: "wall",
  long_mm: 8 * ft,
  thick_mm: ft,
  high_mm: 6 * ft,
  batter: { a, b },
});
const size = fc.double({ min: 50, max: 5000, noNaN: true });

describe("volume", () => {
  test("a foot square and a foot round, six feet high, and a slab of twenty by twenty", () => {
    expect(solid_m3(column(false)) / yd3).toBeCloseTo(6 / 27, 10);
    expect(solid_m3(column(true)) / yd3).toBeCloseTo((Math.PI / 4) * (6 / 27), 10);
    expect(solid_m3({ kind: "slab", long_mm: 20 * ft, wide_mm: 20 * ft, thick_mm: 6 * inch }) / yd3).toBeCloseTo(200 / 27, 10);
  });

  test("a batter of 1:8 on both faces makes a wall six feet high eighteen inches thicker at its foot", () => {
    const both = wall(1 / 8, 1 / 8);
    expect(foot_m2(both) / ft ** 2 / 1e-6).toBeCloseTo(8 * 2.5, 8);
    expect(solid_m3(both) / yd3).toBeCloseTo((8 * 6 * 1.75) / 27, 10);
    expect(plan_m2(both) / ft ** 2 / 1e-6).toBeCloseTo(8, 8);
    expect(plan_m2(wall(-1 / 12, 0)) / ft ** 2 / 1e-6).toBeCloseTo(4, 8);
  });

  test("a half circle is a barrel too, and a flat one is a slab", () => {
    const half: PouredShape = { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 1000, thick_mm: 200 };
    expect(arc_mm(2000, 1000)).toBeCloseTo(Math.PI * 1000, 6);
    expect(solid_m3(half)).toBeCloseTo((Math.PI / 2) * (1.2 ** 2 - 1) * 3, 9);
    expect(solid_m3({ ...half, rise_mm: 0 })).toBeCloseTo(2 * 0.2 * 3, 9);
    expect(solid_m3({ ...half, rise_mm: 0.001 })).toBeCloseTo(1.2, 5);
  });

  test("steps stand on a waist that is measured square to its soffit", () => {
    const stair: PouredShape = { kind: "stair", wide_mm: 1000, steps: 4, riser_mm: 150, tread_mm: 200, thick_mm: 100 };
    expect(solid_m3(stair)).toBeCloseTo(4 * (0.15 * 0.1 + 0.1 * 0.25), 10);
    expect(formed_m2(stair, [])).toBeCloseTo(4 * 0.25 + 4 * 0.15 + 2 * solid_m3(stair), 10);
    expect(finished_m2(stair, [])).toBeCloseTo(0.8, 10);
  });

  test("rebates come off as often as there are", () => {
    const rebates = [{ long_mm: 300, wide_mm: 100, deep_mm: 50, number: 4 }];
    expect(netVolume_m3(column(false), rebates)).toBeCloseTo(solid_m3(column(false)) - 0.006, 12);
  });

  test("twice as long is twice as much, whatever the shape", () => {
    fc.assert(
      fc.property(size, size, size, fc.double({ min: -0.01, max: 0.3, noNaN: true }), (long_mm, wide_mm, thick_mm, batter) => {
        const shapes = (by: number): PouredShape[] => [
          { kind: "footing", long_mm: by * long_mm, wide_mm, thick_mm },
          { kind: "wall", long_mm: by * long_mm, thick_mm, high_mm: wide_mm, batter: { a: batter, b: 0 } },
          { kind: "barrel", long_mm: by * long_mm, span_mm: 2 * wide_mm, rise_mm: wide_mm / 3, thick_mm },
          { kind: "stair", wide_mm: by * long_mm, steps: 5, riser_mm: wide_mm / 10, tread_mm: wide_mm / 8, thick_mm },
        ];
        const once = shapes(1).map(solid_m3);
        shapes(2).forEach((shape, i) => {
          expect(solid_m3(shape) / (once[i] as number)).toBeCloseTo(2, 9);
        });
      }),
    );
  });
});

describe("faces", () => {
  test("a face that is not named is formed, a top is free, the underside of a footing is earth and of a deck form", () => {
    const footing: PouredShape = { kind: "footing", long_mm: 2000, wide_mm: 1000, thick_mm: 300 };
    expect(facesOf(footing, []).map((f) => [f.face, f.against])).toEqual([
      ["a", "form"],
      ["b", "form"],
      ["ends", "form"],
      ["soffit", "earth"],
      ["top", "free"],
    ]);
    expect(formed_m2(footing, [])).toBeCloseTo(1.8, 12);
    expect(formed_m2({ ...footing, kind: "deck slab" }, [])).toBeCloseTo(3.8, 12);
  });

  test("sides means all around but for a face named by itself", () => {
    const faces = [
      { face: "sides", against: "earth", visible: false },
      { face: "a", against: "form", visible: true },
    ] as const;
    expect(formed_m2(wall(0, 0), faces)).toBeCloseTo((48 * ft ** 2) / 1e6, 9);
    expect(facesOf(wall(0, 0), faces).find((f) => f.face === "a")?.visible).toBe(true);
    expect(facesOf(wall(0, 0), faces).find((f) => f.face === "ends")?.against).toBe("earth");
  });

  test("a face that leans is longer than it is high", () => {
    const faces = [{ face: "ends", against: "free", visible: false }] as const;
    expect(formed_m2(wall(0.75, 0), faces)).toBeCloseTo((48 * 2.25 * ft ** 2) / 1e6, 9);
  });

  test("the top of a column is struck off, a slab is floated, a visible top is floated too", () => {
    expect(finished_m2(column(true), [])).toBe(0);
    expect(finished_m2(column(false), [{ face: "top", against: "free", visible: true }])).toBeCloseTo(ft ** 2 / 1e6, 12);
    expect(finished_m2({ kind: "slab", long_mm: 3000, wide_mm: 2000, thick_mm: 100 }, [])).toBeCloseTo(6, 12);
    expect(
      finished_m2({ kind: "slab", long_mm: 3000, wide_mm: 2000, thick_mm: 100 }, [{ face: "top", against: "form", visible: true }]),
    ).toBe(0);
  });

  test("the ends of a shell are its section and its back is longer than its soffit", () => {
    const half: PouredShape = { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 1000, thick_mm: 200 };
    const area = new Map(facesOf(half, []).map((f) => [f.face, f.area_m2]));
    expect(area.get("soffit")).toBeCloseTo(Math.PI * 3, 9);
    expect(area.get("top")).toBeCloseTo(Math.PI * 1.2 * 3, 9);
    expect(area.get("ends")).toBeCloseTo(Math.PI * (1.44 - 1), 9);
  });

  test("a round column is formed around its circumference", () => {
    expect(formed_m2(column(true), [])).toBeCloseTo((Math.PI * ft * 6 * ft) / 1e6, 12);
    expect(formed_m2(column(false), [])).toBeCloseTo((4 * ft * 6 * ft) / 1e6, 12);
  });
});
