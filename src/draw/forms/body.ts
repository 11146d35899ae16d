import type { PourElement } from "../../core/build";

/** The fresh concrete cut through: the outline of what stands between side forms. */
export interface Body {
  readonly high_mm: number;
  /** Widest place. */
  readonly wide_mm: number;
  /** Faces to the left and right at a height above the foot, mm from the middle. */
  left_mm(y_mm: number): number;
  right_mm(y_mm: number): number;
}

function straight(wide_mm: number, high_mm: number): Body {
  return { high_mm, wide_mm, left_mm: () => -wide_mm / 2, right_mm: () => wide_mm / 2 };
}

const isFormed = (element: PourElement, face: "a" | "b"): boolean =>
  ["form", "free"].includes(element.faces.find((one) => one.face === face)?.against ?? "form");

/** The face of a wall that is drawn on the left, where braces stand: the first one, unless only the other has a form. */
const leftFace = (element: PourElement): "a" | "b" => (!isFormed(element, "a") && isFormed(element, "b") ? "b" : "a");

/** Null for what has no straight sides: a barrel, a stair. */
export function bodyOf(element: PourElement): Body | null {
  const { shape } = element;
  switch (shape.kind) {
    case "column":
    case "pier":
      return straight(shape.long_mm, shape.high_mm);
    case "wall": {
      const { thick_mm, high_mm, batter } = shape;
      const half = thick_mm / 2;
      const left = leftFace(element);
      const right = left === "a" ? "b" : "a";
      return {
        high_mm,
        wide_mm: thick_mm + (Math.abs(batter.a) + Math.abs(batter.b)) * high_mm,
        left_mm: (y) => -half - batter[left] * (high_mm - y),
        right_mm: (y) => half + batter[right] * (high_mm - y),
      };
    }
    case "slab":
    case "deck slab":
    case "footing":
      return straight(shape.wide_mm, shape.thick_mm);
    default:
      return null;
  }
}

/** What a side is cast against. Sides of columns and slabs are one face, those of a wall two. */
export function against(element: PourElement, side: "left" | "right"): "form" | "earth" | "old work" | "free" {
  const { shape, faces } = element;
  const names = shape.kind === "wall" ? [(side === "left") === (leftFace(element) === "a") ? "a" : "b"] : ["sides", "edges"];
  return faces.find(({ face }) => names.includes(face))?.against ?? "form";
}
