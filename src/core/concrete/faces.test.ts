import { describe, expect, test } from "vitest";
import {
  arc_mm,
  type FaceArea,
  facesOf,
  finished_m2,
  foot_m2,
  footThickness_mm,
  formed_m2,
  netVolume_m3,
  type PouredShape,
  plan_m2,
  solid_m3,
} from ".";

const shapes = {
  round: { kind: "pier", long_mm: 500, wide_mm: 500, high_mm: 2000, round: true },
  square: { kind: "pier", long_mm: 400, wide_mm: 300, high_mm: 2000, round: false },
  wall: { kind: "wall", long_mm: 5000, thick_mm: 200, high_mm: 1000, batter: { a: 0.75, b: 0 } },
  slab: { kind: "slab", long_mm: 4000, wide_mm: 3000, thick_mm: 100 },
  deck: { kind: "deck slab", long_mm: 4000, wide_mm: 3000, thick_mm: 100 },
  footing: { kind: "footing", long_mm: 4000, wide_mm: 3000, thick_mm: 100 },
  barrel: { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 1000, thick_mm: 200 },
  flat: { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 0, thick_mm: 200 },
  stair: { kind: "stair", wide_mm: 1000, steps: 4, riser_mm: 150, tread_mm: 200, thick_mm: 100 },
} satisfies Record<string, PouredShape>;

const round6 = (value: number) => Math.round(value * 1e6) / 1e6;
const told = (faces: readonly FaceArea[]) => faces.map((f) => [f.face, round6(f.area_m2), f.against]);

describe("faces of each shape, by hand", () => {
  test.each<[keyof typeof shapes, [string, number, string][]]>([
    [
      "round",
      [
        ["sides", Math.PI, "form"],
        ["top", Math.PI / 16, "free"],
      ],
    ],
    [
      "square",
      [
        ["a", 0.8, "form"],
        ["b", 0.8, "form"],
        ["ends", 1.2, "form"],
        ["top", 0.12, "free"],
      ],
    ],
    // A face that runs out 3 on a rise of 4 is 5 long.
    [
      "wall",
      [
        ["a", 6.25, "form"],
        ["b", 5, "form"],
        ["ends", 0.2 + 0.95, "form"],
        ["top", 1, "free"],
      ],
    ],
    [
      "slab",
      [
        ["a", 0.4, "form"],
        ["b", 0.4, "form"],
        ["ends", 0.6, "form"],
        ["soffit", 12, "earth"],
        ["top", 12, "free"],
      ],
    ],
    [
      "barrel",
      [
        ["soffit", Math.PI * 3, "form"],
        ["ends", Math.PI * 0.44, "form"],
        ["top", Math.PI * 1.2 * 3, "free"],
      ],
    ],
    [
      "flat",
      [
        ["soffit", 6, "form"],
        ["ends", 0.8, "form"],
        ["top", 6, "free"],
      ],
    ],
    [
      "stair",
      [
        ["soffit", 1, "form"],
        ["edges", 0.6, "form"],
        ["sides", 2 * 4 * (0.015 + 0.025), "form"],
        ["top", 0.8, "free"],
      ],
    ],
  ])("%s", (name, faces) => {
    expect(told(facesOf(shapes[name], []))).toEqual(faces.map(([face, area, against]) => [face, round6(area), against]));
  });

  test("the other face of a wall may lean as well", () => {
    const faces = facesOf({ ...shapes.wall, batter: { a: 0, b: 0.75 } }, []);
    expect(faces.slice(0, 2).map((f) => round6(f.area_m2))).toEqual([5, 6.25]);
  });
});

describe("what a face is cast against", () => {
  const against = (shape: PouredShape, face: FaceArea["face"], as: "sides" | "edges" | "a" | "top") =>
    facesOf(shape, [{ face: as, against: "earth", visible: true }]).find((f) => f.face === face);

  test("sides or edges name all that goes around a square shape, nothing else", () => {
    for (const as of ["sides", "edges"] as const) {
      for (const face of ["a", "b", "ends"] as const)
        expect(against(shapes.slab, face, as)).toMatchObject({ against: "earth", visible: true });
      expect(against(shapes.slab, "top", as)).toMatchObject({ against: "free", visible: false });
    }
    expect(against(shapes.deck, "soffit", "sides")).toMatchObject({ against: "form", visible: false });
    expect(against(shapes.slab, "b", "a")).toMatchObject({ against: "form", visible: false });
    expect(against(shapes.slab, "a", "top")).toMatchObject({ against: "form" });
  });

  test("a stair has sides and edges of its own: naming one says nothing of the other", () => {
    expect(against(shapes.stair, "sides", "sides")).toMatchObject({ against: "earth" });
    expect(against(shapes.stair, "edges", "sides")).toMatchObject({ against: "form" });
    expect(against(shapes.stair, "sides", "edges")).toMatchObject({ against: "form" });
  });
});

describe("formed and floated", () => {
  test("only what touches a form is formed", () => {
    expect(formed_m2(shapes.footing, [])).toBeCloseTo(1.4, 9);
    expect(formed_m2(shapes.deck, [])).toBeCloseTo(13.4, 9);
    expect(formed_m2(shapes.slab, [{ face: "sides", against: "old work", visible: false }])).toBe(0);
    expect(formed_m2(shapes.barrel, [{ face: "top", against: "form", visible: false }])).toBeCloseTo(Math.PI * (3 + 0.44 + 3.6), 9);
  });

  test("tops of slabs, vaults and stairs are floated, of footings, walls and piers struck off unless they stay visible", () => {
    const floated = (["round", "square", "wall", "footing", "slab", "deck", "barrel", "stair"] as const).map((name) => [
      name,
      round6(finished_m2(shapes[name], [])),
    ]);
    expect(floated).toEqual([
      ["round", 0],
      ["square", 0],
      ["wall", 0],
      ["footing", 0],
      ["slab", 12],
      ["deck", 12],
      ["barrel", round6(Math.PI * 3.6)],
      ["stair", 0.8],
    ]);
    expect(finished_m2(shapes.wall, [{ face: "top", against: "free", visible: true }])).toBeCloseTo(1, 9);
    // A free face that is no top is not floated, visible or not.
    expect(finished_m2(shapes.wall, [{ face: "ends", against: "free", visible: true }])).toBe(0);
  });
});

describe("volumes and level sections", () => {
  test("of each shape", () => {
    const told = (shape: PouredShape) => [solid_m3(shape), plan_m2(shape), foot_m2(shape)].map(round6);
    expect(told(shapes.round)).toEqual([Math.PI / 8, Math.PI / 16, Math.PI / 16].map(round6));
    expect(told({ ...shapes.round, kind: "column" })).toEqual(told(shapes.round));
    expect(told(shapes.square)).toEqual([0.24, 0.12, 0.12]);
    expect(told(shapes.wall)).toEqual([2.875, 1, 4.75]);
    expect(told(shapes.barrel)).toEqual([round6(Math.PI * 0.22 * 3), 6, 6]);
    expect(told(shapes.stair)).toEqual([0.16, 0.8, 0.8]);
    expect(told(shapes.footing)).toEqual([1.2, 12, 12]);
    expect(footThickness_mm(shapes.wall)).toBe(950);
  });

  test("a low arc is a little longer than its span, a flat one as long", () => {
    expect(arc_mm(2000, 0)).toBe(2000);
    // s + 8 h² / 3 s, the first term of the series.
    expect(arc_mm(2000, 20)).toBeCloseTo(2000 + (8 * 400) / 6000, 3);
  });

  test("more left out than there is is less than nothing", () => {
    const hole = { long_mm: 4000, wide_mm: 3000, deep_mm: 60, number: 2 };
    expect(netVolume_m3(shapes.slab, [hole])).toBeCloseTo(-0.24, 9);
    expect(netVolume_m3(shapes.slab, [hole, { ...hole, number: 0 }])).toBeCloseTo(-0.24, 9);
  });
});
