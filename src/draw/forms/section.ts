import type { Role } from "../marks/roles";

/** A point of the section: mm from its middle and above its foot, and px on the paper from there (signs keep their size at every scale). */
export type At = readonly [x_mm: number, y_mm: number, dx_px?: number, dy_px?: number];

/** Something drawn by its outline or as a line. */
export interface Solid {
  readonly id: string;
  readonly role: Role;
  readonly layer: number;
  readonly at: readonly At[];
  readonly closed: boolean;
}

export interface TagLine {
  readonly text: string;
  /** What gives first. */
  readonly first: boolean;
  /** More than it may carry. */
  readonly over: boolean;
}

/** What is written beside a member, with a thin line to it. */
export interface Tag {
  readonly id: string;
  /** Where the line to it begins. */
  readonly at: At;
  /** Height above the foot, written in front; null where it says nothing. */
  readonly height_mm: number | null;
  readonly lines: readonly TagLine[];
}

/** A line of text below the drawing. */
export interface Note {
  readonly text: string;
  readonly loud: boolean;
}

/** The form cut through, before it has a scale. */
export interface Section {
  readonly solids: readonly Solid[];
  readonly tags: readonly Tag[];
  readonly left_mm: number;
  readonly right_mm: number;
  readonly bottom_mm: number;
  readonly top_mm: number;
  /** Foot of the fresh concrete: where the diagram of its pressure stands. */
  readonly foot_mm: number;
  readonly notes: readonly Note[];
}

/** How much paper a section may take. */
export interface Room {
  /** The widest a section of that height may be without being drawn smaller, mm. */
  wide_mm(high_mm: number): number;
  /** Wide enough that a brace is worth a smaller scale. */
  readonly roomy: boolean;
}

/** Layers of the section from back to front. */
export const depth = { ground: 10, concrete: 12, side: 20, upright: 22, across: 26, front: 30, sign: 34, cut: 40 } as const;

export const solid = (id: string, role: Role, layer: number, at: readonly At[]): Solid => ({ id, role, layer, at, closed: true });
export const stroke = (id: string, role: Role, layer: number, at: readonly At[]): Solid => ({ id, role, layer, at, closed: false });
export const block = (id: string, role: Role, layer: number, x0: number, y0: number, x1: number, y1: number): Solid =>
  solid(id, role, layer, [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);
