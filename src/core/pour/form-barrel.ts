import type { ElementShape } from "../build";
import { weightOf } from "./form-units";

type Barrel = Extract<ElementShape, { kind: "barrel" }>;

/** Sums over a vault are taken in so many strips. */
const slices = 32;

/** How steep the soffit is where it springs: half the angle that its arc turns through. */
export const springing_deg = ({ span_mm, rise_mm }: Barrel): number => (2 * Math.atan2(2 * rise_mm, span_mm) * 180) / Math.PI;

/** Depth of fresh concrete measured plumb over a soffit point so far from the crown, mm: between two circles of the same centre. */
export function barrelDepth_mm({ span_mm, rise_mm, thick_mm }: Barrel, from_mm: number): number {
  if (rise_mm === 0) return thick_mm;
  const radius = (span_mm ** 2 / 4 + rise_mm ** 2) / (2 * rise_mm);
  const x = Math.min(Math.abs(from_mm), radius);
  return Math.sqrt((radius + thick_mm) ** 2 - x * x) - Math.sqrt(Math.max(0, radius * radius - x * x));
}

/** Mean depth over the strip of one row of shores next to where it springs, the heaviest: pressure is normal to the face, and its vertical share is this weight. */
export function barrelStrip_mm(shape: Barrel, strip_mm: number): number {
  const wide = Math.min(strip_mm, shape.span_mm);
  let sum = 0;
  for (let i = 0; i < slices; i += 1) sum += barrelDepth_mm(shape, shape.span_mm / 2 - ((i + 0.5) / slices) * wide);
  return sum / slices;
}

/** Push of one half of the fresh vault against the other, for each metre along it: what the ribs feel while only one side is filled. */
export function barrelPush_kN_m(shape: Barrel, weight_kg_m3: number): number {
  const { span_mm, rise_mm } = shape;
  if (rise_mm === 0) return 0;
  const radius = (span_mm ** 2 / 4 + rise_mm ** 2) / (2 * rise_mm);
  const height = (x: number) => Math.sqrt(Math.max(0, radius * radius - x * x));
  let sum = 0;
  for (let i = 0; i < slices; i += 1) {
    const [from, to] = [(i / slices) * (span_mm / 2), ((i + 1) / slices) * (span_mm / 2)];
    sum += barrelDepth_mm(shape, (from + to) / 2) * (height(from) - height(to));
  }
  return (weightOf(weight_kg_m3) * sum) / 1e6;
}
