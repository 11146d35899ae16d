/** The faces of what is poured, which of them are formed, and what of its top is floated. Geometry, exact; areas in m2. */
import { arc_mm, footThickness_mm, type PouredShape, plan_m2, solid_m3 } from "./volume";

export type PouredFaceName = "a" | "b" | "ends" | "sides" | "edges" | "soffit" | "top";
export type Against = "form" | "earth" | "old work" | "free";

export interface PouredFace {
  readonly face: PouredFaceName;
  readonly against: Against;
  readonly visible: boolean;
}

/** One face with its whole area: openings are formed by pieces of their own, and the panel runs on behind them. */
export interface FaceArea {
  readonly face: PouredFaceName;
  readonly area_m2: number;
  readonly against: Against;
  readonly visible: boolean;
}

type Bare = readonly [face: PouredFaceName, area_m2: number, usual: Against];

const around = (long_mm: number, wide_mm: number, high_mm: number): Bare[] => [
  ["a", (long_mm * high_mm) / 1e6, "form"],
  ["b", (long_mm * high_mm) / 1e6, "form"],
  ["ends", (2 * wide_mm * high_mm) / 1e6, "form"],
];

function bare(shape: PouredShape): Bare[] {
  switch (shape.kind) {
    case "column":
    case "pier":
      return shape.round
        ? [
            ["sides", (Math.PI * shape.long_mm * shape.high_mm) / 1e6, "form"],
            ["top", plan_m2(shape), "free"],
          ]
        : [...around(shape.long_mm, shape.wide_mm, shape.high_mm), ["top", plan_m2(shape), "free"]];
    case "wall":
      return [
        ["a", (shape.long_mm * shape.high_mm * Math.hypot(1, shape.batter.a)) / 1e6, "form"],
        ["b", (shape.long_mm * shape.high_mm * Math.hypot(1, shape.batter.b)) / 1e6, "form"],
        ["ends", (shape.high_mm * (shape.thick_mm + footThickness_mm(shape))) / 1e6, "form"],
        ["top", (shape.long_mm * shape.thick_mm) / 1e6, "free"],
      ];
    case "barrel":
      return [
        ["soffit", (arc_mm(shape.span_mm, shape.rise_mm) * shape.long_mm) / 1e6, "form"],
        ["ends", (2 * solid_m3(shape) * 1e3) / shape.long_mm, "form"],
        ["top", outer_m2(shape), "free"],
      ];
    case "stair":
      return [
        ["soffit", (shape.wide_mm * shape.steps * Math.hypot(shape.riser_mm, shape.tread_mm)) / 1e6, "form"],
        ["edges", (shape.wide_mm * shape.steps * shape.riser_mm) / 1e6, "form"],
        ["sides", (2 * solid_m3(shape) * 1e3) / shape.wide_mm, "form"],
        ["top", plan_m2(shape), "free"],
      ];
    default:
      return [
        ...around(shape.long_mm, shape.wide_mm, shape.thick_mm),
        ["soffit", plan_m2(shape), shape.kind === "deck slab" ? "form" : "earth"],
        ["top", plan_m2(shape), "free"],
      ];
  }
}

/** The outer, longer arc of a shell: the inner one grown by the angle it turns through. */
function outer_m2(shape: Extract<PouredShape, { kind: "barrel" }>): number {
  const turned = 4 * Math.atan2(2 * shape.rise_mm, shape.span_mm);
  return ((arc_mm(shape.span_mm, shape.rise_mm) + turned * shape.thick_mm) * shape.long_mm) / 1e6;
}

/** "sides" and "edges" mean all that go around, unless one of them is named by itself. */
function named(faces: readonly PouredFace[], face: PouredFaceName): PouredFace | undefined {
  const own = faces.find((f) => f.face === face);
  if (own || (face !== "a" && face !== "b" && face !== "ends")) return own;
  return faces.find((f) => f.face === "sides" || f.face === "edges");
}

/** Every face of a shape, with what it is cast against: as named, else formed, a top free, the underside of a slab or footing on earth. */
export function facesOf(shape: PouredShape, faces: readonly PouredFace[]): FaceArea[] {
  return bare(shape).map(([face, area_m2, usual]) => {
    const said = named(faces, face);
    return { face, area_m2, against: said?.against ?? usual, visible: said?.visible ?? false };
  });
}

/** What touches a form, m2. */
export function formed_m2(shape: PouredShape, faces: readonly PouredFace[]): number {
  return facesOf(shape, faces).reduce((sum, f) => sum + (f.against === "form" ? f.area_m2 : 0), 0);
}

/**
 * What is floated and trowelled, m2: free tops of slabs, vaults and stairs, and any other free top that stays visible. Tops of columns, walls and footings
 * are struck off while they are placed.
 */
export function finished_m2(shape: PouredShape, faces: readonly PouredFace[]): number {
  const floated = shape.kind === "slab" || shape.kind === "deck slab" || shape.kind === "barrel" || shape.kind === "stair";
  return facesOf(shape, faces).reduce(
    (sum, f) => sum + (f.face === "top" && f.against === "free" && (floated || f.visible) ? f.area_m2 : 0),
    0,
  );
}
