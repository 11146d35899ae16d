/**
 * Sawn lumber: dressed sizes, reference design values and adjustments of the NDS (National Design Specification for Wood Construction) and its
 * Supplement, US units as published. Read in university lectures except where marked from memory. Edition in use: values as in NDS 2005 and later lectures.
 */
export interface Section {
  readonly name: string;
  readonly wide_in: number;
  readonly deep_in: number;
}

export const sections: Readonly<Record<string, Section>> = Object.fromEntries(
  (
    [
      ["2x4", 1.5, 3.5],
      ["2x6", 1.5, 5.5],
      ["2x8", 1.5, 7.25],
      ["2x10", 1.5, 9.25],
      ["4x4", 3.5, 3.5],
      ["4x6", 3.5, 5.5],
      ["4x8", 3.5, 7.25],
      ["2x4 flat", 3.5, 1.5],
    ] as const
  ).map(([name, wide, deep]) => [name, { name, wide_in: wide, deep_in: deep }]),
);

export const area_in2 = (s: Section) => s.wide_in * s.deep_in;
export const modulus_in3 = (s: Section) => (s.wide_in * s.deep_in ** 2) / 6;
export const inertia_in4 = (s: Section) => (s.wide_in * s.deep_in ** 3) / 12;

/** Reference values, psi. `memory` lists those not seen in print. */
export interface Grade {
  readonly name: string;
  readonly bending: number;
  readonly shear: number;
  readonly bearing: number;
  readonly compression: number;
  readonly elasticity: number;
  readonly elasticityMin: number;
  readonly memory: readonly string[];
}

const grade = (name: string, f: readonly number[], memory: readonly string[] = []): Grade => ({
  name,
  bending: f[0] as number,
  shear: f[1] as number,
  bearing: f[2] as number,
  compression: f[3] as number,
  elasticity: f[4] as number,
  elasticityMin: f[5] as number,
  memory,
});

export const grades: Readonly<Record<string, Grade>> = {
  "DF-L No 2": grade("Douglas fir-larch No 2", [900, 180, 625, 1350, 1.6e6, 580e3], ["compression"]),
  "HF Sel": grade("hem-fir select structural", [1400, 150, 405, 1500, 1.6e6, 580e3]),
  "DF-S No 2": grade("Douglas fir south No 2", [850, 180, 520, 1350, 1.2e6, 440e3]),
  "SPF No 2": grade(
    "spruce-pine-fir No 2",
    [875, 135, 425, 1150, 1.4e6, 510e3],
    ["bending", "shear", "bearing", "compression", "elasticity", "elasticityMin"],
  ),
  "HF No 2": grade(
    "hem-fir No 2",
    [850, 150, 405, 1300, 1.3e6, 470e3],
    ["bending", "shear", "bearing", "compression", "elasticity", "elasticityMin"],
  ),
};

/** Size factor CF for bending (NDS Supplement Table 4A), by the depth of the piece; 4 in wide pieces in the second column. */
const sizeBending: Readonly<Record<string, number>> = {
  "2x4": 1.5,
  "2x6": 1.3,
  "2x8": 1.2,
  "2x10": 1.1,
  "4x4": 1.5,
  "4x6": 1.3,
  "4x8": 1.3,
  "2x4 flat": 1.5,
};
const sizeCompression: Readonly<Record<string, number>> = {
  "2x4": 1.15,
  "4x4": 1.15,
  "2x6": 1.1,
  "4x6": 1.1,
  "2x8": 1.05,
  "4x8": 1.05,
  "2x10": 1,
  "2x4 flat": 1.15,
};

export interface Use {
  /** CD: 1.25 up to seven days in all, 1.0 when reused, 1.6 for wind. */
  readonly duration: 1 | 1.25 | 1.6;
  readonly wet: boolean;
  /** Cr: three or more side by side, at most 24 in apart, joined by sheathing. Never wales. */
  readonly repetitive: boolean;
}

export interface Allowed {
  readonly bending: number;
  readonly shear: number;
  readonly bearing: number;
  readonly elasticity: number;
  readonly elasticityMin: number;
  /** F*c: everything but column stability. */
  readonly compression: number;
}

/** Adjusted values, psi (NDS Table 4.3.1; wet service factors Supplement 4A). */
export function allowed(g: Grade, size: string, use: Use): Allowed {
  const cf = sizeBending[size] ?? 1;
  const cfc = sizeCompression[size] ?? 1;
  const flat = size.endsWith("flat") ? 1.1 : 1;
  const wetBending = use.wet && g.bending * cf > 1150 ? 0.85 : 1;
  const wetCompression = use.wet && g.compression * cfc > 750 ? 0.8 : 1;
  return {
    bending: g.bending * use.duration * wetBending * cf * flat * (use.repetitive ? 1.15 : 1),
    shear: g.shear * use.duration * (use.wet ? 0.97 : 1),
    bearing: g.bearing * (use.wet ? 0.67 : 1),
    elasticity: g.elasticity * (use.wet ? 0.9 : 1),
    elasticityMin: g.elasticityMin * (use.wet ? 0.9 : 1),
    compression: g.compression * use.duration * wetCompression * cfc,
  };
}
