import { fromModel, toModel } from "../base";
import type { BarSet, FaceName, Mix, PourElement } from "../build";
import {
  type Bar,
  bar,
  barOwnSag_in,
  barSpan_in,
  barUnderFoot,
  cover_in,
  crowded,
  development_in,
  faceCover_in,
  facesOf,
  foot_lb,
  lap_in,
  tieSpacing_in,
} from "../concrete";
import { isStanding, leastDimension_mm } from "./shapes";

/** What the tables and formulas say of one set of bars of an element. Lengths mm, of one element. */
export interface BarSheet {
  /** Position among the element's sets. */
  readonly bars: number;
  readonly diameter_mm: number;
  /** Of the set. */
  readonly mass_kg: number;
  readonly cover: { readonly given_mm: number | null; readonly least_mm: number };
  /** Least cover against each face of the element, earth or not. */
  readonly faces: readonly { readonly face: FaceName; readonly least_mm: number }[];
  /** In tension; `top` with more than 12 in of fresh concrete below it. */
  readonly development_mm: number;
  readonly lap_mm: number;
  readonly top: { readonly development_mm: number; readonly lap_mm: number };
  /** Of ties: how far apart at most. */
  readonly most_mm: number | null;
  /** Lying bars between chairs or hangers; `fits_mm` the free length that does. Null for what stands or goes around. */
  readonly span: BarSpan | null;
}

export interface BarSpan {
  readonly ends: "simple" | "held";
  readonly fits_mm: number;
  /** At the free length written, by its own weight and with a person on one bar; null where none is written. */
  readonly at: {
    readonly supported_mm: number;
    readonly ownSag_mm: number;
    readonly footSag_mm: number;
    readonly footStress_MPa: number;
  } | null;
}

const inMm = (inches: number): number => toModel("length", inches, "in");
const inIn = (length_mm: number): number => fromModel("length", length_mm, "in");
const inPsi = (stress_MPa: number): number => fromModel("pressure", stress_MPa, "psi");

/** Sheets of all sets of an element; a size that is not made has none. */
export function barSheets(element: PourElement, mix: Mix): BarSheet[] {
  return element.bars.flatMap((set, i) => {
    const steel = bar(set.size);
    return steel === null ? [] : [sheet(element, mix, set, i, steel)];
  });
}

function sheet(element: PourElement, mix: Mix, set: BarSet, i: number, steel: Bar): BarSheet {
  const longer = isCrowded(set, steel) ? crowded : 1;
  const [concrete, steelYield] = [inPsi(mix.strength_MPa), inPsi(set.yield_MPa)];
  const lengths = (top: boolean) => ({
    development_mm: inMm(longer * development_in(steel, concrete, steelYield, top)),
    lap_mm: inMm(longer * lap_in(steel, concrete, steelYield, top)),
  });
  return {
    bars: i,
    diameter_mm: inMm(steel.diameter_in),
    mass_kg: barMass_kg(set, steel),
    cover: { given_mm: set.cover_mm, least_mm: inMm(cover_in(set.exposure, set.size)) },
    faces: facesOf(element.shape, element.faces).map(({ face, against }) => ({
      face,
      least_mm: inMm(faceCover_in(against === "earth", set.exposure, set.size)),
    })),
    ...lengths(false),
    top: lengths(true),
    most_mm: set.sort === "tie" ? tieMost_mm(element, steel) : null,
    span: set.sort === "tie" || isStanding(element.shape) ? null : span(set, steel),
  };
}

/** Mass of all bars of a set, kg. */
export function barMass_kg(set: Pick<BarSet, "number" | "long_mm">, steel: Bar): number {
  return toModel("mass", set.number * fromModel("length", set.long_mm, "ft") * steel.weight_lb_ft, "lb");
}

function isCrowded(set: BarSet, steel: Bar): boolean {
  const across = inMm(steel.diameter_in);
  return (set.spacing_mm !== null && set.spacing_mm - across < 2 * across) || (set.cover_mm !== null && set.cover_mm < across);
}

/** By the thinnest bar they go around. */
function tieMost_mm(element: PourElement, tie: Bar): number | null {
  const around = element.bars.filter((s) => s.sort === "bar").flatMap((s) => bar(s.size) ?? []);
  if (around.length === 0) return null;
  const thinnest = around.reduce((thin, b) => (b.diameter_in < thin.diameter_in ? b : thin));
  return inMm(tieSpacing_in(thinnest, tie, inIn(leastDimension_mm(element.shape))));
}

/** A tied mat shares the load and holds its ends; a single bar lies on its chairs. */
function span(set: BarSet, steel: Bar): BarSpan {
  const ends = set.sort === "mat" ? "held" : "simple";
  const fits_mm = inMm(barSpan_in(steel, inPsi(set.yield_MPa), ends));
  if (set.supported_mm === null) return { ends, fits_mm, at: null };
  const free = inIn(set.supported_mm);
  const underfoot = barUnderFoot(steel, free, foot_lb, ends);
  return {
    ends,
    fits_mm,
    at: {
      supported_mm: set.supported_mm,
      ownSag_mm: inMm(barOwnSag_in(steel, free, ends)),
      footSag_mm: inMm(underfoot.sag_in),
      footStress_MPa: toModel("pressure", underfoot.stress_psi, "psi"),
    },
  };
}
