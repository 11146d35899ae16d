/** What one form member carries of what it may: each check as asked over allowed, the one that gives first, and the largest span each allows. */
import { beam, bendingSpan_in, lumberShearSpan_in, rollingShearSpan_in, type Sag, type Spans, sag_in, sagSpan_in } from "./beam";
import { type Allowed, area_in2, inertia_in4, modulus_in3, type Section } from "./lumber";
import type { Plies, PlyClass } from "./plywood";

export type CheckKind = "bending" | "shear" | "rolling shear" | "sag" | "bearing" | "tension" | "compression";

export interface MemberCheck {
  readonly kind: CheckKind;
  /** 100: exactly what it may. */
  readonly of100: number;
  /** Largest span by this check alone, in; null where the check has no span. */
  readonly span_in: number | null;
}

export interface MemberResult {
  readonly checks: readonly MemberCheck[];
  readonly governs: MemberCheck;
  /** The smallest of the spans; null when no check has one. */
  readonly largestSpan_in: number | null;
}

export function judged(checks: readonly MemberCheck[]): MemberResult {
  const governs = checks.reduce((worst, check) => (check.of100 > worst.of100 ? check : worst));
  const spans = checks.flatMap((check) => (check.span_in === null ? [] : [check.span_in]));
  return { checks, governs, largestSpan_in: spans.length > 0 ? Math.min(...spans) : null };
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
