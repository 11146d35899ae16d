/**
 * A cubic yard of concrete by absolute volume, and its water corrected for wet aggregate (NAVEDTRA 14070, read). US units as published. It checks what is
 * mixed on site; a design mix is the supplier's or an engineer's.
 */
export interface MixInput {
  /** lb in a cubic yard. */
  readonly water_lb: number;
  /** Water over cement, by mass. */
  readonly waterCement: number;
  /** Share of the volume that is air. */
  readonly air: number;
  /** Dry-rodded volume of the coarse aggregate in the volume of concrete, and what a cubic foot of it weighs. */
  readonly coarse: number;
  readonly rodded_pcf: number;
  /** Specific gravities. */
  readonly gravity: { readonly cement: number; readonly coarse: number; readonly fine: number };
}

export interface MixParts {
  readonly cement_lb: number;
  readonly sacks: number;
  readonly water_gal: number;
  readonly coarse_lb: number;
  readonly fine_lb: number;
  /** Absolute volumes of all but the sand, ft3 of 27. */
  readonly filled_ft3: number;
}

const water_pcf = 62.4;
const gallon_lb = 8.33;
const sack_lb = 94;

export function mixParts(mix: MixInput): MixParts {
  const cement_lb = mix.water_lb / mix.waterCement;
  const coarse_lb = mix.coarse * 27 * mix.rodded_pcf;
  const filled_ft3 =
    mix.water_lb / water_pcf + cement_lb / (mix.gravity.cement * water_pcf) + coarse_lb / (mix.gravity.coarse * water_pcf) + mix.air * 27;
  const fine_lb = (27 - filled_ft3) * mix.gravity.fine * water_pcf;
  return { cement_lb, sacks: cement_lb / sack_lb, water_gal: mix.water_lb / gallon_lb, coarse_lb, fine_lb, filled_ft3 };
}

/** Water that wet aggregate brings along, lb; so much less goes into the mixer. */
export function freeWater_lb(aggregates: readonly { readonly mass_lb: number; readonly wet_percent: number }[]): number {
  return aggregates.reduce((sum, a) => sum + (a.mass_lb * a.wet_percent) / 100, 0);
}
