/** A wood shore as a column, NDS 3.7.1, US units as published. Read; the lecture's examples reproduce. */
import { type Checked, checked } from "./range";

export interface ShoreCheck {
  readonly slenderness: number;
  readonly stability: number;
  readonly allowed_psi: number;
  readonly carries_lb: number;
}

export const shoreRanges = {
  length: { name: "unbraced length of the shore", least: 6, most: 360, unit: "in", source: "own bounds" },
  slenderness: { name: "length over thickness", least: 0.1, most: 50, unit: "", source: "NDS 3.7.1.4: 50 at most in use" },
} as const;

/**
 * FcE = 0.822 E'min / (le/d)²; Cp = q − √(q² − (FcE/F*c)/0.8), q = (1 + FcE/F*c) / 1.6; P = F*c Cp A.
 * @param compression_psi F*c, every factor but stability
 */
export function shore(
  length_in: number,
  thin_in: number,
  area_in2: number,
  compression_psi: number,
  elasticityMin_psi: number,
): Checked<ShoreCheck> {
  const slenderness = length_in / thin_in;
  return checked(shoreRanges, { length: length_in, slenderness }, () => {
    const critical = (0.822 * elasticityMin_psi) / slenderness ** 2;
    const ratio = critical / compression_psi;
    const q = (1 + ratio) / 1.6;
    const stability = q - Math.sqrt(q * q - ratio / 0.8);
    const allowed_psi = compression_psi * stability;
    return { slenderness, stability, allowed_psi, carries_lb: allowed_psi * area_in2 };
  });
}
