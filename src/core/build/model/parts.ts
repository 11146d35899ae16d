import type { PieceId, PlaceId, StepId } from "../../base";

export type SolidShape = "box" | "cylinder" | "wedge" | "vault" | "gable" | "stairs";

/**
 * A body of the structure drawing. `at_mm` is the middle of its base (of the box around it) from the site's datum: x to the right, y away from the
 * viewer, z up. `turn_deg` turns it about the upright line through that point, anticlockwise seen from above. Before the turn `long` lies along x, `wide` along y.
 * A wedge is `high` at its near x end and nothing at the far one; a vault is half a tube along x of clear span `wide`, clear
 * rise `high` and `thick_mm`, which stands outside of these, level where it springs; a gable is a
 * prism with its ridge along x; stairs rise along x in `steps` risers.
 */
export interface Solid {
  readonly id: string;
  readonly name: string;
  readonly shape: SolidShape;
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
  readonly size_mm: { readonly long: number; readonly wide: number; readonly high: number };
  readonly thick_mm: number | null;
  readonly steps: number | null;
  readonly turn_deg: number;
  /** The step that places it, where it is concrete. */
  readonly pour: StepId | null;
  /** What it is once it stands (its concrete, its timber, its earth). */
  readonly pieces: readonly PieceId[];
  /** What forms it or props it: it is formed while these stand, stripped once all of them are gone. */
  readonly form: readonly PieceId[];
  /** Once these are done its bars are in. */
  readonly bars: readonly StepId[];
  /** What a click on it selects. */
  readonly places: readonly PlaceId[];
}

export type Answer = string | number | boolean | readonly string[];

/** One use of a structure kit. `made` lists by list name the ids that came of it, some of which may have gone since. */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly kit: string;
  readonly answers: Readonly<Record<string, Answer>>;
  readonly made: Readonly<Record<string, readonly string[]>>;
}
