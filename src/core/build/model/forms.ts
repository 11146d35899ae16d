import type { Source } from "./amounts";

/** Sawn lumber of one member, `pieces` side by side. `size` is the trade's name ("2x4"); a measured section replaces its dressed size. */
export interface Lumber {
  readonly size: string;
  readonly flat: boolean;
  readonly pieces: number;
  /** Species and grade as in the table of the concrete room; null: not known. */
  readonly grade: string | null;
  readonly salvaged: boolean;
  readonly measured_mm: { readonly wide: number; readonly deep: number } | null;
  readonly wet: boolean;
  readonly reused: boolean;
  readonly from: Source | null;
}

export interface Sheathing {
  readonly kind: "plywood" | "boards";
  /** Plywood: nominal inches as in the table ("3/4"); boards: null. */
  readonly ply: string | null;
  readonly plyClass: "I" | "II" | "structural I";
  readonly grain: "across" | "along";
  readonly boards: Lumber | null;
  readonly reused: boolean;
  readonly from: Source | null;
}

/** A bolt, tie, strap, stake or anchor: what one carries, already with its safety, and who says so. */
export interface Fastener {
  readonly name: string;
  readonly carries_kN: number;
  /** Side of the square washer or plate it pulls against wood with; absent: not written. */
  readonly washer_mm?: number;
  readonly from: Source | null;
}

export interface Brace {
  readonly stuff: Lumber;
  readonly spacing_mm: number;
  /** From its foot to the form, along the ground, and up the form. */
  readonly run_mm: number;
  readonly rise_mm: number;
  readonly lands: "stake" | "old work" | "footing" | "slab" | "deadman" | null;
  readonly foot: Fastener | null;
}

/** What keeps a form from lifting, each `spacing` along it (a column: all of them together). */
export interface HoldDown {
  readonly by: Fastener;
  readonly spacing_mm: number | null;
  readonly number: number;
}

export interface ColumnFormSpec {
  readonly kind: "column";
  readonly sheathing: Sheathing;
  /** Upright members between sheathing and bands; null: the sheathing spans from band to band. */
  readonly battens: { readonly stuff: Lumber; readonly spacing_mm: number } | null;
  readonly bands: { readonly stuff: Lumber; readonly at_mm: readonly number[]; readonly bolt: Fastener | null };
  readonly mass_kg: number | null;
  readonly footSealed: boolean;
  readonly holdDown: HoldDown | null;
  readonly brace: Brace | null;
}

export interface WallFormSpec {
  readonly kind: "wall";
  readonly sheathing: Sheathing;
  readonly studs: { readonly stuff: Lumber; readonly spacing_mm: number };
  readonly wales: { readonly stuff: Lumber; readonly at_mm: readonly number[] };
  /** Null: no ties through the wall; a face without an opposite needs braces, one with it strongbacks tied over the top and at the foot. */
  readonly ties: { readonly by: Fastener; readonly spacing_mm: number } | null;
  readonly strongbacks: { readonly stuff: Lumber; readonly spacing_mm: number; readonly top: Fastener; readonly foot: Fastener } | null;
  /** Mass of one face for each metre of wall, kg/m. */
  readonly mass_kg_m: number | null;
  readonly footSealed: boolean;
  readonly holdDown: HoldDown | null;
  readonly brace: Brace | null;
}

export interface DeckFormSpec {
  readonly kind: "deck";
  readonly sheathing: Sheathing;
  readonly joists: { readonly stuff: Lumber; readonly spacing_mm: number };
  readonly stringers: { readonly stuff: Lumber; readonly spacing_mm: number };
  readonly shores: {
    readonly stuff: Lumber;
    readonly spacing_mm: number;
    readonly high_mm: number;
    /** Longest length without a brace in its weak direction; null: the whole height. */
    readonly unbraced_mm: number | null;
  };
  readonly mudsills: {
    readonly long_mm: number;
    readonly wide_mm: number;
    /** The plank, lying on its wide face; absent or null: not written. */
    readonly stuff?: Lumber | null;
    readonly soil_kPa: number | null;
    readonly soilFrom: Source | null;
    readonly level: boolean;
    readonly ground: "firm" | "rock" | "slab" | "fresh fill" | "frozen" | null;
  } | null;
  readonly buggies: boolean;
  readonly brace: Brace | null;
}

/** Boards on stakes along an edge: footings, slabs on the ground. */
export interface EdgeFormSpec {
  readonly kind: "edge";
  readonly boards: Lumber;
  readonly stakes: { readonly spacing_mm: number; readonly by: Fastener | null };
  readonly holdDown: HoldDown | null;
}

export type FormSpec = ColumnFormSpec | WallFormSpec | DeckFormSpec | EdgeFormSpec;
