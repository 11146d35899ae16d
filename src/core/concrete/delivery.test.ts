import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { handsFor, layer_min, loads, type PouredShape, stands_min } from ".";

describe("loads", () => {
  test("two equal ones where one truck is a little too small, the second wanted when the first is empty", () => {
    expect(loads(10, 9, 20, null)).toEqual([
      { load_m3: 5, after_min: 0, stands_min: 15 },
      { load_m3: 5, after_min: 15, stands_min: 15 },
    ]);
    expect(loads(9, 9, 20, null)).toHaveLength(1);
  });

  test("a short pause is waited out by the truck that is there", () => {
    expect(loads(6, 7, 20, { after_m3: 1, lasts_min: 30 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 48 }]);
  });

  test("a pause that would keep it too long parts the order", () => {
    expect(loads(6, 7, 20, { after_m3: 1, lasts_min: 60 })).toEqual([
      { load_m3: 1, after_min: 0, stands_min: 3 },
      { load_m3: 5, after_min: 63, stands_min: 15 },
    ]);
  });

  test("a pause before or after everything parts nothing", () => {
    expect(loads(6, 7, 20, { after_m3: 0, lasts_min: 90 })).toHaveLength(1);
    expect(loads(6, 7, 20, { after_m3: 6, lasts_min: 90 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 18 }]);
  });

  test("they bring what was ordered, none more than a truck holds, in rising order", () => {
    const some = fc.double({ min: 0.5, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        some,
        fc.double({ min: 3, max: 9, noNaN: true }),
        some,
        some,
        fc.integer({ min: 0, max: 120 }),
        (order, truck, rate, at, lasts) => {
          const all = loads(order, truck, rate, { after_m3: at, lasts_min: lasts });
          expect(all.reduce((sum, load) => sum + load.load_m3, 0)).toBeCloseTo(order, 9);
          for (const load of all) expect(load.load_m3).toBeLessThanOrEqual(truck + 1e-8);
          expect(all.map((load) => load.after_min)).toEqual([...all.map((load) => load.after_min)].sort((a, b) => a - b));
        },
      ),
    );
    expect(stands_min).toBe(60);
  });
});

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
});
