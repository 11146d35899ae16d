/** What one form member carries of what it may: each check as asked over allowed, the one that gives first, and the largest span each allows. */
import { beam, bendingSpan_in, lumberShearSpan_in, rollingShearSpan_in, type Sag, type Spans, sag_in, sagSpan_in } from "./beam";
import type { Allowed } from "./lumber";
import { area_in2, inertia_in4, modulus_in3, type Section } from "./lumber-sizes";
import type { Plies, PlyClass } from "./plywood";
import type { PointCoefficients } from "./point-loads";

export type CheckKind =
  | "bending"
  | "shear"
  | "rolling shear"
  | "sag"
  | "bearing"
  | "tension"
  | "compression"
  | "slenderness"
  | "ground"
  | "sideways";

export interface MemberCheck {
  readonly kind: CheckKind;
  /** 100: exactly what it may. */
  readonly of100: number;
  /** Largest span by this check alone, in; null where the check has no span, or nothing loads it. */
  readonly span_in: number | null;
}

export interface MemberResult {
  readonly checks: readonly MemberCheck[];
  readonly governs: MemberCheck;
  /** The smallest of the spans; null when no check has one. */
  readonly largestSpan_in: number | null;
}

const isSpan = (span: number | null): boolean => span === null || Number.isFinite(span);

export function judged(all: readonly MemberCheck[]): MemberResult {
  const checks = all.every(({ span_in }) => isSpan(span_in))
    ? all
    : all.map((check) => (isSpan(check.span_in) ? check : { ...check, span_in: null }));
  let governs = checks[0] as MemberCheck;
  let largest: number | null = null;
  for (const check of checks) {
    if (check.of100 > governs.of100) governs = check;
    if (check.span_in !== null && (largest === null || check.span_in < largest)) largest = check.span_in;
  }
  return { checks, governs, largestSpan_in: largest };
}

/** The stricter of several sag limits at this span. */
function sagCheck(
  spans: Spans,
  span_in: number,
  sags: readonly Sag[],
  elasticity_psi: number,
  inertia: number,
  load_plf: number,
): MemberCheck[] {
  return sags.map((sag) => {
    const may = sag.kind === "ratio" ? span_in / sag.of : sag.inches;
    return {
      kind: "sag",
      of100: (100 * sag_in(spans, span_in, elasticity_psi, inertia, load_plf)) / may,
      span_in: sagSpan_in(spans, sag, elasticity_psi, inertia, load_plf),
    };
  });
}

/** Sawn lumber of one or more pieces side by side under a uniform load, lb/ft. Shear leaves out the load within a depth of the supports (NDS 3.4.3.1). */
export function lumberMember(
  section: Section,
  pieces: number,
  allowed: Allowed,
  spans: Spans,
  span_in: number,
  load_plf: number,
  sags: readonly Sag[],
): MemberResult {
  const wide = section.wide_in * pieces;
  const modulus = modulus_in3(section) * pieces;
  const inertia = inertia_in4(section) * pieces;
  const bend = ((load_plf / 12) * span_in ** 2) / beam[spans].bending / modulus;
  const shearForce = Math.max(0, (beam[spans].shear * load_plf * (span_in - 2 * section.deep_in)) / 12);
  const shear = (1.5 * shearForce) / (area_in2(section) * pieces);
  return judged([
    { kind: "bending", of100: (100 * bend) / allowed.bending, span_in: bendingSpan_in(spans, allowed.bending, modulus, load_plf) },
    {
      kind: "shear",
      of100: (100 * shear) / allowed.shear,
      span_in: lumberShearSpan_in(spans, allowed.shear, wide, section.deep_in, load_plf),
    },
    ...sagCheck(spans, span_in, sags, allowed.elasticity, inertia, load_plf),
  ]);
}

/** A strip of plywood a foot wide. Rolling shear is checked on the clear span between supports `support_in` wide. */
export function plywoodMember(
  plies: Plies,
  ply: PlyClass,
  spans: Spans,
  span_in: number,
  support_in: number,
  pressure_psf: number,
  sags: readonly Sag[],
): MemberResult {
  const bend = ((pressure_psf / 12) * span_in ** 2) / beam[spans].bending / plies.modulus_in3;
  const clear = Math.max(0, span_in - support_in);
  const roll = (beam[spans].shear * (pressure_psf / 12) * clear) / plies.rolling_in2;
  return judged([
    { kind: "bending", of100: (100 * bend) / ply.bending, span_in: bendingSpan_in(spans, ply.bending, plies.modulus_in3, pressure_psf) },
    {
      kind: "rolling shear",
      of100: (100 * roll) / ply.rolling,
      span_in: rollingShearSpan_in(spans, ply.rolling, plies.rolling_in2, pressure_psf) + support_in,
    },
    ...sagCheck(spans, span_in, sags, ply.elasticity, plies.inertia_in4, pressure_psf),
  ]);
}

/** Bearing across the grain of one member on another. */
export function bearing(load_lb: number, area: number, allowed_psi: number): MemberCheck {
  return { kind: "bearing", of100: (100 * load_lb) / area / allowed_psi, span_in: null };
}

/** A tie, bolt or strap in tension against its allowable load. */
export function tension(load_lb: number, allowed_lb: number): MemberCheck {
  return { kind: "tension", of100: (100 * load_lb) / allowed_lb, span_in: null };
}

/** The same under equal point loads, lb each; coefficients by `pointCoefficients`. The spans are those at which the same pattern, stretched, is just carried. */
export function pointMember(
  section: Section,
  pieces: number,
  allowed: Allowed,
  span_in: number,
  load_lb: number,
  by: PointCoefficients,
  sags: readonly Sag[],
): MemberResult {
  const modulus = modulus_in3(section) * pieces;
  const stiff = allowed.elasticity * inertia_in4(section) * pieces;
  const may = allowed.bending * modulus;
  return judged([
    { kind: "bending", of100: (100 * by.bending * load_lb * span_in) / may, span_in: may / (by.bending * load_lb) },
    { kind: "shear", of100: (150 * by.shear * load_lb) / (area_in2(section) * pieces) / allowed.shear, span_in: null },
    ...sags.map((sag): MemberCheck => {
      const limit = sag.kind === "ratio" ? span_in / sag.of : sag.inches;
      const square = stiff / (by.sag * load_lb);
      return {
        kind: "sag",
        of100: (100 * by.sag * load_lb * span_in ** 3) / stiff / limit,
        span_in: sag.kind === "ratio" ? Math.sqrt(square / sag.of) : Math.cbrt(square * sag.inches),
      };
    }),
  ]);
}

/**
 * A beam on two supports `span_in` apart whose load, lb in all, lies evenly on the `loaded_in` in its middle: a column band, which reaches past the side it holds
 * to its corner bolts. M = W (2 l - b) / 8, V = W / 2, sag = W (8 l³ - 4 l b² + b³) / (384 E I).
 */
export function patchMember(
  section: Section,
  pieces: number,
  allowed: Allowed,
  span_in: number,
  loaded_in: number,
  load_lb: number,
  sags: readonly Sag[],
): MemberResult {
  const b = Math.min(loaded_in, span_in);
  const modulus = modulus_in3(section) * pieces;
  const stiff = allowed.elasticity * inertia_in4(section) * pieces;
  const moment = (load_lb * (2 * span_in - b)) / 8;
  const sagging = (load_lb * (8 * span_in ** 3 - 4 * span_in * b * b + b ** 3)) / (384 * stiff);
  const bendingSpan = (8 * allowed.bending * modulus) / load_lb / 2 + b / 2;
  return judged([
    { kind: "bending", of100: (100 * moment) / modulus / allowed.bending, span_in: Math.max(0, bendingSpan) },
    { kind: "shear", of100: (75 * load_lb) / (area_in2(section) * pieces) / allowed.shear, span_in: null },
    ...sags.map(
      (sag): MemberCheck => ({
        kind: "sag",
        of100: (100 * sagging) / (sag.kind === "ratio" ? span_in / sag.of : sag.inches),
        span_in: null,
      }),
    ),
  ]);
}

/** Bending and shear given outright, lb in and lb: for loads no table has. */
export function forcedMember(section: Section, pieces: number, allowed: Allowed, moment_lb_in: number, shear_lb: number): MemberCheck[] {
  return [
    { kind: "bending", of100: (100 * moment_lb_in) / (modulus_in3(section) * pieces) / allowed.bending, span_in: null },
    { kind: "shear", of100: (150 * shear_lb) / (area_in2(section) * pieces) / allowed.shear, span_in: null },
  ];
}
