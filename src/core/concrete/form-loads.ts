/** Forces a form feels from the pressure diagram: full head down to a depth, then constant. Statics; checked against CHECK values computed from it. */

export interface Diagram {
  readonly height_ft: number;
  readonly weight_pcf: number;
  readonly most_psf: number;
  /** Fresh concrete standing over the top of the form; none where not said. */
  readonly over_ft?: number;
}

/** Depth below the top of the form down to which it is plain head. */
export const kneeOf_ft = ({ weight_pcf, most_psf, over_ft = 0 }: Diagram, deepest_ft: number): number =>
  Math.max(0, Math.min(most_psf / weight_pcf - over_ft, deepest_ft));

/** Pressure at a depth below the top of the form, psf; none above it. */
export function pressureAt_psf(d: Diagram, depth_ft: number): number {
  return Math.min(d.weight_pcf * (Math.max(0, depth_ft) + (d.over_ft ?? 0)), d.most_psf);
}

/** Force on a foot of width between two depths, lb/ft: the diagram's area, exactly. */
export function thrust_lb_ft(d: Diagram, from_ft: number, to_ft: number): number {
  const knee = kneeOf_ft(d, d.height_ft);
  const head = (depth_ft: number) => d.weight_pcf * ((depth_ft * depth_ft) / 2 + (d.over_ft ?? 0) * depth_ft);
  const area = (depth_ft: number) => (depth_ft <= knee ? head(depth_ft) : head(knee) + d.most_psf * (depth_ft - knee));
  return area(Math.min(to_ft, d.height_ft)) - area(Math.max(0, from_ft));
}

/** Where that force acts, ft above the foot of the form. */
export function thrustHeight_ft(d: Diagram): number {
  const knee = kneeOf_ft(d, d.height_ft);
  const triangle = (d.weight_pcf * knee * knee) / 2;
  const over = d.weight_pcf * (d.over_ft ?? 0) * knee;
  const block = d.most_psf * (d.height_ft - knee);
  const total = triangle + over + block;
  if (total === 0) return 0;
  return (triangle * (d.height_ft - (2 / 3) * knee) + over * (d.height_ft - knee / 2) + (block * (d.height_ft - knee)) / 2) / total;
}

/**
 * Upward force on a foot of length of one face that leans over the concrete, lb/ft: the pressure diagram projected on the horizontal. `batter` is run over
 * rise (1:8 is 0.125), positive where the wall is wider at its foot. Zero on a vertical face; at full head the weight of the missing wedge.
 */
export function uplift_lb_ft(d: Diagram, batter: number): number {
  return Math.max(0, batter) * thrust_lb_ft(d, 0, d.height_ft);
}

/** What must hold a form down, lb: uplift of all faces less the form's own weight, never under 0. No factor of safety in it. */
export function holdDown_lb(uplift_lb: number, formWeight_lb: number): number {
  return Math.max(0, uplift_lb - formWeight_lb);
}

/** Bracing against wind on a wall form, lb/ft at its top: at least 100 lb/ft, or 15 lb/ft2 over half its height (ACI 347 2.2.3, read in a lecture). */
export function windBrace_lb_ft(height_ft: number, wind_psf = 15): number {
  return Math.max(100, (Math.max(wind_psf, 15) * height_ft) / 2);
}

/** Bracing of a slab form, lb per foot of edge: 100, or 2 % of the dead load (ACI 347 2.2.3.1, read in a lecture). */
export function slabBrace_lb_ft(dead_psf: number, width_ft: number): number {
  return Math.max(100, 0.02 * dead_psf * width_ft);
}

/** Force along a brace that takes a horizontal force, lb. */
export function alongBrace_lb(horizontal_lb: number, run_ft: number, rise_ft: number): number {
  return (horizontal_lb * Math.hypot(run_ft, rise_ft)) / run_ft;
}

/** Ground a mudsill needs, ft2. */
export function mudsill_ft2(load_lb: number, soil_psf: number): number {
  return load_lb / soil_psf;
}

/** Design load of a slab form, psf: concrete, forms, live (50, with buggies 75), at least 100 (125) (ACI 347 2.2.1, read). */
export function slabForm_psf(thick_in: number, form_psf: number, weight_pcf = 150, buggies = false): number {
  return Math.max((weight_pcf * thick_in) / 12 + form_psf + (buggies ? 75 : 50), buggies ? 125 : 100);
}
