/**
 * Lateral pressure of fresh concrete, DIN 18218:2010-01. From memory; the base lines were also read in a third party's copy.
 * Characteristic value, kN/m2, for 25 kN/m3, placed from the top, internal vibration, faces within 5° of vertical.
 */
import { type Checked, checked } from "./range";

export type Consistency = "F1" | "F2" | "F3" | "F4" | "F5" | "F6" | "SCC";

export interface DinPour {
  readonly consistency: Consistency;
  readonly height_m: number;
  readonly rise_m_h: number;
  /** End of setting, h after mixing; 5 where nothing slower is known. */
  readonly setting_h: number;
  readonly weight_kN_m3: number;
  /** Concrete colder than the reference temperature of the setting time by so many kelvin (warmer: 0; warmth is not used to lower a figure). */
  readonly colder_K: number;
}

export const dinRanges = {
  height: { name: "height of the pour", least: 0.05, most: 10, unit: "m", source: "DIN 18218:2010-01, H up to 10 m (from memory)" },
  rise: { name: "rate of rise", least: 0.05, most: 7, unit: "m/h", source: "DIN 18218:2010-01, v up to 7 m/h (from memory)" },
  setting: { name: "end of setting", least: 5, most: 20, unit: "h", source: "DIN 18218:2010-01 Table (from memory)" },
  weight: { name: "weight of the concrete", least: 15, most: 32, unit: "kN/m³", source: "own bounds" },
  colder: { name: "kelvin under the reference temperature", least: 0, most: 25, unit: "K", source: "own bounds" },
} as const;

const lines: Readonly<Record<Consistency, { slope: number; base: number; least: number; perHour: number | null; perKelvin: number }>> = {
  F1: { slope: 5, base: 21, least: 25, perHour: 0.03, perKelvin: 0.03 },
  F2: { slope: 10, base: 19, least: 25, perHour: 0.053, perKelvin: 0.03 },
  F3: { slope: 14, base: 18, least: 25, perHour: 0.077, perKelvin: 0.03 },
  F4: { slope: 17, base: 17, least: 25, perHour: 0.14, perKelvin: 0.03 },
  F5: { slope: 30, base: 25, least: 30, perHour: null, perKelvin: 0.05 },
  F6: { slope: 38, base: 25, least: 30, perHour: null, perKelvin: 0.05 },
  SCC: { slope: 33, base: 25, least: 30, perHour: null, perKelvin: 0.05 },
};

/** K1: slower setting raises the pressure; stiff classes on the whole line, soft ones (tE/5) on the part that grows with the rise. */
export function settingFactor_din(consistency: Consistency, setting_h: number): number {
  const { perHour } = lines[consistency];
  return perHour === null ? setting_h / 5 : 1 + perHour * (setting_h - 5);
}

export interface PressureDin {
  readonly most_kPa: number;
  readonly governs: "full head" | "DIN 18218";
  readonly hydrostatic_m: number;
}

export function pressureDin(pour: DinPour): Checked<PressureDin> {
  const given = {
    height: pour.height_m,
    rise: pour.rise_m_h,
    setting: pour.setting_h,
    weight: pour.weight_kN_m3,
    colder: pour.colder_K,
  };
  return checked(dinRanges, given, () => {
    const line = lines[pour.consistency];
    const slow = settingFactor_din(pour.consistency, pour.setting_h);
    const grown = line.perHour === null ? line.base + line.slope * pour.rise_m_h * slow : (line.slope * pour.rise_m_h + line.base) * slow;
    const cold = 1 + line.perKelvin * pour.colder_K;
    const reduced = (Math.max(grown * cold, line.least) * pour.weight_kN_m3) / 25;
    const head = pour.weight_kN_m3 * pour.height_m;
    if (reduced >= head) return { most_kPa: head, governs: "full head" as const, hydrostatic_m: pour.height_m };
    return { most_kPa: reduced, governs: "DIN 18218" as const, hydrostatic_m: reduced / pour.weight_kN_m3 };
  });
}
