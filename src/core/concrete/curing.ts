/**
 * How long concrete is kept wet or sealed, and kept warm. ACI 308R minimum days at 50 °F or warmer (from memory): Type I 7, II 10, III 3, IV and V 14, or until
 * 70 % of the specified strength. A federal guide specification gives Type II 14 days (read): the longer stands beside it. ACI 306R Table 5.1 (from memory).
 */
export type CementType = "I" | "II" | "III" | "IV" | "V";

export const wet_days: Readonly<Record<CementType, number>> = { I: 7, II: 10, III: 3, IV: 14, V: 14 };

/** UFGS 03 30 00 (read; Type III from memory): the days the guide specification asks for, where they differ. */
export const wetGuide_days: Readonly<Record<"I" | "II" | "III", number>> = { I: 7, II: 14, III: 3 };

/** ACI 306R: concrete as placed and held, °F, and the most it may fall in the first 24 h after protection ends, by least dimension in inches. */
export function coldRow(least_in: number): { readonly held_F: number; readonly drop_F: number } {
  if (least_in < 12) return { held_F: 55, drop_F: 50 };
  if (least_in < 36) return { held_F: 50, drop_F: 40 };
  return least_in < 72 ? { held_F: 45, drop_F: 30 } : { held_F: 40, drop_F: 20 };
}

/** ACI 306R: concrete as mixed, °F, by air temperature. */
export function mixed_F(least_in: number, air_F: number): number {
  const step = air_F > 30 ? 5 : air_F >= 0 ? 10 : 15;
  return coldRow(least_in).held_F + step;
}

export type Service = "no load, not exposed" | "no load, exposed" | "partial load, exposed" | "full load";

/** Days of protection, ACI 306R (from memory), normal or accelerated set; null: by strength, not by days. */
export function protection_days(service: Service, accelerated: boolean): number | null {
  const table = { "no load, not exposed": [2, 1], "no load, exposed": [3, 2], "partial load, exposed": [6, 4] } as const;
  return service === "full load" ? null : table[service][accelerated ? 1 : 0];
}

/** Cold weather by the present definition (read): air at, or expected to fall, below 40 °F during the protection period. */
export function isCold(lowestExpected_F: number): boolean {
  return lowestExpected_F < 40;
}

/** Strength at which one freeze is survived (quoting ACI 306R-16, read): 500 psi. */
export const frostSafe_psi = 500;

/** The same guide specification for blended cements (read): 14 days with up to a quarter of ash or slag, 21 above; ACI 308R leaves them to a test. */
export const wetBlend_days: Readonly<Record<"blend" | "slow blend", number>> = { blend: 14, "slow blend": 21 };

/** ACI 308R (from memory): wet curing may end earlier once this share of the specified strength is there, thousandths. */
export const wetEnds_share = 700;
