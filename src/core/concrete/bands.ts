/** Bands around a square or rectangular column form: what each carries, and a layout from the base up. Statics on the pressure diagram. */
import type { Sag } from "./beam";
import { reactions_lb_ft, reactionsOnFoot_lb_ft } from "./continuous";
import { type Diagram, pressureAt_psf, thrust_lb_ft } from "./form-loads";
import type { Allowed } from "./lumber";
import type { Section } from "./lumber-sizes";
import { judged, type MemberResult, patchMember, tension } from "./member";

export interface BandStuff {
  readonly section: Section;
  readonly pieces: number;
  readonly allowed: Allowed;
  /** Clear length of a band between its corner bolts, in. */
  readonly span_in: number;
  /** Side of the column that the band holds, in: its load lies on the middle of the span. */
  readonly side_in: number;
  /** Allowable tension of a corner bolt, lb; null where it is not known and not judged. */
  readonly bolt_lb: number | null;
  /** l/360 where nothing else is said. */
  readonly sags?: readonly Sag[];
}

export interface Stretch {
  /** Above the foot, in. */
  readonly at_in: number;
  /** The stretch of form it carries, in above the foot. */
  readonly from_in: number;
  readonly to_in: number;
  /** For each foot of width, lb/ft. */
  readonly line_lb_ft: number;
  /** The same where what lies behind runs through over several, if that is more: what it has to carry. */
  readonly most_lb_ft: number;
}

export interface Band extends Stretch {
  readonly load_lb: number;
  readonly bolt_lb: number;
  readonly result: MemberResult;
}

/** Force on a foot of width between two heights above the foot, lb/ft. */
export function between_lb_ft(d: Diagram, from_in: number, to_in: number): number {
  return thrust_lb_ft(d, d.height_ft - to_in / 12, d.height_ft - from_in / 12);
}

/**
 * Each band or wale carries the form to half way to its neighbours, the lowest down to the foot and the highest up to the top; these shares add up to the diagram.
 * Battens and studs that run through leave more on some, on a foot that is held too.
 */
export function stretches(d: Diagram, at_in: readonly number[], footHeld = false): Stretch[] {
  const sorted = [...at_in].sort((a, b) => a - b);
  const apart = sorted.every((at, i) => i === 0 || at > (sorted[i - 1] as number));
  const through = apart && sorted.length > 0 ? reactions_lb_ft(d, sorted) : [];
  const onFoot = footHeld && through.length > 0 ? reactionsOnFoot_lb_ft(d, sorted) : null;
  return sorted.map((at, i) => {
    const from_in = i === 0 ? 0 : (at + (sorted[i - 1] as number)) / 2;
    const to_in = i === sorted.length - 1 ? d.height_ft * 12 : (at + (sorted[i + 1] as number)) / 2;
    const line_lb_ft = between_lb_ft(d, from_in, to_in);
    return { at_in: at, from_in, to_in, line_lb_ft, most_lb_ft: Math.max(line_lb_ft, through[i] ?? 0, onFoot?.[i] ?? 0) };
  });
}

const usualSags: readonly Sag[] = [{ kind: "ratio", of: 360 }];

/** One band under a load, lb: on its own span, and on the corner bolt that takes half of it. */
export function bandUnder(stuff: BandStuff, load_lb: number): MemberResult {
  const { section, pieces, allowed, span_in, side_in, bolt_lb, sags = usualSags } = stuff;
  const member = patchMember(section, pieces, allowed, span_in, side_in, load_lb, sags);
  return bolt_lb === null ? member : judged([...member.checks, tension(load_lb / 2, bolt_lb)]);
}

/** Bands by their shares to half way alone. */
export function bands(d: Diagram, at_in: readonly number[], stuff: BandStuff): Band[] {
  return stretches(d, at_in).map((stretch) => {
    const load_lb = (stretch.line_lb_ft * stuff.side_in) / 12;
    return { ...stretch, load_lb, bolt_lb: load_lb / 2, result: bandUnder(stuff, load_lb) };
  });
}

export interface LayoutRules {
  /** What a member carries of what it may, of 100, with so much on each foot of width. */
  readonly of100: (line_lb_ft: number) => number;
  /** The widest gap the sheathing or the uprights allow at a pressure, in. */
  readonly gap_in: (pressure_psf: number) => number;
  /** The lowest stands no higher than this, and the highest no further under the top. */
  readonly first_in: number;
  readonly widest_in: number;
  /** Heights are multiples of this. */
  readonly step_in: number;
}

/**
 * Bands or wales from the base up by their shares to half way, in above the foot: the lowest at `first_in`, every gap as wide as what lies behind and the member itself allow. Null when
 * even the closest (4 in apart) do not carry it.
 */
export function layoutBy(d: Diagram, rules: LayoutRules): readonly number[] | null {
  const { first_in, step_in } = rules;
  const height_in = d.height_ft * 12;
  const placed = [Math.min(first_in, height_in / 2)];
  let low = 0;
  while (height_in - (placed[placed.length - 1] as number) > first_in) {
    const at = placed[placed.length - 1] as number;
    const room = Math.max(step_in, Math.floor((height_in - at - 1) / step_in) * step_in);
    const next = widest(d, rules, low, at, Math.min(rules.widest_in, room));
    if (next === null) return null;
    low = (at + next) / 2;
    placed.push(next);
  }
  return stretches(d, placed).every(({ line_lb_ft }) => rules.of100(line_lb_ft) <= 100) ? placed : null;
}

const closest_in = 4;

/** As wide as the member itself carries, and the next one with a gap as wide above it: so gaps only widen from the foot up. */
function widest(d: Diagram, rules: LayoutRules, low_in: number, at_in: number, most_in: number): number | null {
  const byGap = Math.min(most_in, rules.gap_in(pressureAt_psf(d, d.height_ft - at_in / 12)));
  const least = Math.min(closest_in, most_in);
  for (let steps = Math.floor(byGap / rules.step_in + 1e-9); steps * rules.step_in >= least - 1e-9; steps -= 1) {
    const gap = steps * rules.step_in;
    const own = between_lb_ft(d, low_in, at_in + gap / 2);
    const next = between_lb_ft(d, at_in + gap / 2, Math.min(d.height_ft * 12, at_in + 1.5 * gap));
    if (rules.of100(own) <= 100 && rules.of100(next) <= 100) return at_in + gap;
  }
  return null;
}

/** `layoutBy` for the bands of a column, in steps of half an inch. */
export function layout(
  d: Diagram,
  stuff: BandStuff,
  sheathing_in: (pressure_psf: number) => number,
  first_in = 4,
  widest_in = 24,
): readonly number[] | null {
  const of100 = (line_lb_ft: number) => bandUnder(stuff, (line_lb_ft * stuff.side_in) / 12).governs.of100;
  return layoutBy(d, { of100, gap_in: sheathing_in, first_in, widest_in, step_in: 0.5 });
}
