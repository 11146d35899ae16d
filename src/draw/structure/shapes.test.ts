import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Solid, SolidShape } from "../../core/build";
import type { Convex } from "./convex";
import { cut } from "./cut";
import { bitsOfSolid } from "./shapes";
import { cross, dot, minus, type Point } from "./space";
import { boxSolid } from "./testing";

/** By the divergence theorem: a third of the sum of each face's area times its distance. */
function volume({ faces }: Convex): number {
  return faces.reduce((sum, { points }) => {
    const first = points[0] as Point;
    let all = 0;
    for (let i = 1; i + 1 < points.length; i += 1) {
      const [a, b] = [minus(points[i] as Point, first), minus(points[i + 1] as Point, first)];
      all += dot(first, cross(a, b)) / 6;
    }
    return sum + all;
  }, 0);
}
const total = (bits: readonly Convex[]) => bits.reduce((sum, bit) => sum + volume(bit), 0);

const of = (shape: SolidShape, more: Partial<Solid> = {}): Solid => ({ ...boxSolid("b", [0, 0, 0], [1200, 800, 600]), shape, ...more });

describe("a body in convex bits", () => {
  const cases: readonly (readonly [string, Solid, number])[] = [
    ["box", of("box"), 1200 * 800 * 600],
    ["wedge", of("wedge"), (1200 * 800 * 600) / 2],
    ["gable", of("gable"), (1200 * 800 * 600) / 2],
    // 24 sides stand for the circle: n/2 sin(2π/n) r² in place of πr².
    ["cylinder", of("cylinder", { size_mm: { long: 800, wide: 800, high: 600 } }), 12 * Math.sin(Math.PI / 12) * 400 ** 2 * 600],
    // Half of the box and half a step more.
    ["stairs", of("stairs", { steps: 4 }), (1200 * 800 * 600 * 5) / 8],
  ];
  test.each(cases)("%s has the volume of its formula", (_, solid, mm3) => {
    expect(total(bitsOfSolid(solid)) / mm3).toBeCloseTo(1, 6);
  });

  test("a half-round vault is half a ring, less what straight strips lose", () => {
    const solid = of("vault", { size_mm: { long: 1000, wide: 800, high: 400 }, thick_mm: 100 });
    expect(total(bitsOfSolid(solid)) / ((Math.PI / 2) * (500 ** 2 - 400 ** 2) * 1000)).toBeCloseTo(1, 1);
  });

  test("a flat vault springs level, as wide outside as its circle is there", () => {
    // Span 84 in, rise 23 in, 9 in thick: by (s²/4 + r²)/2r the radius is 49.85 in, and the outer circle is 104.7 in wide at the springing.
    const inch = 25.4;
    const bits = bitsOfSolid(
      of("vault", { at_mm: { x: 0, y: 0, z: 0 }, size_mm: { long: 1000, wide: 84 * inch, high: 23 * inch }, thick_mm: 9 * inch }),
    );
    const corners = bits.flatMap(({ corners }) => corners);
    expect((Math.max(...corners.map(([, y]) => y)) * 2) / inch).toBeCloseTo(104.74, 1);
    expect(Math.min(...corners.map(([, , z]) => z))).toBeCloseTo(0, 6);
    expect(Math.max(...corners.map(([, , z]) => z)) / inch).toBeCloseTo(32, 6);
  });

  test("a vault higher than half its span stands on straight legs", () => {
    const high = total(bitsOfSolid(of("vault", { size_mm: { long: 1000, wide: 800, high: 700 }, thick_mm: 100 })));
    const round = total(bitsOfSolid(of("vault", { size_mm: { long: 1000, wide: 800, high: 400 }, thick_mm: 100 })));
    expect(high - round).toBeCloseTo(2 * 100 * 300 * 1000, 0);
  });

  test("every face of every bit looks away from its inside", () => {
    for (const shape of ["box", "cylinder", "wedge", "vault", "gable", "stairs"] as const)
      for (const turn_deg of [0, 90, 37])
        for (const { faces, corners } of bitsOfSolid(of(shape, { turn_deg, thick_mm: 90, steps: 3 })))
          for (const { normal, points } of faces)
            for (const corner of corners) expect(dot(normal, minus(corner, points[0] as Point))).toBeLessThan(1e-6);
  });

  test("a quarter turn anticlockwise brings what lay along x to lie along y", () => {
    const [bit] = bitsOfSolid(of("wedge", { at_mm: { x: 0, y: 0, z: 0 }, turn_deg: 90 }));
    const top = bit!.corners.filter(([, , z]) => z > 599);
    expect(top.map(([, y]) => Math.round(y))).toEqual([-600, -600]);
  });

  test("a body without height or length is left out, not drawn wrong", () => {
    expect(bitsOfSolid(of("box", { size_mm: { long: 0, wide: 800, high: 600 } }))).toEqual([]);
  });
});

test("two halves of a cut body are as much as the whole, and meet in faces that are not seen", () => {
  const shape = fc.constantFrom<SolidShape>("box", "cylinder", "wedge", "gable");
  const direction = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }), fc.integer({ min: 1, max: 9 }));
  let cuts = 0;
  fc.assert(
    fc.property(shape, direction, fc.integer({ min: 0, max: 1000 }), (kind, [a, b, c], share) => {
      const [body] = bitsOfSolid(of(kind, { turn_deg: 17 }));
      const long = Math.hypot(a, b, c);
      const normal: Point = [a / long, b / long, c / long];
      const reach = body!.corners.map((p) => dot(p, normal));
      const at = Math.min(...reach) + ((Math.max(...reach) - Math.min(...reach)) * share) / 1000;
      const halves = cut(body!, { normal, at });
      if (!halves) return;
      cuts += 1;
      expect((volume(halves.over) + volume(halves.under)) / volume(body!)).toBeCloseTo(1, 6);
      for (const half of [halves.over, halves.under]) expect(half.faces.filter(({ inner }) => inner)).toHaveLength(1);
    }),
  );
  expect(cuts).toBeGreaterThan(50);
});
