/** Bands around a square or rectangular column form: what each carries, and a layout from the base up. Statics on the pressure diagram. */
import { type Diagram, thrust_lb_ft } from "./form-loads";
import type { Allowed, Section } from "./lumber";
import { judged, lumberMember, type MemberResult, tension } from "./member";

export interface BandStuff {
  readonly section: Section;
  readonly pieces: number;
  readonly allowed: Allowed;
  /** Clear length of a band between its corner bolts, in. */
  readonly span_in: number;
  /** Side of the column that the band spans, in. */
  readonly side_in: number;
  /** Allowable tension of a corner bolt, lb. */
  readonly bolt_lb: number;
}

export interface Band {
  /** Above the foot, in. */
  readonly at_in: number;
  /** The stretch of form it carries, in above the foot. */
  readonly from_in: number;
  readonly to_in: number;
  readonly load_lb: number;
  readonly bolt_lb: number;
  readonly result: MemberResult;
}

/** Each band carries the form to half way to its neighbours, the lowest down to the foot and the highest up to the top. */
export function bands(d: Diagram, at_in: readonly number[], stuff: BandStuff): Band[] {
  const height_in = d.height_ft * 12;
  const sorted = [...at_in].sort((a, b) => a - b);
  return sorted.map((at, i) => {
    const from_in = i === 0 ? 0 : (at + (sorted[i - 1] as number)) / 2;
    const to_in = i === sorted.length - 1 ? height_in : (at + (sorted[i + 1] as number)) / 2;
    return { at_in: at, from_in, to_in, ...carried(d, from_in, to_in, stuff) };
  });
}

function carried(d: Diagram, from_in: number, to_in: number, stuff: BandStuff): { load_lb: number; bolt_lb: number; result: MemberResult } {
  const height_in = d.height_ft * 12;
  const line_lb_ft = thrust_lb_ft(d, (height_in - to_in) / 12, (height_in - from_in) / 12);
  const load_lb = (line_lb_ft * stuff.side_in) / 12;
  const bolt = load_lb / 2;
  const along = (load_lb * 12) / stuff.span_in;
  const member = lumberMember(stuff.section, stuff.pieces, stuff.allowed, 1, stuff.span_in, along, [{ kind: "ratio", of: 360 }]);
  return { load_lb, bolt_lb: bolt, result: judged([...member.checks, tension(bolt, stuff.bolt_lb)]) };
}

/**
 * Bands from the base up, in above the foot: the lowest within `first_in`, every gap as wide as the sheathing (`sheathing_in` at a pressure) and the band
 * itself allow, in steps of half an inch, never over `widest_in`. Null when even the closest bands (4 in) do not carry it.
 */
export function layout(
  d: Diagram,
  stuff: BandStuff,
  sheathing_in: (pressure_psf: number) => number,
  first_in = 4,
  widest_in = 24,
): readonly number[] | null {
  const height_in = d.height_ft * 12;
  const placed = [Math.min(first_in, height_in / 2)];
  let low = 0;
  while (height_in - (placed[placed.length - 1] as number) > first_in) {
    const at = placed[placed.length - 1] as number;
    const next = widest(d, stuff, sheathing_in, low, at, Math.min(widest_in, height_in - at - 1));
    if (next === null) return null;
    low = (at + next) / 2;
    placed.push(next);
  }
  return bands(d, placed, stuff).every((band) => band.result.governs.of100 <= 100) ? placed : null;
}

function widest(
  d: Diagram,
  stuff: BandStuff,
  sheathing_in: (pressure_psf: number) => number,
  low_in: number,
  at_in: number,
  most_in: number,
): number | null {
  const pressure = Math.min(d.weight_pcf * (d.height_ft - at_in / 12), d.most_psf);
  const bySheathing = Math.min(most_in, sheathing_in(pressure));
  for (let gap = Math.floor(bySheathing * 2) / 2; gap >= Math.min(4, most_in); gap -= 0.5) {
    if (carried(d, low_in, at_in + gap / 2, stuff).result.governs.of100 <= 100) return at_in + gap;
  }
  return null;
}
