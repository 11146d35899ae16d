import { between_lb_ft, type Diagram, pressureAt_psf, thrust_lb_ft, thrustHeight_ft } from "../concrete";
import { feet, inches, kNmOfPoundsPerFoot, kPaOfPsf, psfOf } from "./form-units";
import type { PressureCase } from "./result";

/** The pressure diagram a form is judged by: heights in mm above its foot. */
export interface Head {
  readonly high_mm: number;
  readonly most_kPa: number;
  /** The same for the formulas of members. */
  readonly diagram: Diagram;
}

/** @param hydrostatic_mm down to here, from the top of the fresh concrete, it grows with the depth, and is constant below */
export function headOf(
  high_mm: number,
  { most_kPa, hydrostatic_mm }: Pick<PressureCase, "most_kPa" | "hydrostatic_mm">,
  over_mm = 0,
): Head {
  const most = psfOf(most_kPa);
  return {
    high_mm,
    most_kPa,
    diagram: { height_ft: feet(high_mm), weight_pcf: most / feet(hydrostatic_mm), most_psf: most, over_ft: feet(over_mm) },
  };
}

/** The same form under another greatest pressure, down to where the weight of its concrete reaches it. */
export function headAt(head: Head, most_kPa: number): Head {
  return { ...head, most_kPa, diagram: { ...head.diagram, most_psf: psfOf(most_kPa) } };
}

/** Pressure at a height above the foot, kPa. */
export function pressureAt_kPa({ diagram, high_mm }: Head, up_mm: number): number {
  return kPaOfPsf(pressureAt_psf(diagram, feet(high_mm - up_mm)));
}

/** Force on a metre of width between two heights above the foot, kN/m. */
export function between_kN_m({ diagram }: Head, from_mm: number, to_mm: number): number {
  return kNmOfPoundsPerFoot(between_lb_ft(diagram, inches(from_mm), inches(to_mm)));
}

/** On a metre of width of the whole face, kN/m, and the height above the foot at which it acts, mm. */
export function thrust_kN_m({ diagram }: Head): number {
  return kNmOfPoundsPerFoot(thrust_lb_ft(diagram, 0, diagram.height_ft));
}

export function thrustAt_mm({ diagram }: Head): number {
  return thrustHeight_ft(diagram) * 304.8;
}
