/**
 * How much a cure at the site counts. ASTM C1074 (formulas from memory; Nurse-Saul and the −10 °C datum also read in a state's slides):
 * temperature-time factor M = Σ (T − T0) Δt, and equivalent age te = Σ exp[−Q (1/T − 1/Ts)] Δt in kelvin. EN 1992-1-1 Eq. B.10 is another curve and
 * is kept apart: tT = Σ exp[−(4000/(273 + T) − 13.65)] Δt, 0 to 80 °C (from memory).
 */
export const activation_K = 5000;

/** Temperature-time of one stretch, °C·h; nothing below the datum. */
export function temperatureTime_C_h(concrete_C: number, duration_h: number, datum_C: number): number {
  return Math.max(0, concrete_C - datum_C) * duration_h;
}

/** Hours of age at `reference_C` per hour at `concrete_C`; nothing is gained under −10 °C. */
export function ageFactor(concrete_C: number, reference_C: 20 | 23, q_K: number = activation_K): number {
  if (concrete_C <= -10) return 0;
  return Math.exp(-q_K * (1 / (concrete_C + 273.15) - 1 / (reference_C + 273.15)));
}

/** EN 1992-1-1 B.10, valid from 0 to 80 °C; below 0 nothing is counted. */
export function ageFactorEn(concrete_C: number): number {
  return concrete_C < 0 ? 0 : Math.exp(-(4000 / (273 + concrete_C) - 13.65));
}

/** Sums a factor over stretches of equal length, in hours. */
export function sum_h(temperatures_C: readonly number[], step_h: number, factor: (concrete_C: number) => number): number {
  return temperatures_C.reduce((total, t) => total + factor(t) * step_h, 0);
}
