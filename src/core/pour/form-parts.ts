import { toModel } from "../base";
import type { FormSpec, Lumber, Sheathing } from "../build";
import { across, sectionOf } from "../concrete";
import type { Part } from "./cut-list";
import { inches, mmOfInches } from "./form-units";

/** Lengths of one size of lumber that a form is cut from; a run goes on over its supports and may be spliced there. */
export interface LumberNeed {
  readonly size: string;
  readonly long_mm: number;
  readonly number: number;
  readonly run: boolean;
}

/** How far a member stands out from what it holds, mm: its depth as it is used; 0 for a size in no table. */
export function deep_mm(stuff: Lumber): number {
  const measured = stuff.measured_mm === null ? null : { wide: inches(stuff.measured_mm.wide), deep: inches(stuff.measured_mm.deep) };
  return mmOfInches(sectionOf(stuff.size, stuff.flat, measured)?.deep_in ?? 0);
}

/** Across its wide face, mm. */
export function wideFace_mm(stuff: Lumber): number {
  return Math.max(deep_mm({ ...stuff, flat: false }), deep_mm({ ...stuff, flat: true }));
}

export function thick_mm(sheathing: Sheathing): number {
  if (sheathing.kind === "boards") return sheathing.boards === null ? 0 : deep_mm({ ...sheathing.boards, flat: true });
  return mmOfInches(sheathing.ply === null ? 0 : (across[sheathing.ply]?.thick_in ?? 0));
}

/** A face of sheathing: its extent square to the members it lies on, and along them. */
export interface Skin {
  readonly name: string;
  readonly across_mm: number;
  readonly along_mm: number;
  readonly number: number;
}

/** Plywood with its face grain across or along its supports, as written; boards across them, each as a run. */
export function skin(sheathing: Sheathing, faces: readonly Skin[]): { panels: Part[]; boards: LumberNeed[] } {
  if (sheathing.kind === "plywood") {
    const along = sheathing.grain === "along";
    const panels = faces.map(({ name, across_mm, along_mm, number }) => ({
      name,
      long_mm: along ? along_mm : across_mm,
      wide_mm: along ? across_mm : along_mm,
      number,
      turns: false,
    }));
    return { panels, boards: [] };
  }
  const { boards } = sheathing;
  const board = boards === null ? 0 : wideFace_mm(boards);
  if (boards === null || board === 0) return { panels: [], boards: [] };
  return { panels: [], boards: faces.map((f) => lumber(boards, f.across_mm, f.number * Math.ceil(f.along_mm / board - 1e-6), true)) };
}

export const lumber = (stuff: Lumber, long_mm: number, number: number, run = false): LumberNeed => ({
  size: stuff.size,
  long_mm,
  number: number * stuff.pieces,
  run,
});

/** The stock lumber is sold in, mm: 8 to 16 ft by twos (common practice, no source). */
export const lumberStock_mm: readonly number[] = [8, 10, 12, 14, 16].map((long) => toModel("length", long, "ft"));

/** How far a form stands out from the concrete, mm, its braces not counted; a board and its stake for an edge form. */
export function formDepth_mm(form: FormSpec): number {
  switch (form.kind) {
    case "column":
      return thick_mm(form.sheathing) + (form.battens === null ? 0 : deep_mm(form.battens.stuff)) + deep_mm(form.bands.stuff);
    case "wall":
      return thick_mm(form.sheathing) + deep_mm(form.studs.stuff) + deep_mm(form.wales.stuff);
    case "edge":
      return 2 * deep_mm({ ...form.boards, flat: true });
    default:
      return 0;
  }
}
