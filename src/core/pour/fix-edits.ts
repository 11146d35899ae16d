import { type Display, type DocumentEdit, formatForce, formatLength, parseQuantity } from "../base";
import type { Pour, PourElement } from "../build";

/** Where the form of an element stands in the document, and below it. */
export type Spot = (...below: readonly string[]) => readonly string[];

export const formAt =
  (pour: Pour, element: PourElement): Spot =>
  (...below) => ["pours", `id=${pour.id}`, "elements", `id=${element.id}`, "form", ...below];

export const heldAt = (pour: Pour, element: PourElement): readonly string[] => [
  "pours",
  `id=${pour.id}`,
  "elements",
  `id=${element.id}`,
  "held",
];

/** A length as it is written in the site's units, and what that reads as: a fix is computed with what will be read. */
export interface Written {
  readonly text: string;
  readonly mm: number;
}

export function written(length_mm: number, display: Display): Written {
  const text = formatLength(length_mm, display);
  return { text, mm: parseQuantity("length", text) ?? length_mm };
}

export interface WrittenForce {
  readonly text: string;
  readonly kN: number;
}

/** A figure to buy by: up to the next 100 lb or half a kN. */
export function writtenForce(least_kN: number, display: Display): WrittenForce {
  const unit_kN = display === "us" ? 100 * 0.0044482216152605 : 0.5;
  const text = formatForce(Math.ceil(least_kN / unit_kN - 1e-9) * unit_kN, display);
  return { text, kN: parseQuantity("force", text) ?? least_kN };
}

/** New lumber of another size in the place of what is written; what was measured of the old piece goes with it. */
export function lumberEdits(at: Spot, key: readonly string[], size: string, pieces: number, wasMeasured: boolean): DocumentEdit[] {
  return [
    { path: at(...key, "size"), value: size },
    { path: at(...key, "pieces"), value: pieces },
    ...(wasMeasured ? [{ path: at(...key, "measured") }] : []),
  ];
}
