import { parseQuantity } from "../../../core/base";
import { quantityOf } from "../../write/written";

/** From the foot up, each as it was written. */
export function sortedHeights(heights: readonly unknown[]): readonly unknown[] {
  const at = (height: unknown) => parseQuantity("length", quantityOf(height)) ?? Number.POSITIVE_INFINITY;
  return [...heights].sort((a, b) => at(a) - at(b));
}

/** Where one more would go: the middle of the gap that carries most, by the pressure of a full head. In mm, to the half inch or to 10 mm. */
export function heightBetween(heights_mm: readonly number[], high_mm: number, units: "us" | "metric"): number {
  const ends = [0, ...[...heights_mm].sort((a, b) => a - b), high_mm];
  const gaps = ends.slice(1).map((to, index) => {
    const from = ends[index] as number;
    return { from, to, carries: (to - from) * (high_mm - (from + to) / 2) };
  });
  const most = gaps.reduce((best, gap) => (gap.carries > best.carries ? gap : best));
  const step = units === "us" ? 12.7 : 10;
  return Math.max(step, Math.round((most.from + most.to) / 2 / step) * step);
}
