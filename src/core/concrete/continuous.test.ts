import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Diagram, reactions_lb_ft, reactionsOnFoot_lb_ft, stretches, thrust_lb_ft } from ".";

/** 600 psf all over: each inch of height is 50 lb on a foot of width. */
const even = (high_in: number): Diagram => ({ height_ft: high_in / 12, weight_pcf: 6e6, most_psf: 600 });
const near = (found: readonly number[], wanted: readonly number[]) => {
  expect(found).toHaveLength(wanted.length);
  wanted.forEach((one, i) => {
    expect(Math.abs((found[i] as number) - one) / Math.max(...wanted), `${found[i]} against ${one}`).toBeLessThan(0.002);
  });
};

describe("a batten that runs through", () => {
  // Coefficients of continuous beams under an even load, in every handbook (AISC Manual, from memory): 3/8 10/8 3/8; 0.4 1.1 1.1 0.4; 11 32 26 32 11 of 28.
  test("over equal spans leaves on its supports what the handbooks say", () => {
    const over = (n: number) =>
      reactions_lb_ft(
        even(12 * n),
        Array.from({ length: n + 1 }, (_, i) => 12 * i),
      ).map((r) => r / 600);
    near(over(1), [0.5, 0.5]);
    near(over(2), [0.375, 1.25, 0.375]);
    near(over(3), [0.4, 1.1, 1.1, 0.4]);
    near(
      over(4),
      [11, 32, 26, 32, 11].map((x) => x / 28),
    );
  });

  // By hand: two spans l and 3 l under w, M = -w (l³ + 27 l³) / (8 (4 l)) = -7/8 w l²; R = (1/2 - 7/8), (1/2 + 7/8 + 3/2 + 7/24), (3/2 - 7/24) of w l.
  test("with one gap three times its neighbour loads the one between by more than half of both", () => {
    const found = reactions_lb_ft(even(48), [0, 12, 48]).map((r) => r / 600);
    near(found, [-0.375, 4 - (1.5 - 7 / 24) + 0.375, 1.5 - 7 / 24]);
    const [, middle] = stretches(even(48), [0, 12, 48]);
    expect(middle!.line_lb_ft / 600).toBeCloseTo(2, 9);
    expect(middle!.most_lb_ft / 600).toBeCloseTo(found[1]!, 9);
  });

  test("hangs over both ends by statics: two supports, the triangle of full head", () => {
    const head: Diagram = { height_ft: 6, weight_pcf: 150, most_psf: 900 };
    // 2,700 lb at 24 in: on 12 in and 60 in by moments 2,700 x 36 / 48 and 2,700 x 12 / 48.
    near(reactions_lb_ft(head, [12, 60]), [2025, 675]);
    near(reactions_lb_ft(head, [20]), [2700]);
  });

  test("on a plate at its foot leaves less on the lowest, unless it would lift off it", () => {
    near(reactionsOnFoot_lb_ft(even(24), [12, 24])!, [750, 225]);
    expect(reactionsOnFoot_lb_ft(even(40), [4, 40])).toBeNull();
    expect(reactionsOnFoot_lb_ft(even(24), [0, 24])).toBeNull();
    // On its foot 0, 12, 24 in: 10/8 in the middle, where half gaps and an overhang say 1.
    expect(stretches(even(24), [12, 24], true)[0]!.most_lb_ft).toBeCloseTo(Math.max(750, reactions_lb_ft(even(24), [12, 24])[0]!), 0);
  });

  test("reactions add up to the diagram, and turn nothing, wherever the bands stand", () => {
    const heights = fc.uniqueArray(fc.integer({ min: 1, max: 95 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(heights, fc.double({ min: 200, max: 1200, noNaN: true }), (at, most_psf) => {
        const d: Diagram = { height_ft: 8, weight_pcf: 150, most_psf };
        const sorted = [...at].sort((a, b) => a - b);
        const found = reactions_lb_ft(d, sorted);
        const whole = thrust_lb_ft(d, 0, 8);
        expect(found.reduce((sum, r) => sum + r, 0) / whole).toBeCloseTo(1, 9);
        let turning = 0;
        for (let i = 0; i < 960; i += 1) turning += thrust_lb_ft(d, 8 - (i + 1) / 120, 8 - i / 120) * ((i + 0.5) / 10);
        if (sorted.length > 1) expect(found.reduce((sum, r, i) => sum + r * sorted[i]!, 0) / turning).toBeCloseTo(1, 2);
        for (const { line_lb_ft, most_lb_ft } of stretches(d, at)) expect(most_lb_ft).toBeGreaterThanOrEqual(line_lb_ft);
      }),
    );
  });
});
