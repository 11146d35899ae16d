import { isWithin, limits } from "../base";
import type { ElementShape, Pour, PourElement } from "../build";
import { facesOf, footThickness_mm, formed_m2, netVolume_m3, plan_m2 } from "../concrete";
import { isLaid, isStanding } from "./shapes";

/** An element that stands: sides on which fresh concrete presses by its depth. */
export interface Upright {
  readonly high_mm: number;
  readonly long_mm: number;
  /** At its top. */
  readonly wide_mm: number;
  readonly batter: { readonly a: number; readonly b: number };
  /** Fresh concrete that goes on top of it in the same pour. */
  readonly over_mm: number;
}

const plumb = { a: 0, b: 0 };

/** Run over rise. */
const steepest = 2;

/** Null for what lies on its form: barrels and stairs. */
export function uprightOf(shape: ElementShape): Upright | null {
  switch (shape.kind) {
    case "column":
    case "pier":
      return { high_mm: shape.high_mm, long_mm: shape.long_mm, wide_mm: shape.wide_mm, batter: plumb, over_mm: 0 };
    case "wall":
      return { high_mm: shape.high_mm, long_mm: shape.long_mm, wide_mm: shape.thick_mm, batter: shape.batter, over_mm: 0 };
    case "barrel":
    case "stair":
      return null;
    default:
      return { high_mm: shape.thick_mm, long_mm: shape.long_mm, wide_mm: shape.wide_mm, batter: plumb, over_mm: 0 };
  }
}

/**
 * What stands, with what is laid on it in the same pour: a wait between them earns nothing, so its head reaches to the top of the slab, or to the crown of a
 * barrel.
 */
export function uprightIn(pour: Pour, { shape }: PourElement): Upright | null {
  const upright = uprightOf(shape);
  if (upright === null || !isStanding(shape)) return upright;
  const over = pour.elements.map(({ shape: laid }) => {
    if (!isLaid(laid) || faultyDimension(laid) !== null) return 0;
    return laid.kind === "barrel" ? laid.rise_mm + laid.thick_mm : laid.kind === "deck slab" ? laid.thick_mm : 0;
  });
  return { ...upright, over_mm: Math.max(0, ...over) };
}

/** The key of a dimension that is no positive figure, or none that is poured; null where all are sound. */
export function faultyDimension(shape: ElementShape): string | null {
  for (const [key, value] of Object.entries(shape)) {
    if (key === "steps" && !isWithin(limits.alike, value as number)) return key;
    if (key.endsWith("_mm") && !isWithin(limits.concreteSize, value as number)) return key.replace(/_mm$/, "");
  }
  if (shape.kind !== "wall") return null;
  if (!(Math.abs(shape.batter.a) <= steepest && Math.abs(shape.batter.b) <= steepest)) return "batter";
  return footThickness_mm(shape) > 0 ? null : "thick";
}

/** Whether faces `a` and `b` of an element are formed, and what the other is cast against where only one is. */
export function formedSides(element: PourElement): {
  readonly a: boolean;
  readonly b: boolean;
  readonly other: "earth" | "old work" | null;
} {
  const faces = facesOf(element.shape, element.faces);
  const against = (name: "a" | "b") => faces.find(({ face }) => face === name)?.against ?? "form";
  const [a, b] = [against("a"), against("b")];
  const bare = a === "form" ? b : a;
  return { a: a === "form", b: b === "form", other: bare === "earth" || bare === "old work" ? bare : null };
}

/** Whether anything of it that stands up is formed: without, nothing of its pressure is a form's. */
export function sidesAreFormed(element: PourElement): boolean {
  return facesOf(element.shape, element.faces).some(({ face, against }) => against === "form" && face !== "soffit" && face !== "top");
}

export interface Measures {
  readonly volume_m3: number;
  readonly plan_m2: number;
  readonly mass_kg: number;
  readonly formArea_m2: number;
}

/** Of one element whose dimensions are sound. */
export function measures(element: PourElement, weight_kg_m3: number): Measures {
  const volume_m3 = Math.max(0, netVolume_m3(element.shape, element.rebates));
  return {
    volume_m3,
    plan_m2: plan_m2(element.shape),
    mass_kg: volume_m3 * weight_kg_m3,
    formArea_m2: formed_m2(element.shape, element.faces),
  };
}
