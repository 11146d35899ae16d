import type { ElementShape } from "../../core/build";
import type { Line } from "./along";

/** What is cast over a form that carries it: its underside from the foot of the concrete up, and the rest of its outline. */
export interface Cast {
  readonly wide_mm: number;
  readonly high_mm: number;
  readonly under: Line;
  /** From the right end of the underside round over the top to its left end. */
  readonly over: Line;
  /** May be drawn shorter than it is. */
  readonly long: boolean;
}

const arcParts = 32;

/** Underside of a barrel: a segment of a circle over its span. */
function arc(span: number, rise: number): Line {
  const radius = ((span * span) / 4 + rise * rise) / (2 * rise);
  const half = Math.asin(Math.min(1, span / 2 / radius));
  const opened = rise > span / 2 ? Math.PI - half : half;
  return Array.from({ length: arcParts + 1 }, (_, k) => {
    const angle = -opened + (2 * opened * k) / arcParts;
    return [span / 2 + radius * Math.sin(angle), rise - radius + radius * Math.cos(angle)] as const;
  });
}

/** Null for what stands between side forms. `most_mm`: a slab is drawn no wider. */
export function castOf(shape: ElementShape, most_mm: number): Cast | null {
  switch (shape.kind) {
    case "barrel": {
      const high = shape.rise_mm + shape.thick_mm;
      const under = arc(shape.span_mm, Math.max(1, shape.rise_mm));
      return {
        wide_mm: shape.span_mm,
        high_mm: high,
        under,
        over: [
          [shape.span_mm, high],
          [0, high],
        ],
        long: false,
      };
    }
    case "stair": {
      const { steps, riser_mm, tread_mm, thick_mm } = shape;
      const over: [number, number][] = [[steps * tread_mm, steps * riser_mm]];
      for (let step = steps; step > 0; step--)
        over.push([(step - 1) * tread_mm, step * riser_mm], [(step - 1) * tread_mm, (step - 1) * riser_mm]);
      const slope = Math.hypot(riser_mm, tread_mm);
      const down = (thick_mm * slope) / tread_mm;
      const wide = steps * tread_mm;
      return {
        wide_mm: wide,
        high_mm: steps * riser_mm,
        under: [
          [0, -down],
          [wide, steps * riser_mm - down],
        ],
        over,
        long: false,
      };
    }
    case "slab":
    case "deck slab":
    case "footing": {
      const wide = Math.min(shape.long_mm, Math.max(most_mm, shape.thick_mm));
      return {
        wide_mm: wide,
        high_mm: shape.thick_mm,
        under: [
          [0, 0],
          [wide, 0],
        ],
        over: [
          [wide, shape.thick_mm],
          [0, shape.thick_mm],
        ],
        long: wide < shape.long_mm,
      };
    }
    default:
      return null;
  }
}
