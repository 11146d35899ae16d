import { describe, expect, test } from "vitest";
import { handsFor, layer_min, type PouredShape } from ".";

describe("placing", () => {
  test("a wall comes up in layers of 20 in, a slab in strips of 6 ft across its shorter side", () => {
    const wall: PouredShape = { kind: "wall", long_mm: 10000, thick_mm: 200, high_mm: 2000, batter: { a: 0, b: 0 } };
    expect(layer_min(wall, 2)).toBeCloseTo((10 * 0.2 * 0.508 * 60) / 2, 9);
    expect(layer_min({ ...wall, high_mm: 300 }, 2)).toBeCloseTo((10 * 0.2 * 0.3 * 60) / 2, 9);
    const slab: PouredShape = { kind: "slab", long_mm: 9000, wide_mm: 5000, thick_mm: 100 };
    expect(layer_min(slab, 2)).toBeCloseTo((5 * 1.829 * 0.1 * 60) / 2, 9);
    expect(layer_min({ ...slab, long_mm: 1000, wide_mm: 800 }, 2)).toBeCloseTo((1 * 0.8 * 0.1 * 60) / 2, 9);
  });

  test("a barrel rises on both haunches at once, a stair from its foot", () => {
    const barrel: PouredShape = { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 800, thick_mm: 200 };
    expect(layer_min(barrel, 1)).toBeCloseTo(2 * 0.508 * 0.2 * 3 * 60, 9);
    const stair: PouredShape = { kind: "stair", wide_mm: 1000, steps: 8, riser_mm: 180, tread_mm: 270, thick_mm: 150 };
    expect(layer_min(stair, 1)).toBeCloseTo(1 * 1.829 * 0.24 * 60, 9);
  });

  // Common practice, no source.
  test("a pumped slab takes five or six hands", () => {
    const count = (area: number) => handsFor("hose", false, area, 4).reduce((sum, one) => sum + one.number, 0);
    expect([count(6), count(40)]).toEqual([5, 6]);
  });

  test("columns take somebody who watches, and mixing by hand somebody who mixes", () => {
    expect(handsFor("hose", true, 0, 4)).toEqual([
      { role: "hose", number: 1 },
      { role: "vibrator", number: 1 },
      { role: "watch", number: 1 },
    ]);
    expect(handsFor("by hand", true, 0, 1)).toEqual([
      { role: "mixer", number: 2 },
      { role: "carry", number: 2 },
      { role: "vibrator", number: 1 },
      { role: "watch", number: 1 },
    ]);
    expect(handsFor("by hand", true, 0, 0.15)).toEqual([
      { role: "mixer", number: 1 },
      { role: "vibrator", number: 1 },
    ]);
    expect(handsFor("by hand", false, 0, 0.3)[1]).toEqual({ role: "carry", number: 1 });
  });

  test("a footing from the chute takes three: it is struck off by who spreads it", () => {
    expect(handsFor("chute", false, 0, 8)).toEqual([
      { role: "chute", number: 1 },
      { role: "spread", number: 1 },
      { role: "vibrator", number: 1 },
    ]);
    expect(handsFor("from the base", false, 30, 8)[0]).toEqual({ role: "hose", number: 1 });
  });

  test("one mixer for each half cubic metre an hour, and one hand to each mixer", () => {
    const roles = (rate: number) => handsFor("by hand", true, 0, rate).map(({ role, number }) => `${number} ${role}`);
    expect(roles(0.24)).toEqual(["1 mixer", "1 vibrator"]);
    expect(roles(0.25)).toEqual(["1 mixer", "1 carry", "1 vibrator"]);
    expect(roles(0.49)).toEqual(["1 mixer", "1 carry", "1 vibrator"]);
    expect(roles(0.5)).toEqual(["1 mixer", "1 carry", "1 vibrator", "1 watch"]);
    expect(roles(1)).toEqual(["2 mixer", "2 carry", "1 vibrator", "1 watch"]);
    expect(roles(1.1)).toEqual(["3 mixer", "3 carry", "1 vibrator", "1 watch"]);
  });

  test("a slab mixed by hand is screeded all the same, and slowly placed by one", () => {
    expect(handsFor("by hand", false, 5, 0.3).slice(2)).toEqual([
      { role: "vibrator", number: 1 },
      { role: "screed", number: 2 },
    ]);
    expect(handsFor("by hand", false, 5, 0.5).slice(2)).toEqual([
      { role: "spread", number: 1 },
      { role: "vibrator", number: 1 },
      { role: "screed", number: 2 },
    ]);
  });

  test("the hose takes two from 20 m², and columns with a slab on them the slab's crew", () => {
    expect([19.9, 20].map((area) => handsFor("hose", false, area, 4)[0]?.number)).toEqual([1, 2]);
    expect(handsFor("hose", true, 6, 0.3)).toEqual([
      { role: "hose", number: 1 },
      { role: "spread", number: 1 },
      { role: "vibrator", number: 1 },
      { role: "screed", number: 2 },
    ]);
  });

  test("columns and piers come up in layers too, a footing in strips", () => {
    const column: PouredShape = { kind: "column", long_mm: 300, wide_mm: 400, high_mm: 3000, round: false };
    expect(layer_min(column, 1)).toBeCloseTo(0.3 * 0.4 * 0.508 * 60, 9);
    expect(layer_min({ ...column, kind: "pier", high_mm: 400 }, 1)).toBeCloseTo(0.3 * 0.4 * 0.4 * 60, 9);
    const footing: PouredShape = { kind: "footing", long_mm: 600, wide_mm: 4000, thick_mm: 300 };
    expect(layer_min(footing, 1)).toBeCloseTo(0.6 * 1.829 * 0.3 * 60, 9);
  });
});
