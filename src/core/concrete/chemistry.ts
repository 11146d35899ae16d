export type Cement = "plain" | "blend" | "slow blend";

/**
 * Chemistry coefficient Cc, ACI 347-04 Table 2.2 (same in SI). plain: Types I, II, III. blend: other cements, under 70 % slag or 40 % fly ash.
 * slow blend: over those. A retarder is anything that delays the set, water reducers and superplasticizers included.
 */
export function chemistryCoefficient(cement: Cement, retarder: boolean): number {
  if (cement === "plain") return retarder ? 1.2 : 1;
  if (cement === "blend") return retarder ? 1.4 : 1.2;
  return 1.4;
}

/** C2 of CIRIA Report 108, m^0.5 (groups partly from memory). */
export function ciriaC2(cement: Cement, retarder: boolean): number {
  if (cement === "plain") return retarder ? 0.45 : 0.3;
  if (cement === "blend") return retarder ? 0.6 : 0.45;
  return 0.6;
}
