/**
 * Lateral pressure of fresh concrete, ACI 347R-14 section 4.2.2 in US customary units (as ACI 347-04, Eq. 2.1 to 2.4).
 * Read in public copies and a university lecture; the -01 and older editions used other thresholds and caps and are not offered.
 * The metric formulas of the same document are a published pair of their own (pressure-aci-si.ts) and are not converted from these.
 */
import { type Checked, checked } from "./range";

export interface AciPour_us {
  readonly shape: "column" | "wall";
  /** Depth of fresh concrete from the top to the foot, ft. */
  readonly height_ft: number;
  /** Rise of the concrete in the form, ft/h. */
  readonly rise_ft_h: number;
  /** Temperature of the concrete when placed, °F (not of the air). */
  readonly concrete_F: number;
  /** Unit weight, lb/ft3. */
  readonly weight_pcf: number;
  /** Chemistry coefficient, Table 2.2: see `chemistry`. */
  readonly chemistry: number;
  /** Slump after admixtures, in. */
  readonly slump_in: number;
  /** Depth to which it is vibrated, ft. */
  readonly vibrated_ft: number;
  readonly external: boolean;
  readonly fromBase: boolean;
}

export const aciRanges_us = {
  height: { name: "height of the fresh concrete", least: 0.1, most: 60, unit: "ft", source: "own bounds: a form, not a shaft" },
  rise: { name: "rate of rise", least: 0.1, most: 1000, unit: "ft/h", source: "own bounds; above 15 ft/h a wall is at full head" },
  temperature: {
    name: "concrete temperature",
    least: 40,
    most: 100,
    unit: "°F",
    source: "ACI 347R-14 tables run from 40 to 90 °F; ACI 305 and 306 limits",
  },
  weight: { name: "unit weight", least: 90, most: 200, unit: "lb/ft³", source: "own bounds around ACI 347 Table 2.1" },
  chemistry: { name: "chemistry coefficient", least: 1, most: 1.4, unit: "", source: "ACI 347-04 Table 2.2" },
  slump: { name: "slump", least: 0, most: 11, unit: "in", source: "ASTM C143 cone" },
  vibrated: { name: "depth of vibration", least: 0, most: 60, unit: "ft", source: "own bounds" },
} as const;

/** Unit weight coefficient Cw, ACI 347-04 Table 2.1. */
export function weightCoefficient_us(weight_pcf: number): number {
  if (weight_pcf < 140) return Math.max(0.8, 0.5 * (1 + weight_pcf / 145));
  return weight_pcf <= 150 ? 1 : weight_pcf / 145;
}

/** Formula (b), psf, without its floor and cap: columns, and walls that rise slowly. */
export function columnFormula_us(rise_ft_h: number, concrete_F: number): number {
  return 150 + (9000 * rise_ft_h) / concrete_F;
}

/** Formula (c), psf, without its floor and cap: walls that rise at 7 to 15 ft/h, or over 14 ft high. Meets (b) at 7 ft/h. */
export function wallFormula_us(rise_ft_h: number, concrete_F: number): number {
  return 150 + 43400 / concrete_F + (2800 * rise_ft_h) / concrete_F;
}

export type Governs = "full head" | "(b)" | "(c)";

export interface Pressure_us {
  /** The most the form feels, at and below `hydrostatic_ft`. */
  readonly most_psf: number;
  readonly governs: Governs;
  /** Depth below the top down to which the pressure is plain head. */
  readonly hydrostatic_ft: number;
  /** Why full head, where it is: "slump" | "vibration" | "external" | "pumped from base" | "rise" | "". */
  readonly because: "slump" | "vibration" | "external" | "pumped from base" | "rise" | "";
}

/** Which formula the document allows (347R-14, the table of section 4.2.2.1). */
export function formulaFor_us(pour: AciPour_us): { formula: Governs; because: Pressure_us["because"] } {
  if (pour.fromBase) return { formula: "full head", because: "pumped from base" };
  if (pour.slump_in > 7) return { formula: "full head", because: "slump" };
  if (pour.external) return { formula: "full head", because: "external" };
  if (pour.vibrated_ft > 4) return { formula: "full head", because: "vibration" };
  if (pour.shape === "column") return { formula: "(b)", because: "" };
  if (pour.rise_ft_h > 15) return { formula: "full head", because: "rise" };
  return { formula: pour.rise_ft_h < 7 && pour.height_ft <= 14 ? "(b)" : "(c)", because: "" };
}

/**
 * The largest lateral pressure, psf. (b) and (c) are multiplied by the unit weight and chemistry coefficients, are not less than 600 Cw and
 * never more than w h; full head is w h alone. Pumped from the base: at least 25 % more than full head for the surge.
 */
export function pressureAci_us(pour: AciPour_us): Checked<Pressure_us> {
  const given = {
    height: pour.height_ft,
    rise: pour.rise_ft_h,
    temperature: pour.concrete_F,
    weight: pour.weight_pcf,
    chemistry: pour.chemistry,
    slump: pour.slump_in,
    vibrated: pour.vibrated_ft,
  };
  return checked(aciRanges_us, given, () => {
    const head = pour.weight_pcf * pour.height_ft;
    const { formula, because } = formulaFor_us(pour);
    if (formula === "full head") {
      const most = because === "pumped from base" ? 1.25 * head : head;
      return { most_psf: most, governs: formula, hydrostatic_ft: pour.height_ft, because };
    }
    const weight = weightCoefficient_us(pour.weight_pcf);
    const bare = formula === "(b)" ? columnFormula_us(pour.rise_ft_h, pour.concrete_F) : wallFormula_us(pour.rise_ft_h, pour.concrete_F);
    const reduced = Math.max(weight * pour.chemistry * bare, 600 * weight);
    if (reduced >= head) return { most_psf: head, governs: "full head" as const, hydrostatic_ft: pour.height_ft, because };
    return { most_psf: reduced, governs: formula, hydrostatic_ft: reduced / pour.weight_pcf, because };
  });
}
