/**
 * Uniformly loaded beams over 1, 2 and 3 or more equal spans, as the form handbooks use them (read in university lectures and the APA form guide;
 * recomputed). US units as published: w in lb/ft, spans in inches, stresses in psi, S in in3, I in in4 (per foot of width for plywood).
 */
export type Spans = 1 | 2 | 3;

/** M = w l² / bending; V = shear · w l; deflection = w l⁴ / (deflection · E I). */
export const beam = {
  1: { bending: 8, shear: 0.5, deflection: 384 / 5 },
  2: { bending: 8, shear: 0.625, deflection: 185 },
  3: { bending: 10, shear: 0.6, deflection: 145 },
} as const;

/** Largest span by bending, in: l = √(12 · bending · F S / w), 10.95 √(F S / w) over three spans. */
export function bendingSpan_in(spans: Spans, stress_psi: number, section_in3: number, load_plf: number): number {
  return Math.sqrt((12 * beam[spans].bending * stress_psi * section_in3) / load_plf);
}

/** Largest span by horizontal shear of sawn lumber, in, loads within a depth of the support left out: l = 12 · (2/3) F b d / (shear · w) + 2 d. */
export function lumberShearSpan_in(spans: Spans, stress_psi: number, wide_in: number, deep_in: number, load_plf: number): number {
  return (8 * stress_psi * wide_in * deep_in) / (beam[spans].shear * load_plf) + 2 * deep_in;
}

/** Largest clear span by rolling shear of plywood, in: l = 12 F (Ib/Q) / (shear · w). */
export function rollingShearSpan_in(spans: Spans, stress_psi: number, rolling_in2: number, load_plf: number): number {
  return (12 * stress_psi * rolling_in2) / (beam[spans].shear * load_plf);
}

export type Sag = { readonly kind: "ratio"; readonly of: number } | { readonly kind: "fixed"; readonly inches: number };

/** Largest span by sag, in: l/of or a fixed amount. 1.69 (E I / w)^⅓ for l/360 and 3.23 (E I / w)^¼ for 1/16 in over three spans. */
export function sagSpan_in(spans: Spans, sag: Sag, elasticity_psi: number, inertia_in4: number, load_plf: number): number {
  const stiff = (12 * beam[spans].deflection * elasticity_psi * inertia_in4) / load_plf;
  return sag.kind === "ratio" ? Math.cbrt(stiff / sag.of) : (stiff * sag.inches) ** 0.25;
}

/** Sag of a span, in. */
export function sag_in(spans: Spans, span_in: number, elasticity_psi: number, inertia_in4: number, load_plf: number): number {
  return ((load_plf / 12) * span_in ** 4) / (beam[spans].deflection * elasticity_psi * inertia_in4);
}
