import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cement_lb_yd3, coldJoint_h, floatAfter_h, initialSet_h, largestAggregate_in, pumpedAggregate_in, withWaste_yd3 } from ".";

describe("ordering", () => {
  // NAVEDTRA 14070.
  test("10 % of waste up to 200 cubic yards, 5 above", () => {
    expect(withWaste_yd3(200)).toBeCloseTo(220, 9);
    expect(withWaste_yd3(201)).toBeCloseTo(211.05, 9);
  });

  test("the tightest of bars, form and slab bounds the aggregate, and a hose takes a third of its width", () => {
    expect(largestAggregate_in({ clear_in: 1, narrowest_in: 10, slab_in: 6 })).toBe(0.75);
    expect(largestAggregate_in({ clear_in: 4, narrowest_in: 5, slab_in: 6 })).toBe(1);
    expect(largestAggregate_in({ clear_in: 4, narrowest_in: 10, slab_in: 3 })).toBe(1);
    expect(largestAggregate_in({})).toBeGreaterThan(100);
    expect(pumpedAggregate_in(4.5)).toBe(1.5);
    expect(cement_lb_yd3(0)).toBe(0);
  });
});

describe("setting and floating", () => {
  test("between the rows on a straight line, beyond them the end row", () => {
    expect(initialSet_h(65)).toBeCloseTo(7, 9);
    expect(initialSet_h(72.5)).toBeCloseTo(5.5, 9);
    expect(initialSet_h(95)).toBeCloseTo((8 / 3 + 5 / 3) / 2, 9);
    expect([initialSet_h(10), initialSet_h(30)]).toEqual([19, 19]);
    expect([initialSet_h(100), initialSet_h(120)]).toEqual([5 / 3, 5 / 3]);
    expect(coldJoint_h(60)).toBe(4);
  });

  test("floats between the surveyed temperatures on a straight line, beyond them as the set goes", () => {
    expect(floatAfter_h(60)).toBeCloseTo((3.5 * 8) / 8, 9);
    expect(floatAfter_h(80)).toBeCloseTo(2.25, 9);
    expect(floatAfter_h(100)).toBeCloseTo((1.75 * 5) / 8, 9);
    expect(floatAfter_h(30)).toBeCloseTo((4.25 * 19 * 3) / 32, 9);
  });

  test("warmer never sets or floats later, and concrete takes the float before it has set", () => {
    const F = fc.double({ min: 20, max: 110, noNaN: true });
    fc.assert(
      fc.property(F, fc.double({ min: 0, max: 20, noNaN: true }), (at, more) => {
        expect(initialSet_h(at + more)).toBeLessThanOrEqual(initialSet_h(at) + 1e-12);
        expect(floatAfter_h(at + more)).toBeLessThanOrEqual(floatAfter_h(at) + 1e-12);
        expect(floatAfter_h(at)).toBeLessThan(initialSet_h(at));
      }),
    );
  });
});
