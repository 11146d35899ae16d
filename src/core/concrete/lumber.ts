/**
 * Allowable stresses of sawn lumber, NDS (National Design Specification for Wood Construction) Table 4.3.1 with the factors of its Supplement, US units as
 * published. Read in university lectures except where marked from memory. Edition in use: values as in NDS 2005 and later lectures.
 */
import { type Grade, postsAndTimbers } from "./lumber-grades";
import { type Section, sections } from "./lumber-sizes";

export interface Use {
  /** CD: 1.25 up to seven days in all, 1.15 up to two months (NDS Table 2.3.2, from memory), 1.0 when reused, 1.6 for wind. */
  readonly duration: 1 | 1.15 | 1.25 | 1.6;
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

type Rows = readonly (readonly [upTo_in: number, factor: number])[];

/** Size factor CF for bending by the larger side (Table 4A; 2x4 to 2x10 and 4x4 to 4x8 read, the others from memory). */
const bendingBySize: Rows = [
  [3.5, 1.5],
  [4.5, 1.4],
  [5.5, 1.3],
  [7.25, 1.2],
  [9.25, 1.1],
  [11.25, 1],
];
const bendingBySize4: Rows = [
  [3.5, 1.5],
  [4.5, 1.4],
  [7.25, 1.3],
  [9.25, 1.2],
  [11.25, 1.1],
  [13.25, 1],
];
const compressionBySize: Rows = [
  [3.5, 1.15],
  [5.5, 1.1],
  [7.25, 1.05],
  [11.25, 1],
];
/** Flat use factor Cfu from this width on (2x4 read, the others from memory). */
const flatUse: Rows = [
  [2.5, 1],
  [4.5, 1.1],
  [7.25, 1.15],
  [Number.MAX_VALUE, 1.2],
];
const flatUse4: Rows = [
  [4.5, 1],
  [7.25, 1.05],
  [Number.MAX_VALUE, 1.1],
];

const within = (rows: Rows, size_in: number, beyond: number): number => rows.find(([upTo]) => size_in <= upTo)?.[1] ?? beyond;

/** Thinner than this is a board, for which the tables of dimension lumber give no factors; thicker than the other a post or timber. */
const boardUnder_in = 1.2;
const timberFrom_in = 4.6;

interface Base {
  readonly grade: Grade;
  readonly bending: number;
  readonly compression: number;
  readonly flat: number;
}

/** Values of a piece with size and flat use in them, before use. */
function base(g: Grade, section: Section): Base {
  const thin = Math.min(section.wide_in, section.deep_in);
  const large = Math.max(section.wide_in, section.deep_in);
  if (thin >= timberFrom_in) {
    const grade = least(g, postsAndTimbers);
    return { grade, bending: grade.bending, compression: grade.compression, flat: 1 };
  }
  if (thin < boardUnder_in) return { grade: g, bending: g.bending, compression: g.compression, flat: 1 };
  const thick = thin > 3;
  const flat = section.wide_in > section.deep_in ? within(thick ? flatUse4 : flatUse, large, 1) : 1;
  if (g.byDepth !== undefined) {
    const row = g.byDepth.find(({ upTo_in }) => large <= upTo_in) ?? g.byDepth[g.byDepth.length - 1];
    return { grade: g, bending: row?.bending ?? g.bending, compression: row?.compression ?? g.compression, flat };
  }
  const bending = g.bending * within(thick ? bendingBySize4 : bendingBySize, large, 0.9);
  return { grade: g, bending, compression: g.compression * within(compressionBySize, large, 0.9), flat };
}

const least = (a: Grade, b: Grade): Grade => ({
  ...b,
  bending: Math.min(a.bending, b.bending),
  shear: Math.min(a.shear, b.shear),
  bearing: Math.min(a.bearing, b.bearing),
  compression: Math.min(a.compression, b.compression),
  elasticity: Math.min(a.elasticity, b.elasticity),
  elasticityMin: Math.min(a.elasticityMin, b.elasticityMin),
});

/** Whether values of a piece come from the table of posts and timbers, whose rows are only known from memory. */
export function isTimber(section: Section): boolean {
  return Math.min(section.wide_in, section.deep_in) >= timberFrom_in;
}

/** Adjusted values of a section, psi (NDS Table 4.3.1; wet service factors Supplement 4A). A section wider than deep is used flat. */
export function allowedOf(g: Grade, section: Section, use: Use): Allowed {
  const { grade, bending, compression, flat } = base(g, section);
  const wetBending = use.wet && bending > 1150 ? 0.85 : 1;
  const wetCompression = use.wet && compression > 750 ? 0.8 : 1;
  return {
    bending: bending * use.duration * wetBending * flat * (use.repetitive ? 1.15 : 1),
    shear: grade.shear * use.duration * (use.wet ? 0.97 : 1),
    bearing: grade.bearing * (use.wet ? 0.67 : 1),
    elasticity: grade.elasticity * (use.wet ? 0.9 : 1),
    elasticityMin: grade.elasticityMin * (use.wet ? 0.9 : 1),
    compression: compression * use.duration * wetCompression,
  };
}

/** The same of a size by its name ("2x4", "2x4 flat"). */
export function allowed(g: Grade, size: string, use: Use): Allowed {
  const section = sections[size];
  if (section === undefined) throw new RangeError(`no size ${size} in the table`);
  return allowedOf(g, section, use);
}
