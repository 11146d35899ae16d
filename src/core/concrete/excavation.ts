/**
 * Trenches, after OSHA 29 CFR 1926 Subpart P (read in lectures and safety pages quoting it). US units as published. A competent person on site classes
 * the soil and decides; local rules may ask for more.
 */
import type { Range } from "./range";

export type Soil = "rock" | "A" | "B" | "C";

/** Deeper than this a slope is designed by an engineer (Appendix B), and no figure is given here. */
export const trenchDepth: Range = {
  name: "depth of the cut",
  least: 0.1,
  most: 20,
  unit: "ft",
  source: "29 CFR 1926 Subpart P, Appendix B",
};

/** Depths from which a cut is protected, and has a way out within 25 ft, ft. */
export const protectFrom_ft = 5;
export const ladderFrom_ft = 4;

/** Ground once dug is B at best. */
export function onceDug(soil: Soil): Soil {
  return soil === "A" ? "B" : soil;
}

/** Horizontal run for each foot of depth (Appendix B, Table B-1). Ground once dug is B at best; short term A (24 h, 12 ft) may be 1/2. */
export const slope: Readonly<Record<Soil, number>> = { rock: 0, A: 0.75, B: 1, C: 1.5 };

export interface TrenchRules {
  /** Sloped, shored or shielded: from 5 ft, or at any depth where a competent person sees a danger. */
  readonly protect: boolean;
  /** A ladder or ramp within 25 ft of everyone: from 4 ft. */
  readonly ladder: boolean;
  /** Designed by an engineer: over 20 ft. */
  readonly engineer: boolean;
  /** Spoil kept back from the edge, ft. */
  readonly spoilBack_ft: number;
}

export function trenchRules(deep_ft: number, soil: Soil): TrenchRules {
  return {
    protect: soil !== "rock" && deep_ft >= protectFrom_ft,
    ladder: deep_ft >= ladderFrom_ft,
    engineer: deep_ft > trenchDepth.most,
    spoilBack_ft: 2,
  };
}

/** Width at the top of a sloped trench, ft; both sides. */
export function topWidth_ft(deep_ft: number, bottom_ft: number, soil: Soil): number {
  return bottom_ft + 2 * slope[soil] * deep_ft;
}

/** Bank volume of a foot of sloped trench, ft3. */
export function trenchVolume_ft3_ft(deep_ft: number, bottom_ft: number, soil: Soil): number {
  return (deep_ft * (bottom_ft + topWidth_ft(deep_ft, bottom_ft, soil))) / 2;
}

/** Width a form needs: itself, its braces on each side they stand, and room to work (2 ft, from memory). */
export function formTrench_ft(form_ft: number, braceEachSide_ft: number, working_ft = 2): number {
  return form_ft + 2 * (braceEachSide_ft + working_ft);
}

/** Loose and compacted volume of one bank volume (Army FM 5-430, from memory). */
export const swell = {
  sand: { loose: 1.11, compacted: 0.95 },
  "common earth": { loose: 1.25, compacted: 0.9 },
  clay: { loose: 1.43, compacted: 0.9 },
  "blasted rock": { loose: 1.5, compacted: 1.3 },
} as const;

export type Earth = keyof typeof swell;

/**
 * Bank volume of a pit with a level rectangular floor whose sides all lean out `run` for each unit of depth, in the cube of the lengths' unit (prismoid,
 * exact): h/6 (floor + 4 middle + top).
 */
export function pitVolume(long: number, wide: number, deep: number, run: number): number {
  const at = (out: number) => (long + 2 * out) * (wide + 2 * out);
  return (deep / 6) * (at(0) + 4 * at((run * deep) / 2) + at(run * deep));
}
