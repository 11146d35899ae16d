/** Number of ASTM A615 (4), or nominal diameter of a metric bar ("12 mm"). */
export type BarSize = number | string;

/** Reinforcing bars, US units as published. ASTM A615 table (from memory, standard). */
export interface Bar {
  readonly size: BarSize;
  readonly diameter_in: number;
  readonly area_in2: number;
  readonly weight_lb_ft: number;
}

export const bars: readonly Bar[] = (
  [
    [3, 0.375, 0.11, 0.376],
    [4, 0.5, 0.2, 0.668],
    [5, 0.625, 0.31, 1.043],
    [6, 0.75, 0.44, 1.502],
    [7, 0.875, 0.6, 2.044],
    [8, 1, 0.79, 2.67],
    [9, 1.128, 1, 3.4],
    [10, 1.27, 1.27, 4.303],
    [11, 1.41, 1.56, 5.313],
    [14, 1.693, 2.25, 7.65],
    [18, 2.257, 4, 13.6],
  ] as const
).map(([size, diameter_in, area_in2, weight_lb_ft]) => ({ size, diameter_in, area_in2, weight_lb_ft }));

/** Metric bars by nominal diameter, mm, with their nominal mass, kg/m: ISO 6935-2:2019, table 2, the same as EN 10080:2005, table 6 (from memory). */
export const metricBars: readonly Bar[] = (
  [
    [6, 0.222],
    [8, 0.395],
    [10, 0.617],
    [12, 0.888],
    [14, 1.21],
    [16, 1.58],
    [20, 2.47],
    [25, 3.85],
    [28, 4.83],
    [32, 6.31],
    [40, 9.86],
  ] as const
).map(([diameter_mm, mass_kg_m]) => ({
  size: `${diameter_mm} mm`,
  diameter_in: diameter_mm / 25.4,
  area_in2: (Math.PI / 4) * (diameter_mm / 25.4) ** 2,
  weight_lb_ft: (mass_kg_m / 0.45359237) * 0.3048,
}));

/** The bar of a size number or a nominal diameter; null where there is none ("#12" is not made). */
export function bar(size: BarSize): Bar | null {
  return bars.find((b) => b.size === size) ?? metricBars.find((b) => b.size === size) ?? null;
}

/** A size as a number of eighths of an inch, for rules that are stated by number: a metric bar lies between two. */
const numberOf = (size: BarSize): number => (typeof size === "number" ? size : (bar(size)?.diameter_in ?? 0) * 8);

export type Exposure = "against ground" | "weather or ground" | "inside slab or wall" | "inside beam or column";

/** Least cover, in (ACI 318-14 20.6.1.3.1, 318-19 20.5.1.3.1; read in an ACI summary). */
export function cover_in(exposure: Exposure, barSize: BarSize): number {
  const size = numberOf(barSize);
  if (exposure === "against ground") return 3;
  if (exposure === "weather or ground") return size >= 6 ? 2 : 1.5;
  if (exposure === "inside slab or wall") return size >= 14 ? 1.5 : 0.75;
  return 1.5;
}

/**
 * Development length of a bar in tension, in (ACI 318-14 25.4.2.2, spacing and cover met, normal weight, uncoated; from memory): fy/(25 √f'c) db to #6,
 * /20 from #7, top bars 1.3, not under 12.
 */
export function development_in(b: Bar, concrete_psi: number, yield_psi: number, top: boolean): number {
  const length = ((top ? 1.3 : 1) * yield_psi * b.diameter_in) / ((numberOf(b.size) <= 6 ? 25 : 20) * Math.sqrt(concrete_psi));
  return Math.max(12, length);
}

/** Class B lap splice, in: 1.3 times the development length. */
export function lap_in(b: Bar, concrete_psi: number, yield_psi: number, top: boolean): number {
  return Math.max(12, 1.3 * development_in(b, concrete_psi, yield_psi, top));
}

/** Lap in compression, in: 0.0005 fy db (30 db for grade 60), not under 12 (ACI 318, from memory). */
export function compressionLap_in(b: Bar, yield_psi: number): number {
  return Math.max(12, 0.0005 * yield_psi * b.diameter_in);
}

/** Tie spacing of a column, in (ACI 318 25.7.2.1, read): 16 bars, 48 ties, the least side. */
export function tieSpacing_in(b: Bar, tie: Bar, leastSide_in: number): number {
  return Math.min(16 * b.diameter_in, 48 * tie.diameter_in, leastSide_in);
}

const steelElasticity_psi = 29e6;

export interface Foot {
  readonly sag_in: number;
  readonly stress_psi: number;
}

/** One bar spanning free with a load at its middle, simple or held ends (PL³/48EI and /192, PL/4 and /8). */
export function barUnderFoot(b: Bar, span_in: number, load_lb: number, ends: "simple" | "held"): Foot {
  const d = b.diameter_in;
  const inertia = (Math.PI * d ** 4) / 64;
  const sag_in = (load_lb * span_in ** 3) / ((ends === "simple" ? 48 : 192) * steelElasticity_psi * inertia);
  const moment = (load_lb * span_in) / (ends === "simple" ? 4 : 8);
  return { sag_in, stress_psi: (moment * d) / 2 / inertia };
}

/** Sag of a bar under its own weight, in (5wl⁴/384EI simple, wl⁴/384EI held). */
export function barOwnSag_in(b: Bar, span_in: number, ends: "simple" | "held"): number {
  const inertia = (Math.PI * b.diameter_in ** 4) / 64;
  return (((ends === "simple" ? 5 : 1) * b.weight_lb_ft) / 12) * (span_in ** 4 / (384 * steelElasticity_psi * inertia));
}

/** The span at which a bar sags so much under its own weight, in. */
export function barSpanForSag_in(b: Bar, sag_in: number, ends: "simple" | "held"): number {
  return (sag_in / barOwnSag_in(b, 1, ends)) ** 0.25;
}

/** Where bars lie closer than two diameters clear or have less than one of cover, development is half as long again (ACI 318 25.4.2.2, from memory). */
export const crowded = 1.5;

/** A person on one bar, lb, as the checks of mats underfoot take it. */
export const foot_lb = 200;

/** Most a bar gives way under a foot, in: own rule; it gives the trade's distances of chairs, #4 about 24, #5 36, #6 48 in (common practice, no source). */
export const footSag_in = 0.25;

/** Most a bar hangs down by its own weight, in: the tolerance of cover in members up to 8 in (ACI 117, from memory). */
export const ownSag_in = 0.375;

/** Least cover against a face, in: 3 against earth, else by exposure. */
export function faceCover_in(earth: boolean, exposure: Exposure, size: BarSize): number {
  return earth ? cover_in("against ground", size) : cover_in(exposure, size);
}

/** The free span of one bar that holds a foot: neither bent for good nor giving way more than `footSag_in`, and hanging no more than `ownSag_in` by itself. */
export function barSpan_in(b: Bar, yield_psi: number, ends: "simple" | "held"): number {
  const one = barUnderFoot(b, 1, foot_lb, ends);
  return Math.min(yield_psi / one.stress_psi, Math.cbrt(footSag_in / one.sag_in), barSpanForSag_in(b, ownSag_in, ends));
}

/** What one person lifts, lb: load constant of the NIOSH lifting equation (from memory); less far from the body, or on bad footing. */
export const lift_lb = 51;

/** Lengths bars are sold in, ft (common practice, no source). */
export const barStock_ft = 20;
