import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  alongBrace_lb,
  type Diagram,
  holdDown_lb,
  kneeOf_ft,
  mudsill_ft2,
  pressureAt_psf,
  slabBrace_lb_ft,
  slabForm_psf,
  thrust_lb_ft,
  thrustHeight_ft,
  uplift_lb_ft,
  windBrace_lb_ft,
} from ".";

// 10 ft of 150 pcf, 600 psf at most: full head down to 4 ft, a triangle of 1,200 lb/ft and a block of 3,600 under it.
const d: Diagram = { height_ft: 10, weight_pcf: 150, most_psf: 600 };
const low: Diagram = { height_ft: 3, weight_pcf: 150, most_psf: 600 };

describe("the pressure diagram", () => {
  test("is head down to its depth, constant below, nothing above the concrete", () => {
    expect([-1, 0, 2, 4, 5, 10].map((depth) => pressureAt_psf(d, depth))).toEqual([0, 0, 300, 600, 600, 600]);
  });

  test("its area by hand: all, the triangle, the block, a stretch across the knee", () => {
    expect(thrust_lb_ft(d, 0, 10)).toBe(4800);
    expect(thrust_lb_ft(d, 0, 4)).toBe(1200);
    expect(thrust_lb_ft(d, 4, 10)).toBe(3600);
    expect(thrust_lb_ft(d, 2, 6)).toBe(1200 - 300 + 1200);
  });

  test("what lies above the concrete or under the foot adds nothing", () => {
    expect(thrust_lb_ft(d, -3, 14)).toBe(4800);
    expect(thrust_lb_ft(d, -3, 4)).toBe(1200);
    expect(thrust_lb_ft(low, 0, 9)).toBe((150 * 9) / 2);
  });

  test("acts at the centroid of triangle and block: a third of the height at full head, never above half of it", () => {
    // (1200 x (10 - 8/3) + 3600 x 3) / 4800.
    expect(thrustHeight_ft(d)).toBeCloseTo(49 / 12, 9);
    expect(thrustHeight_ft(low)).toBeCloseTo(1, 9);
    expect(thrustHeight_ft({ ...d, height_ft: 0 })).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 30, noNaN: true }), fc.double({ min: 100, max: 3000, noNaN: true }), (height_ft, most_psf) => {
        const share = thrustHeight_ft({ height_ft, weight_pcf: 150, most_psf }) / height_ft;
        expect(share).toBeGreaterThanOrEqual(1 / 3 - 1e-9);
        expect(share).toBeLessThan(0.5);
      }),
    );
  });

  test("lifts only a face that leans over the concrete, and a form heavier than that stands by itself", () => {
    expect(uplift_lb_ft(d, 0.25)).toBe(1200);
    expect(uplift_lb_ft(d, -0.25)).toBe(0);
    expect([holdDown_lb(1200, 400), holdDown_lb(400, 1200)]).toEqual([800, 0]);
  });
});

// The same 10 ft of concrete in a form whose top lies 2 ft under the surface: what the lower 8 ft of the diagram give.
describe("fresh concrete over the top of a form", () => {
  const under: Diagram = { height_ft: 8, weight_pcf: 150, most_psf: 600, over_ft: 2 };

  test("its head is felt from the top of the form down", () => {
    expect([0, 1, 2, 5].map((depth) => pressureAt_psf(under, depth))).toEqual([300, 450, 600, 600]);
    expect([kneeOf_ft(under, 8), kneeOf_ft(under, 1), kneeOf_ft(d, 10)]).toEqual([2, 1, 4]);
  });

  test("thrust and where it acts are those of the lower part of the whole diagram", () => {
    for (const [from, to] of [
      [0, 8],
      [0, 1],
      [1, 5],
      [3, 8],
    ] as const)
      expect(thrust_lb_ft(under, from, to)).toBeCloseTo(thrust_lb_ft(d, from + 2, to + 2), 9);
    // The whole, 4,800 at 49/12 ft, less its top triangle, 300 at 8 2/3 ft.
    expect(thrustHeight_ft(under)).toBeCloseTo((4800 * (49 / 12) - 300 * (26 / 3)) / 4500, 9);
  });

  test("where it lies deeper than the head counts, the form feels the most all over", () => {
    const deep = { ...under, over_ft: 5 };
    expect(kneeOf_ft(deep, 8)).toBe(0);
    expect(thrust_lb_ft(deep, 0, 8)).toBe(4800);
    expect(thrustHeight_ft(deep)).toBe(4);
  });
});

// ACI 347 2.2, as read in a lecture.
describe("loads that do not come from the concrete's pressure", () => {
  test("a wall form is braced for 15 psf of wind over half its height, more where more is said, never under 100 lb/ft", () => {
    expect([windBrace_lb_ft(10), windBrace_lb_ft(20), windBrace_lb_ft(20, 30), windBrace_lb_ft(20, 5)]).toEqual([100, 150, 300, 150]);
  });

  test("a slab form for 2 % of the dead load, never under 100 lb/ft", () => {
    expect([slabBrace_lb_ft(100, 40), slabBrace_lb_ft(100, 60)]).toEqual([100, 120]);
  });

  test("a slab form carries concrete, itself and 50 psf, with buggies 75, and 100 or 125 at least", () => {
    expect(slabForm_psf(6, 10)).toBe(135);
    expect(slabForm_psf(6, 10, 150, true)).toBe(160);
    expect(slabForm_psf(6, 10, 120)).toBe(120);
    expect([slabForm_psf(2, 5), slabForm_psf(2, 5, 150, true)]).toEqual([100, 125]);
  });

  test("a brace feels more the steeper it stands, a mudsill grows with its load", () => {
    expect(alongBrace_lb(300, 4, 3)).toBe(375);
    expect(alongBrace_lb(300, 3, 4)).toBe(500);
    expect(mudsill_ft2(3000, 1500)).toBe(2);
  });
});
