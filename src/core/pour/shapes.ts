import type { ElementShape, PourElement } from "../build";

/** Columns, piers and walls: filled upwards between sides. */
export function isStanding(shape: ElementShape): boolean {
  return shape.kind === "column" || shape.kind === "pier" || shape.kind === "wall";
}

/** What lies on something that stands. */
export function isLaid(shape: ElementShape): boolean {
  return shape.kind === "deck slab" || shape.kind === "barrel";
}

/** Smallest dimension of the concrete, mm: of a battered wall at its thinner end. */
export function leastDimension_mm(shape: ElementShape): number {
  switch (shape.kind) {
    case "column":
    case "pier":
      return shape.round ? Math.min(shape.long_mm, shape.high_mm) : Math.min(shape.long_mm, shape.wide_mm, shape.high_mm);
    case "wall":
      return Math.min(shape.thick_mm, shape.thick_mm + (shape.batter.a + shape.batter.b) * shape.high_mm);
    case "barrel":
    case "stair":
      return shape.thick_mm;
    default:
      return Math.min(shape.thick_mm, shape.long_mm, shape.wide_mm);
  }
}

/** Whether its underside, or the side named, stays visible. */
export function staysVisible(element: PourElement, face: "soffit"): boolean {
  return element.faces.some((f) => f.face === face && f.visible);
}
