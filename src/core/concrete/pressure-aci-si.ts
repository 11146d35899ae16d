/**
 * Lateral pressure of fresh concrete, ACI 347R-14 section 4.2.2.1 in SI units, as published (not converted from the US pair: 30 kPa is 627 psf,
 * 4.2 m is 13.8 ft). Read in a public copy.
 */
import { type Checked, checked } from "./range";

export interface AciPour_si {
  readonly shape: "column" | "wall";
  readonly height_m: number;
  readonly rise_m_h: number;
  readonly concrete_C: number;
  readonly density_kg_m3: number;
  readonly chemistry: number;
  readonly slump_mm: number;
  readonly vibrated_m: number;
  readonly external: boolean;
  readonly fromBase: boolean;
}

export const aciRanges_si = {
  height: { name: "height of the fresh concrete", least: 0.03, most: 18, unit: "m", source: "own bounds: a form, not a shaft" },
  rise: { name: "rate of rise", least: 0.03, most: 300, unit: "m/h", source: "own bounds; above 4.5 m/h a wall is at full head" },
  temperature: { name: "concrete temperature", least: 4, most: 38, unit: "°C", source: "ACI 347R-14 tables; ACI 305 and 306 limits" },
  density: { name: "density", least: 1450, most: 3200, unit: "kg/m³", source: "own bounds around ACI 347 Table 2.1" },
  chemistry: { name: "chemistry coefficient", least: 1, most: 1.4, unit: "", source: "ACI 347-04 Table 2.2" },
  slump: { name: "slump", least: 0, most: 280, unit: "mm", source: "ASTM C143 cone" },
  vibrated: { name: "depth of vibration", least: 0, most: 18, unit: "m", source: "own bounds" },
} as const;

/** Standard gravity, m/s2 (ISO 80000-3). */
const gravity = 9.80665;

export function weightCoefficient_si(density_kg_m3: number): number {
  if (density_kg_m3 < 2240) return Math.max(0.8, 0.5 * (1 + density_kg_m3 / 2320));
  return density_kg_m3 <= 2400 ? 1 : density_kg_m3 / 2320;
}

/** Formula (b), kPa, without floor and cap. */
export function columnFormula_si(rise_m_h: number, concrete_C: number): number {
  return 7.2 + (785 * rise_m_h) / (concrete_C + 17.8);
}

/** Formula (c), kPa, without floor and cap. */
export function wallFormula_si(rise_m_h: number, concrete_C: number): number {
  return 7.2 + 1156 / (concrete_C + 17.8) + (244 * rise_m_h) / (concrete_C + 17.8);
}

export interface Pressure_si {
  readonly most_kPa: number;
  readonly governs: "full head" | "(b)" | "(c)";
  readonly hydrostatic_m: number;
  readonly because: "slump" | "vibration" | "external" | "pumped from base" | "rise" | "";
}

/** Which formula the document allows: thresholds 2.1 and 4.5 m/h, 4.2 m, 175 mm, 1.2 m. */
export function formulaFor_si(pour: AciPour_si): { formula: Pressure_si["governs"]; because: Pressure_si["because"] } {
  if (pour.fromBase) return { formula: "full head", because: "pumped from base" };
  if (pour.slump_mm > 175) return { formula: "full head", because: "slump" };
  if (pour.external) return { formula: "full head", because: "external" };
  if (pour.vibrated_m > 1.2) return { formula: "full head", because: "vibration" };
  if (pour.shape === "column") return { formula: "(b)", because: "" };
  if (pour.rise_m_h > 4.5) return { formula: "full head", because: "rise" };
  return { formula: pour.rise_m_h < 2.1 && pour.height_m <= 4.2 ? "(b)" : "(c)", because: "" };
}

/** The largest lateral pressure, kPa: (b) and (c) times Cw and Cc, at least 30 Cw, at most the full head. */
export function pressureAci_si(pour: AciPour_si): Checked<Pressure_si> {
  const given = {
    height: pour.height_m,
    rise: pour.rise_m_h,
    temperature: pour.concrete_C,
    density: pour.density_kg_m3,
    chemistry: pour.chemistry,
    slump: pour.slump_mm,
    vibrated: pour.vibrated_m,
  };
  return checked(aciRanges_si, given, () => {
    const weight_kN_m3 = (pour.density_kg_m3 * gravity) / 1000;
    const head = weight_kN_m3 * pour.height_m;
    const { formula, because } = formulaFor_si(pour);
    if (formula === "full head") {
      const most = because === "pumped from base" ? 1.25 * head : head;
      return { most_kPa: most, governs: formula, hydrostatic_m: pour.height_m, because };
    }
    const weight = weightCoefficient_si(pour.density_kg_m3);
    const bare = formula === "(b)" ? columnFormula_si(pour.rise_m_h, pour.concrete_C) : wallFormula_si(pour.rise_m_h, pour.concrete_C);
    const reduced = Math.max(weight * pour.chemistry * bare, 30 * weight);
    if (reduced >= head) return { most_kPa: head, governs: "full head" as const, hydrostatic_m: pour.height_m, because };
    return { most_kPa: reduced, governs: formula, hydrostatic_m: reduced / weight_kN_m3, because };
  });
}
