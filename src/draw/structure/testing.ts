import { asId } from "../../core/base";
import type { Solid } from "../../core/build";

/** A plain box by its ends, mm, for tests. */
export function boxSolid(id: string, from: readonly [number, number, number], to: readonly [number, number, number]): Solid {
  return {
    id,
    name: id,
    shape: "box",
    at_mm: { x: (from[0] + to[0]) / 2, y: (from[1] + to[1]) / 2, z: from[2] },
    size_mm: { long: to[0] - from[0], wide: to[1] - from[1], high: to[2] - from[2] },
    thick_mm: null,
    steps: null,
    turn_deg: 0,
    pour: null,
    pieces: [],
    form: [],
    bars: [],
    places: [asId("p")],
  };
}
