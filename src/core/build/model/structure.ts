import type { EquipmentId, GroupId, PieceId, PlaceId, StockId } from "../../base";
import type { Amount, Source } from "./amounts";

/** What must get through a way or to a place. */
export type Passage =
  | { readonly kind: "sight" }
  | { readonly kind: "hand"; readonly depth_mm: number }
  | { readonly kind: "arm"; readonly depth_mm: number }
  | { readonly kind: "hose" }
  | { readonly kind: "person" }
  | {
      readonly kind: "unit";
      readonly long_mm: number;
      readonly wide_mm: number;
      readonly thick_mm: number;
      readonly mass_kg: number;
      readonly piece: PieceId | null;
    }
  | { readonly kind: "machine" };

export type PassageKind = Passage["kind"];

/**
 * A way into a place. `passes` lists kinds; person lets pass sight, hand, arm and hose at any depth, machine all that person does, arm what
 * a hand does to the same depth. hand and arm reach `depth_mm` at most. A unit passes an `opening` that its two smaller sides fit through.
 */
export interface Way {
  readonly id: string;
  /** "place.way" */
  readonly full: string;
  readonly name: string;
  readonly passes: readonly PassageKind[];
  readonly depth_mm: number | null;
  readonly opening_mm: { readonly wide: number; readonly high: number } | null;
  readonly longest_mm: number | null;
  readonly bears_kg: number | null;
  /** The place this way leads through, and what must get there (a person where not stated). */
  readonly through: { readonly place: PlaceId; readonly need: Passage } | null;
}

export interface Place {
  readonly id: PlaceId;
  readonly name: string;
  readonly ways: readonly Way[];
  /** People at once; null: no limit. */
  readonly room: number | null;
  readonly below: readonly PlaceId[];
  /** For drawing only: side, height order (higher is up), and the place whose lanes this one is bracketed with. */
  readonly side: string | null;
  readonly level: number;
  readonly layerOf: PlaceId | null;
  /** Its outline in the elevation, mm from the site's datum, y upwards; null: not drawn. */
  readonly elevation_mm: {
    readonly x: number;
    readonly y: number;
    readonly wide: number;
    readonly high: number;
    readonly shape: "box" | "arch" | "gable";
  } | null;
  readonly group: Membership | null;
}

export interface WayRef {
  readonly place: PlaceId;
  readonly way: string;
}

export interface Piece {
  readonly id: PieceId;
  readonly name: string;
  readonly fromStart: boolean;
  /** Goes by itself once this has passed since it was put up. */
  readonly goesAfter: Amount | null;
  readonly closes: readonly WayRef[];
  readonly fills: readonly PlaceId[];
  readonly makes: readonly WayRef[];
  /** Sets of pieces; each set can hold this one. Empty: nothing need hold it. */
  readonly heldBy: readonly (readonly PieceId[])[];
  /** Holds itself once it has this; without an amount it never does. */
  readonly holdsItself: Amount | null;
  /** Marked as holding itself without an amount: worth nothing, and said so. */
  readonly claimsToHoldItself: boolean;
  /** What taking it down must reach: its fasteners, and the way out for its own size. */
  readonly off: readonly Reach[];
  readonly uses: readonly StockUse[];
  readonly size_mm: { readonly long: number; readonly wide: number; readonly thick: number } | null;
  readonly mass_kg: number | null;
  /** concrete, earth, form, shore, brace, scaffold, hole, cover, other: for drawing and cautions; a hole is not dug weeks before it is needed. */
  readonly sort: string;
  readonly from: Source | null;
  readonly group: Membership | null;
  /** Steps that put it up and take it down (positions in `steps`); -1 where there is none. */
  readonly up: number;
  readonly down: number;
}

export interface StockUse {
  readonly of: StockId | EquipmentId;
  readonly number: number;
  /** Not returned when the piece comes down. */
  readonly loss: number;
}

export interface Reach {
  /** Any one of these is enough. Usually one. */
  readonly any: readonly { readonly place: PlaceId; readonly need: Passage }[];
}

export interface Group {
  readonly id: GroupId;
  readonly name: string;
  readonly count: number;
}

export interface Membership {
  readonly group: GroupId;
  /** 1-based. */
  readonly copy: number;
  /** Id of the member as written, before "#copy". */
  readonly written: string;
}
