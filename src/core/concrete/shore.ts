/** A wood shore as a column, NDS 3.7.1, US units as published. Read; the lecture's examples reproduce. */
import type { Allowed } from "./lumber";
import { area_in2, type Section } from "./lumber-sizes";
import { judged, type MemberCheck, type MemberResult } from "./member";
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
    const stability = stabilityFactor(slenderness, compression_psi, elasticityMin_psi);
    const allowed_psi = compression_psi * stability;
    return { slenderness, stability, allowed_psi, carries_lb: allowed_psi * area_in2 };
  });
}

/** Column stability factor Cp of sawn lumber, NDS 3.7.1.5. */
function stabilityFactor(slenderness: number, compression_psi: number, elasticityMin_psi: number): number {
  const ratio = (0.822 * elasticityMin_psi) / slenderness ** 2 / compression_psi;
  const q = (1 + ratio) / 1.6;
  return q - Math.sqrt(q * q - ratio / 0.8);
}

/**
 * A shore or brace of separate pieces that share a load, lb: as a column about its thin side over the length it stands free there, and about its deep side over
 * its whole height. One more slender than 50 is over 100 by that alone, whatever the formula still gives; up to there slenderness is in the formula, and no load.
 */
export function shoreMember(
  load_lb: number,
  section: Section,
  pieces: number,
  allowed: Allowed,
  free_in: number,
  high_in: number,
): MemberResult {
  const thin = Math.min(section.wide_in, section.deep_in);
  const deep = Math.max(section.wide_in, section.deep_in);
  const checks = [
    [free_in, thin],
    [high_in, deep],
  ].flatMap(([length_in, side_in]): MemberCheck[] => {
    const slenderness = Math.max(1, (length_in as number) / (side_in as number));
    const may = allowed.compression * stabilityFactor(slenderness, allowed.compression, allowed.elasticityMin) * area_in2(section) * pieces;
    const loaded: MemberCheck = { kind: "compression", of100: (100 * load_lb) / may, span_in: null };
    const { most } = shoreRanges.slenderness;
    return slenderness > most + 1e-9 ? [loaded, { kind: "slenderness", of100: (100 * slenderness) / most, span_in: null }] : [loaded];
  });
  return judged(checks);
}
