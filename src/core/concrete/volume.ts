/**
 * Volume and faces of what is poured: plane and solid geometry, exact, dimensions in mm. Areas in m2, volumes in m3. A dimension that is no positive
 * number gives a figure that is none either: whoever reads a document checks dimensions before it asks.
 */
export type PouredShape =
  | {
      readonly kind: "column" | "pier";
      readonly long_mm: number;
      readonly wide_mm: number;
      readonly high_mm: number;
      readonly round: boolean;
    }
  | {
      readonly kind: "wall";
      readonly long_mm: number;
      /** At the top. */
      readonly thick_mm: number;
      readonly high_mm: number;
      /** Run over rise of each face, positive where the wall is thicker at its foot. */
      readonly batter: { readonly a: number; readonly b: number };
    }
  | { readonly kind: "slab" | "deck slab" | "footing"; readonly long_mm: number; readonly wide_mm: number; readonly thick_mm: number }
  /** A shell of the same thickness everywhere over a circular segment, cut square to the soffit where it springs. */
  | { readonly kind: "barrel"; readonly long_mm: number; readonly span_mm: number; readonly rise_mm: number; readonly thick_mm: number }
  /** Steps on a waist whose thickness is measured square to the soffit, cut square at both ends. */
  | {
      readonly kind: "stair";
      readonly wide_mm: number;
      readonly steps: number;
      readonly riser_mm: number;
      readonly tread_mm: number;
      readonly thick_mm: number;
    };

export interface LeftOut {
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly deep_mm: number;
  readonly number: number;
}

/** Half the angle of the circle a segment belongs to, and its radius; a flat one (rise 0) has none. */
function circle(span_mm: number, rise_mm: number): { half: number; radius_mm: number } {
  return { half: 2 * Math.atan2(2 * rise_mm, span_mm), radius_mm: (span_mm ** 2 / 4 + rise_mm ** 2) / (2 * rise_mm) };
}

/** Length of the arc of a circular segment, mm. */
export function arc_mm(span_mm: number, rise_mm: number): number {
  if (rise_mm === 0) return span_mm;
  const { half, radius_mm } = circle(span_mm, rise_mm);
  return 2 * half * radius_mm;
}

/** Cross-section of a barrel's shell: the ring between two circles, α((r+t)² − r²). */
function shell_mm2(span_mm: number, rise_mm: number, thick_mm: number): number {
  if (rise_mm === 0) return span_mm * thick_mm;
  const { half, radius_mm } = circle(span_mm, rise_mm);
  return half * thick_mm * (2 * radius_mm + thick_mm);
}

/** Side view of a stair: triangles under the nosings and the waist along the slope. */
function stairSide_mm2(steps: number, riser_mm: number, tread_mm: number, thick_mm: number): number {
  return steps * ((riser_mm * tread_mm) / 2 + thick_mm * Math.hypot(riser_mm, tread_mm));
}

const disc_mm2 = (across_mm: number): number => (Math.PI * across_mm ** 2) / 4;

/** Thickness of a wall at its foot, mm. */
export function footThickness_mm(wall: { thick_mm: number; high_mm: number; batter: { a: number; b: number } }): number {
  return wall.thick_mm + (wall.batter.a + wall.batter.b) * wall.high_mm;
}

/** Of one element, nothing left out. */
export function solid_m3(shape: PouredShape): number {
  return solid_mm3(shape) / 1e9;
}

function solid_mm3(shape: PouredShape): number {
  switch (shape.kind) {
    case "column":
    case "pier":
      return (shape.round ? disc_mm2(shape.long_mm) : shape.long_mm * shape.wide_mm) * shape.high_mm;
    case "wall":
      return (shape.long_mm * shape.high_mm * (shape.thick_mm + footThickness_mm(shape))) / 2;
    case "barrel":
      return shell_mm2(shape.span_mm, shape.rise_mm, shape.thick_mm) * shape.long_mm;
    case "stair":
      return stairSide_mm2(shape.steps, shape.riser_mm, shape.tread_mm, shape.thick_mm) * shape.wide_mm;
    default:
      return shape.long_mm * shape.wide_mm * shape.thick_mm;
  }
}

/** What rebates, windows and blocks of foam take away, m3. */
function leftOut_m3(rebates: readonly LeftOut[]): number {
  return rebates.reduce((sum, r) => sum + (r.long_mm * r.wide_mm * r.deep_mm * r.number) / 1e9, 0);
}

/** Of one element, net. Not above zero when more is left out than there is: the caller says so. */
export function netVolume_m3(shape: PouredShape, rebates: readonly LeftOut[]): number {
  return solid_m3(shape) - leftOut_m3(rebates);
}

/** The smallest level section, where concrete rises fastest: the top of a battered wall. */
export function plan_m2(shape: PouredShape): number {
  switch (shape.kind) {
    case "column":
    case "pier":
      return (shape.round ? disc_mm2(shape.long_mm) : shape.long_mm * shape.wide_mm) / 1e6;
    case "wall":
      return (shape.long_mm * Math.min(shape.thick_mm, footThickness_mm(shape))) / 1e6;
    case "barrel":
      return (shape.long_mm * shape.span_mm) / 1e6;
    case "stair":
      return (shape.wide_mm * shape.steps * shape.tread_mm) / 1e6;
    default:
      return (shape.long_mm * shape.wide_mm) / 1e6;
  }
}

/** What it stands on: the foot of a wall, of a column, the underside of a footing or slab. */
export function foot_m2(shape: PouredShape): number {
  return shape.kind === "wall" ? (shape.long_mm * footThickness_mm(shape)) / 1e6 : plan_m2(shape);
}
