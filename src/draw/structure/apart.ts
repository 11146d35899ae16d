import type { Convex } from "./convex";
import { cross, dot, type Plane, type Point, unit } from "./space";

/** Bodies that lie into each other by less than this only touch, mm. */
const touch_mm = 1;

/** A plane between two bodies, and how far they are apart across it, mm: less than nothing where they only touch. */
export interface Parting extends Plane {
  readonly gap: number;
}

/**
 * Planes between two convex bodies, each with `a` under it and `b` over it; none where they lie into each other. If there is any, one of these is: square to the
 * axes, along a face of either, or along an edge of each (the separating axis theorem for polytopes). Cheap ones first.
 */
export function* planesBetween(a: Convex, b: Convex): Generator<Parting> {
  for (const axis of axes) yield* either(a, b, axis);
  for (const { normal } of [...a.faces, ...b.faces]) yield* either(a, b, normal);
  const [along, across] = [directionsOf(a), directionsOf(b)];
  for (const p of along)
    for (const q of across) {
      const axis = unit(cross(p, q));
      if (axis) yield* either(a, b, axis);
    }
}

export const isApart = (a: Convex, b: Convex): boolean => !planesBetween(a, b).next().done;

const axes: readonly Point[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

function* either(a: Convex, b: Convex, axis: Point): Generator<Parting> {
  const [from, to] = [extent(a, axis), extent(b, axis)];
  if (to[0] - from[1] >= -touch_mm) yield { normal: axis, at: (from[1] + to[0]) / 2, gap: to[0] - from[1] };
  if (from[0] - to[1] >= -touch_mm) yield { normal: [-axis[0], -axis[1], -axis[2]], at: -(from[0] + to[1]) / 2, gap: from[0] - to[1] };
}

function extent({ corners }: Convex, axis: Point): [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of corners) {
    const at = dot(axis, p);
    if (at < least) least = at;
    if (at > most) most = at;
  }
  return [least, most];
}

const known = new WeakMap<Convex, readonly Point[]>();

/** Directions of a body's edges, each once. */
function directionsOf(body: Convex): readonly Point[] {
  const found = known.get(body);
  if (found) return found;
  const made: Point[] = [];
  for (const { points } of body.faces)
    points.forEach((from, i) => {
      const to = points[(i + 1) % points.length] as Point;
      const along = unit([to[0] - from[0], to[1] - from[1], to[2] - from[2]]);
      if (along && !made.some((one) => Math.abs(dot(one, along)) > 1 - 1e-9)) made.push(along);
    });
  known.set(body, made);
  return made;
}
