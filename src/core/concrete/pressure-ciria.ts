/**
 * Lateral pressure of fresh concrete, CIRIA Report 108 (1985), "Concrete pressure on formwork": Pmax = D [C1 √R + C2 K √(H − C1 √R)], at most
 * D h; K = (36 / (T + 16))². Read in a course assignment, an engineering forum's worked sheet and public notes; the C2 groups partly from memory.
 */
import { type Checked, checked } from "./range";

export interface CiriaPour {
  readonly shape: "column" | "wall";
  /** Height of the form H and of the pour h, m. */
  readonly form_m: number;
  readonly height_m: number;
  readonly rise_m_h: number;
  readonly concrete_C: number;
  readonly weight_kN_m3: number;
  /** m^0.5; see `ciriaC2`. */
  readonly c2: number;
}

export const ciriaRanges = {
  form: { name: "height of the form", least: 0.1, most: 20, unit: "m", source: "own bounds" },
  height: { name: "height of the pour", least: 0.05, most: 20, unit: "m", source: "own bounds" },
  rise: { name: "rate of rise", least: 0.05, most: 300, unit: "m/h", source: "own bounds" },
  temperature: {
    name: "concrete temperature",
    least: 5,
    most: 35,
    unit: "°C",
    source: "CIRIA 108 tables run from 5 to 30 °C (from memory)",
  },
  weight: { name: "weight of the concrete", least: 15, most: 32, unit: "kN/m³", source: "own bounds" },
  c2: { name: "C2", least: 0.3, most: 0.6, unit: "m^0.5", source: "CIRIA Report 108" },
} as const;

export function temperatureFactor_ciria(concrete_C: number): number {
  return (36 / (concrete_C + 16)) ** 2;
}

export interface PressureCiria {
  readonly most_kPa: number;
  readonly governs: "full head" | "CIRIA 108";
  readonly hydrostatic_m: number;
}

/** kPa. C1 is 1.5 for columns (both sides up to 2 m), 1.0 for walls. The depth at plain head is P/D. */
export function pressureCiria(pour: CiriaPour): Checked<PressureCiria> {
  const given = {
    form: pour.form_m,
    height: pour.height_m,
    rise: pour.rise_m_h,
    temperature: pour.concrete_C,
    weight: pour.weight_kN_m3,
    c2: pour.c2,
  };
  return checked(ciriaRanges, given, () => {
    const head = pour.weight_kN_m3 * pour.height_m;
    const climb = (pour.shape === "column" ? 1.5 : 1) * Math.sqrt(pour.rise_m_h);
    const full = { most_kPa: head, governs: "full head" as const, hydrostatic_m: pour.height_m };
    if (climb >= pour.form_m) return full;
    const reduced = pour.weight_kN_m3 * (climb + pour.c2 * temperatureFactor_ciria(pour.concrete_C) * Math.sqrt(pour.form_m - climb));
    if (reduced >= head) return full;
    return { most_kPa: reduced, governs: "CIRIA 108" as const, hydrostatic_m: reduced / pour.weight_kN_m3 };
  });
}
