import type { Part, Solid } from "../model";
import type { Member } from "../schema/document";
import type { Notes } from "./notes";
import { inside, length_mm, spot } from "./quantities";

const none: readonly never[] = [];

/** With its references still as written. */
export interface SolidDraft extends Omit<Solid, "pour" | "pieces" | "form" | "bars" | "places"> {
  readonly pour: string | null;
  readonly pieces: readonly string[];
  readonly form: readonly string[];
  readonly bars: readonly string[];
  readonly places: readonly string[];
}

export function readSolid(raw: Member<"solids">, notes: Notes): SolidDraft {
  const at = spot(notes, "at");
  const size = spot(notes, "size");
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    shape: raw.shape ?? "box",
    at_mm: {
      x: length_mm(inside(at, "x"), "coordinate", raw.at.x),
      y: length_mm(inside(at, "y"), "coordinate", raw.at.y),
      z: length_mm(inside(at, "z"), "coordinate", raw.at.z),
    },
    size_mm: {
      long: length_mm(inside(size, "long"), "size", raw.size.long),
      wide: length_mm(inside(size, "wide"), "size", raw.size.wide),
      high: length_mm(inside(size, "high"), "size", raw.size.high),
    },
    thick_mm: raw.thick === undefined ? null : length_mm(spot(notes, "thick"), "size", raw.thick),
    steps: raw.steps ?? null,
    turn_deg: raw.turn ?? 0,
    pour: raw.pour ?? null,
    pieces: raw.pieces ?? none,
    form: raw.form ?? none,
    bars: raw.bars ?? none,
    places: raw.places ?? none,
  };
}

/** What a kit was told and what it made; `made` may name members that have gone since. */
export const readPart = (raw: Member<"parts">): Part => ({
  id: raw.id,
  name: raw.name ?? raw.id,
  kit: raw.kit,
  answers: raw.answers ?? {},
  made: raw.made ?? {},
});
