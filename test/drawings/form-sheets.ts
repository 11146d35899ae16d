import type { Brace, ElementShape, Fastener, FormSpec, HoldDown, Lumber, PourElement, Sheathing } from "../../src/core/build";
import type { ElementSheet, FormSheet, MemberPart, MemberSheet, Pressure, PressureCase } from "../../src/core/pour";

/** Elements with figures made by hand, for looking at the drawing of a form and for its tests: nothing computed them, so they keep still. */
const inch = 25.4;

export const lumber = (size: string, more: Partial<Lumber> = {}): Lumber => ({
  size,
  flat: false,
  pieces: 1,
  grade: "DF-L No 2",
  salvaged: false,
  measured_mm: null,
  wet: false,
  reused: true,
  from: null,
  ...more,
});
const ply: Sheathing = { kind: "plywood", ply: "3/4", plyClass: "I", grain: "across", boards: null, reused: true, from: null };
const rod: Fastener = { name: "1/2 in rod", carries_kN: 9, from: "product sheet" };
const brace: Brace = { stuff: lumber("2x4"), spacing_mm: 48 * inch, run_mm: 48 * inch, rise_mm: 54 * inch, lands: "stake", foot: rod };
const down: HoldDown = { by: rod, spacing_mm: null, number: 4 };

const full = (height_mm: number): PressureCase => ({
  rise_m_h: 41,
  most_kPa: (23.56 * height_mm) / 1000,
  most_psf: (150 * height_mm) / 304.8,
  hydrostatic_mm: height_mm,
  formula: "full head",
  why: ["no rate is held"],
});
const slow = (at_mm: number): PressureCase => ({
  ...full(at_mm),
  rise_m_h: 1.5,
  hydrostatic_mm: at_mm,
  formula: "(b)",
  why: [],
});

export const pressed = (height_mm: number, more: Partial<Pressure> = {}): Pressure => ({
  document: "aci-us",
  height_mm,
  weight_kg_m3: 2403,
  hose: full(height_mm),
  held: null,
  design: "hose",
  throttle: null,
  fastest_m_h: null,
  act: null,
  ...more,
});

export function member(part: MemberPart, of100: number, governs: MemberSheet["governs"], more: Partial<MemberSheet> = {}): MemberSheet {
  return {
    part,
    stuff: "2x4",
    pieces: 1,
    of100,
    governs,
    result: { checks: [], governs: { kind: governs, of100, span_in: null }, largestSpan_in: null },
    largestSpan_mm: null,
    span_mm: null,
    load: { value: 10, unit: "kN/m" },
    each: [],
    guessed: false,
    documents: ["NDS"],
    source: null,
    ...more,
  };
}

const atHeights = (heights_in: readonly number[], of100: readonly number[]): MemberSheet["each"] =>
  heights_in.map((at, index) => ({
    at_mm: at * inch,
    from_mm: at * inch - 100,
    to_mm: at * inch + 100,
    load_kN: 3,
    most_kN: 3.2,
    of100: of100[index] ?? 0,
    governs: "bending",
  }));

const sheetOf = (members: readonly MemberSheet[], first: number, more: Partial<FormSheet> = {}): FormSheet => ({
  members,
  first,
  thrust: 12,
  thrustAt_mm: 600,
  oneSided: false,
  lift: { up: 0, weight: 0.8, held: 0, needed: 0 },
  bracing_kN_m: 1.46,
  proposed_mm: null,
  ...more,
});

export interface Drawable {
  readonly element: PourElement;
  readonly sheet: ElementSheet;
}

function drawable(
  id: string,
  name: string,
  shape: ElementShape,
  form: FormSpec | null,
  sheet: FormSheet | null,
  pressure: Pressure | null,
  more: Partial<PourElement> = {},
): Drawable {
  return {
    element: { id, name, number: 1, shape, faces: [], rebates: [], held: null, form, bars: [], pieces: [], ...more },
    sheet: { element: 0, volume_m3: 0.17, plan_m2: 0.09, mass_kg: 400, formArea_m2: 2.2, pressure, form: sheet, fixes: [] },
  };
}

const heights = [4, 12, 20, 29, 40, 51, 64];
const columnForm = (more: Partial<Extract<FormSpec, { kind: "column" }>> = {}): FormSpec => ({
  kind: "column",
  sheathing: ply,
  battens: { stuff: lumber("2x4", { flat: true }), spacing_mm: 200 },
  bands: { stuff: lumber("2x4", { pieces: 2 }), at_mm: heights.map((at) => at * inch), bolt: rod },
  mass_kg: 82,
  footSealed: true,
  holdDown: null,
  brace,
  ...more,
});
const columnShape = { kind: "column", long_mm: 12 * inch, wide_mm: 12 * inch, high_mm: 72 * inch, round: false } as const;

/** A column a foot square and six feet high: the lowest band is over what it may carry. */
export const column = drawable(
  "columns",
  "Columns",
  columnShape,
  columnForm(),
  sheetOf(
    [
      member("sheathing", 71, "rolling shear", { stuff: "3/4" }),
      member("battens", 83, "shear"),
      member("bands", 101, "bending", { pieces: 2, each: atHeights(heights, [101, 89, 82, 75, 64, 46, 19]) }),
      member("corner bolts", 62, "tension", { each: atHeights(heights, [62, 60, 58, 50, 40, 30, 10]) }),
    ],
    2,
  ),
  pressed(72 * inch, { held: slow(63.5 * inch) }),
);

/** The same with bands so close that their labels have to make room, and with sheathing that gives first. */
export const crowded = drawable(
  "pier",
  "Pier",
  columnShape,
  columnForm({
    bands: { stuff: lumber("2x4"), at_mm: [2, 4, 6, 8, 10, 12, 14, 70].map((at) => at * inch), bolt: rod },
    footSealed: false,
    brace: { ...brace, lands: null },
  }),
  sheetOf(
    [
      member("sheathing", 140, "sag", { stuff: "1/2" }),
      member("bands", 60, "bending", { each: atHeights([2, 4, 6, 8, 10, 12, 14, 70], [60, 50, 40, 40, 40, 40, 40, 60]) }),
    ],
    0,
  ),
  pressed(72 * inch),
);

const waleHeights = [8, 24, 42, 62];
const wallForm = (more: Partial<Extract<FormSpec, { kind: "wall" }>> = {}): FormSpec => ({
  kind: "wall",
  sheathing: ply,
  studs: { stuff: lumber("2x4"), spacing_mm: 300 },
  wales: { stuff: lumber("2x4", { pieces: 2 }), at_mm: waleHeights.map((at) => at * inch) },
  ties: { by: rod, spacing_mm: 600 },
  strongbacks: null,
  mass_kg_m: 60,
  footSealed: true,
  holdDown: null,
  brace: { ...brace, lands: "deadman" },
  ...more,
});
const wallMembers = [
  member("sheathing", 60, "rolling shear", { stuff: "3/4" }),
  member("studs", 70, "shear"),
  member("wales", 80, "bending", { pieces: 2, each: atHeights(waleHeights, [80, 76, 60, 30]) }),
  member("ties", 112, "tension", { each: atHeights(waleHeights, [112, 104, 80, 40]) }),
];

/** A wall battered 1:8 on both faces, that wants to rise. */
export const battered = drawable(
  "wall",
  "Bank wall",
  { kind: "wall", long_mm: 96 * inch, thick_mm: 8 * inch, high_mm: 72 * inch, batter: { a: 0.125, b: 0.125 } },
  wallForm(),
  sheetOf(wallMembers, 3, { lift: { up: 9.86, weight: 1.2, held: 0, needed: 8.6 } }),
  pressed(72 * inch),
);

/** One face against earth: braces take it all. */
export const oneSided = drawable(
  "back",
  "Back wall",
  { kind: "wall", long_mm: 96 * inch, thick_mm: 8 * inch, high_mm: 72 * inch, batter: { a: 0, b: 0 } },
  wallForm({
    ties: null,
    strongbacks: { stuff: lumber("2x6"), spacing_mm: 600, top: rod, foot: rod },
    brace: { ...brace, lands: "footing" },
    holdDown: down,
  }),
  sheetOf([...wallMembers.slice(0, 3), member("strongbacks", 92, "bending", { stuff: "2x6" }), member("braces", 130, "compression")], 4, {
    oneSided: true,
  }),
  pressed(72 * inch),
  { faces: [{ face: "b", against: "earth", visible: false }] },
);

/** A suspended slab on shores. */
export const deck = drawable(
  "slab",
  "Porch slab",
  { kind: "deck slab", long_mm: 120 * inch, wide_mm: 96 * inch, thick_mm: 6 * inch },
  {
    kind: "deck",
    sheathing: ply,
    joists: { stuff: lumber("2x6"), spacing_mm: 300 },
    stringers: { stuff: lumber("4x4"), spacing_mm: 48 * inch },
    shores: { stuff: lumber("4x4"), spacing_mm: 48 * inch, high_mm: 84 * inch, unbraced_mm: 42 * inch },
    mudsills: { long_mm: 36 * inch, wide_mm: 9.25 * inch, soil_kPa: 72, soilFrom: null, level: true, ground: "fresh fill" },
    buggies: false,
    brace,
  },
  sheetOf(
    [
      member("sheathing", 41, "sag", { stuff: "3/4", load: { value: 6.5, unit: "kPa" } }),
      member("joists", 62, "bending"),
      member("stringers", 88, "shear"),
      member("shores", 97, "compression"),
      member("mudsills", 76, "bearing"),
    ],
    3,
  ),
  pressed(6 * inch),
);

/** A barrel over shores. */
export const barrel = drawable(
  "vault",
  "Barrel",
  { kind: "barrel", long_mm: 3000, span_mm: 108 * inch, rise_mm: 36 * inch, thick_mm: 8 * inch },
  {
    kind: "deck",
    sheathing: { ...ply, kind: "boards", ply: null, boards: lumber("1x4") },
    joists: { stuff: lumber("2x4"), spacing_mm: 300 },
    stringers: { stuff: lumber("2x10"), spacing_mm: 800 },
    shores: { stuff: lumber("4x4"), spacing_mm: 30 * inch, high_mm: 75 * inch, unbraced_mm: null },
    mudsills: null,
    buggies: false,
    brace: null,
  },
  sheetOf(
    [
      member("sheathing", 85, "bending"),
      member("joists", 60, "bending"),
      member("stringers", 40, "shear"),
      member("shores", 30, "compression"),
    ],
    0,
  ),
  pressed(44 * inch),
);

/** A footing between boards, too wide to be drawn whole. */
export const footing = drawable(
  "footing",
  "Footing",
  { kind: "footing", long_mm: 6000, wide_mm: 3000, thick_mm: 300 },
  { kind: "edge", boards: lumber("2x12"), stakes: { spacing_mm: 900, by: rod }, holdDown: null },
  sheetOf([member("boards", 55, "bending", { stuff: "2x12" }), member("stakes", 108, "tension", { stuff: "" })], 1),
  pressed(300),
);

/** Stairs before any form is written. */
export const stair = drawable(
  "stair",
  "Stair",
  { kind: "stair", wide_mm: 900, steps: 5, riser_mm: 180, tread_mm: 280, thick_mm: 150 },
  null,
  null,
  null,
);

export const all: Readonly<Record<string, Drawable>> = { column, crowded, battered, "one-sided": oneSided, deck, barrel, footing, stair };
