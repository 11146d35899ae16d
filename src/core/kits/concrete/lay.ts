import {
  allowedOf,
  bandUnder,
  type Diagram,
  grades,
  layoutBy,
  lumberMember,
  type MemberResult,
  pressureAt_psf,
  type Sag,
  type Section,
  sections,
  stretches,
  unknownNew,
  unknownSalvaged,
} from "../../concrete";
import type { Making } from "../making";

/** As forms are judged: l/360 and 1/16 in. */
export const sags: readonly Sag[] = [
  { kind: "ratio", of: 360 },
  { kind: "fixed", inches: 1 / 16 },
];

/** What a form is made of here: a grade that lumber yards have, or salvaged stuff of no known grade. */
export type Lumber = "bought" | "salvaged";
export const grade = "SPF No 2";

/** Full head of fresh concrete, 150 lb/ft3, over a form so high. */
export function fullHead(high_mm: number): Diagram {
  const height_ft = high_mm / 304.8;
  return { height_ft, weight_pcf: 150, most_psf: 150 * height_ft };
}

/** What a European yard has in place of a trade size: the next planed size (EN 1313-1, from memory). */
const metricSize: Readonly<Record<string, string>> = {
  "2x4": "45x95",
  "2x6": "45x145",
  "2x8": "45x195",
  "2x10": "45x220",
  "2x12": "45x245",
  "4x4": "95x95",
  "6x6": "145x145",
};

/** The size of the build's own yard for a trade size, by the units in which the build is written. */
export function sizeAt(making: Making, size: string): string {
  const [name = size, ...flat] = size.split(" ");
  return making.either(size, [metricSize[name] ?? name, ...flat].join(" "));
}

/** Lumber as the document writes it; metric yards sort by other grades than the tables know, so that of a metric build stays the lowest likely. */
export function lumber(making: Making, trade: string, from: Lumber, more: object = {}): object {
  const size = sizeAt(making, trade);
  if (from === "salvaged") return { size, salvaged: true, ...more };
  return { size, ...making.either<object>({ grade }, {}), ...more };
}

/** A spacing that a builder lays out, no wider than this: on the half inch or 10 mm. */
export const onTape_in = (making: Making, spacing_in: number): number => making.onTape_mm(spacing_in * 25.4, "down") / 25.4;

export interface Beam {
  readonly section: Section;
  readonly pieces: number;
  readonly allowed: ReturnType<typeof allowedOf>;
}

/** So many pieces of a size, used before (CD 1.0): the judge takes reused unless it is said. */
export function beamOf(making: Making, size: string, pieces: number, from: Lumber): Beam {
  const section = sections[sizeAt(making, size)] as Section;
  const bought = making.either(grades[grade] as (typeof grades)[string], unknownNew);
  const wood = from === "salvaged" ? unknownSalvaged : bought;
  return { section, pieces, allowed: allowedOf(wood, section, { duration: 1, wet: false, repetitive: false }) };
}

interface Uprights extends Beam {
  readonly spacing_mm: number;
}

const worse = (a: MemberResult, b: MemberResult): MemberResult => (b.governs.of100 > a.governs.of100 ? b : a);

/** A beam over one span, which sags and bends most, or over two, which are sheared most: the worse, however it runs. */
export const beamUnder = (beam: Beam, span_in: number, line_lb_ft: number): MemberResult =>
  worse(
    lumberMember(beam.section, beam.pieces, beam.allowed, 1, span_in, line_lb_ft, sags),
    lumberMember(beam.section, beam.pieces, beam.allowed, 2, span_in, line_lb_ft, sags),
  );

const uprightUnder = (up: Uprights, span_in: number, psf: number): MemberResult => beamUnder(up, span_in, (psf * up.spacing_mm) / 304.8);

/** Bands and wales in this form carry at most so much of what they may, so that rounding and bearing find room. */
const full = 94;

interface Layout {
  readonly diagram: Diagram;
  readonly up: Uprights;
  /** What a band, or a wale with its ties, carries of what it may under a line load, lb/ft. */
  readonly across: (line_lb_ft: number) => number;
  readonly first_in: number;
  readonly widest_in: number;
  readonly step_in: number;
}

/** Every stretch of the uprights as one span, over the foot and under the top, and every band with what runs through brings on it. */
function carries({ diagram, up, across }: Layout, at_in: readonly number[]): boolean {
  const high_in = diagram.height_ft * 12;
  const gaps = at_in.every((at, index) => {
    const from = index === 0 ? 0 : (at_in[index - 1] as number);
    const psf = pressureAt_psf(diagram, diagram.height_ft - from / 12);
    return at - from < 1 || uprightUnder(up, at - from, psf).governs.of100 <= full;
  });
  const last = at_in[at_in.length - 1] as number;
  const over =
    high_in - last < 1 ||
    uprightUnder(up, 2 * (high_in - last), pressureAt_psf(diagram, diagram.height_ft - last / 12)).governs.of100 <= full;
  return gaps && over && stretches(diagram, at_in, true).every(({ most_lb_ft }) => across(most_lb_ft) <= full);
}

/** Heights above the foot, in; null where this stuff cannot carry it however close. */
export function heights_in(layout: Layout): readonly number[] | null {
  const { diagram, up, across, first_in, widest_in, step_in } = layout;
  const longest_in = (psf: number): number => uprightUnder(up, 12, Math.max(1, psf)).largestSpan_in ?? widest_in;
  for (const [share, gap, low] of [
    [1.1, 0.95, 1],
    [1.2, 0.9, 0.75],
    [1.35, 0.8, 0.6],
    [1.5, 0.7, 0.5],
  ] as const) {
    const found = layoutBy(diagram, {
      of100: (line) => across(line * share),
      gap_in: (psf) => gap * longest_in(psf),
      first_in: Math.max(step_in, Math.floor((first_in * low) / step_in + 1e-6) * step_in),
      widest_in,
      step_in,
    });
    if (found !== null && carries(layout, found)) return found;
  }
  return null;
}

/** A band of a column on its side, from corner bolt to corner bolt. */
export const bandAcross =
  (band: Beam, side_in: number, behind_in: number, bolt_lb: number) =>
  (line_lb_ft: number): number =>
    bandUnder({ ...band, span_in: side_in + 2 * behind_in + band.section.deep_in, side_in, bolt_lb, sags }, (line_lb_ft * side_in) / 12)
      .governs.of100;
