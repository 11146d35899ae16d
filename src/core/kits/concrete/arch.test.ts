import { describe, expect, test } from "vitest";
import { inOrder } from "../../../../test/fixtures/kits/in-order";
import { holds, type Put } from "../../../../test/fixtures/kits/kit-check";
import { unitOf } from "./arch-members";

const walls: readonly Put[] = [
  ["footing", "Strip", { sort: "strip", number: 1, long: "12 ft", wide: "12 ft" }],
  ["wall", "Walls", { number: 2, apart: "8 ft" }],
];

describe.each(["us", "metric"] as const)("a barrel in %s", (units) => {
  test("is lagged from the heads up, struck once it carries, and its centering carried out by the narrow way", () => {
    const looked = holds(units, [...walls, ["arch", "Vault", { wayWide: "24 in", wayHigh: "24 in", longest: "4 ft" }]]);
    inOrder(looked, [
      "walls-strip#2",
      "vault-posts",
      "vault-ribs",
      "vault-lag",
      "vault-coat",
      "vault-tie",
      "vault-inspect",
      "vault-place",
      "vault-strike",
    ]);
    const strike = looked.build.waits.filter(({ to, removal }) => to === "vault-strike" && removal?.sort === "soffit");
    expect(strike.map(({ removal }) => removal?.ground)).toEqual(["table", "curve", "28 days"]);
    const ribs = looked.build.pieces.find(({ id }) => id === "vault-ribs")?.size_mm;
    expect(Math.min(ribs?.long ?? 9999, ribs?.wide ?? 9999)).toBeLessThanOrEqual(24 * 25.4);
  });
});

describe("parts of a rib", () => {
  const sizes = { long_mm: 3000, span_mm: 2400, rise_mm: 500, thick_mm: 180, at_mm: { x: 0, y: 0, z: 1500 } };
  test("are two where the way is wide, and more where it is narrow or short", () => {
    const parts = (wide: number, high: number, longest: number) => unitOf({ ...sizes, way_mm: { wide, high, longest } });
    expect(parts(900, 2000, 3000)).toEqual({ parts: 2, long_mm: 1200, wide_mm: 640 });
    expect(parts(900, 2000, 1000).parts).toBe(3);
    expect(parts(350, 350, 3000).parts).toBe(7);
    for (const way of [350, 500, 700]) {
      const { long_mm, wide_mm } = parts(way, way, 900);
      expect(Math.min(long_mm, wide_mm)).toBeLessThanOrEqual(way);
      expect(Math.max(long_mm, wide_mm)).toBeLessThanOrEqual(900);
    }
  });
});
