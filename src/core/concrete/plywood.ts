/**
 * Form plywood, APA "Concrete Forming" V345 (read in a copy; its tables reproduce within their rounding). US units as published:
 * I in in4/ft, KS in in3/ft, Ib/Q in in2/ft; stresses in psi, already for forms (times 1.25 for load duration and 1.30 for experience).
 * The older sanded-plywood tables used by some lectures differ; a screen says which set is in use.
 */
export interface Plies {
  readonly thick_in: number;
  readonly inertia_in4: number;
  readonly modulus_in3: number;
  readonly rolling_in2: number;
}

const rows = (
  list: readonly (readonly [name: string, thick: number, i: number, ks: number, ibq: number])[],
): Readonly<Record<string, Plies>> =>
  Object.fromEntries(
    list.map(([name, thick_in, inertia_in4, modulus_in3, rolling_in2]) => [name, { thick_in, inertia_in4, modulus_in3, rolling_in2 }]),
  );

/** Face grain across the supports (the strong way). */
export const across = rows([
  ["1/2", 0.5, 0.077, 0.268, 5.153],
  ["19/32", 0.59375, 0.115, 0.335, 5.438],
  ["5/8", 0.625, 0.13, 0.358, 5.717],
  ["23/32", 0.71875, 0.18, 0.43, 7.009],
  ["3/4", 0.75, 0.199, 0.455, 7.187],
  ["7/8", 0.875, 0.296, 0.584, 8.555],
  ["1", 1, 0.427, 0.737, 9.374],
  ["1-1/8", 1.125, 0.554, 0.849, 10.43],
]);

/** Face grain along the supports (the weak way). */
export const along = rows([
  ["1/2", 0.5, 0.024, 0.13, 2.739],
  ["5/8", 0.625, 0.038, 0.175, 3.094],
  ["23/32", 0.71875, 0.072, 0.247, 3.798],
  ["3/4", 0.75, 0.092, 0.306, 4.063],
  ["1", 1, 0.27, 0.634, 7.014],
  ["1-1/8", 1.125, 0.398, 0.799, 8.419],
]);

export interface PlyClass {
  readonly elasticity: number;
  readonly elasticityShear: number;
  readonly bending: number;
  readonly rolling: number;
}

export const plyClasses: Readonly<Record<"I" | "II" | "structural I", PlyClass>> = {
  I: { elasticity: 1.65e6, elasticityShear: 1.5e6, bending: 1930, rolling: 72 },
  II: { elasticity: 1.43e6, elasticityShear: 1.3e6, bending: 1330, rolling: 72 },
  "structural I": { elasticity: 1.65e6, elasticityShear: 1.5e6, bending: 1930, rolling: 102 },
};

/** Under another duration of load than seven days in all: bending and rolling shear with its factor in place of the 1.25 for short loading. */
export function loadedFor(c: PlyClass, duration: 1 | 1.15 | 1.25): PlyClass {
  return duration === 1.25 ? c : { ...c, bending: (c.bending * duration) / 1.25, rolling: (c.rolling * duration) / 1.25 };
}

/** Used again and again: without any of it. */
export const reused = (c: PlyClass): PlyClass => loadedFor(c, 1);

export interface PlyLimits {
  readonly bending_psf: number;
  readonly rolling_psf: number;
  readonly sag_psf: number;
  readonly governs: "bending" | "rolling shear" | "sag";
  readonly carries_psf: number;
}

/**
 * The pressure a sheet carries on supports `spacing_in` apart (centres), psf: V345 formulas. Three spans are taken across the supports up to 32 in and along
 * them up to 16 in, otherwise two. L2 is the clear span, L3 clear plus 1/4 in (2 in framing) or 5/8 in (4 in framing).
 */
export function plywoodCarries_psf(
  plies: Plies,
  ply: PlyClass,
  grain: "across" | "along",
  spacing_in: number,
  frame_in: 1.5 | 3.5,
  ratio: number,
): PlyLimits {
  const three = grain === "across" ? spacing_in <= 32 : spacing_in <= 16;
  const clear = spacing_in - frame_in;
  const sagging = clear + (frame_in === 1.5 ? 0.25 : 0.625);
  const bending_psf = ((three ? 120 : 96) * ply.bending * plies.modulus_in3) / spacing_in ** 2;
  const rolling_psf = ((three ? 20 : 19.2) * ply.rolling * plies.rolling_in2) / clear;
  const bent = sagging ** 4 / ((three ? 1743 : 2220) * ply.elasticity * plies.inertia_in4);
  const sheared = ((grain === "across" ? 120 : 60) * plies.thick_in ** 2 * clear ** 2) / (1270 * ply.elasticityShear * plies.inertia_in4);
  const sag_psf = spacing_in / ratio / (bent + sheared);
  const carries_psf = Math.min(bending_psf, rolling_psf, sag_psf);
  const governs = carries_psf === bending_psf ? "bending" : carries_psf === rolling_psf ? "rolling shear" : "sag";
  return { bending_psf, rolling_psf, sag_psf, governs, carries_psf };
}
