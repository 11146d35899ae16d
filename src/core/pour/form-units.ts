import { fromModel, toModel } from "../base";

/** Members are judged by formulas defined in US units: model lengths and forces into them, and back. Whole chains of figures stay in the model's units. */
export const inches = (length_mm: number): number => length_mm / 25.4;
export const feet = (length_mm: number): number => length_mm / 304.8;
export const mmOfInches = (length: number): number => length * 25.4;

const pound_kN = toModel("force", 1, "lb");
export const pounds = (force_kN: number): number => force_kN / pound_kN;
export const kNOfPounds = (force: number): number => force * pound_kN;

/** kN/m and lb/ft. */
export const poundsPerFoot = (line_kN_m: number): number => (line_kN_m * 0.3048) / pound_kN;
export const kNmOfPoundsPerFoot = (line: number): number => (line * pound_kN) / 0.3048;

/** kPa and lb/ft2: 1 psf = 0.04788025898 kPa. */
export const psfOf = (pressure_kPa: number): number => fromModel("pressure", pressure_kPa / 1000, "psf");
export const kPaOfPsf = (value: number): number => 1000 * toModel("pressure", value, "psf");

/** Standard gravity, m/s2 (ISO 80000-3). */
const gravity = 9.80665;

/** kN of a mass in kg, or kN/m3 of kg/m3. */
export const weightOf = (mass_kg: number): number => (mass_kg * gravity) / 1000;

/** Ten digits, so that a limit written in another unit and met exactly is met. */
export const settled = (value: number): number => Number(value.toPrecision(10));
