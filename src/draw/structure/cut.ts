import { type Convex, convexOf, type Edge, type Face } from "./convex";
import { between, cross, dot, minus, type Plane, type Point } from "./space";

/** What sticks out less than this beyond a plane is not cut off, mm. */
export const cutLeast_mm = 1;

const seam: Edge = { kind: "seam", beyond: null };

export interface Halves {
  /** On the side that the plane's direction points to. */
  readonly over: Convex;
  readonly under: Convex;
}

/** Cuts a convex body in two; null where the plane passes beside it. The cut is never seen: its faces are inner, its edges seams. */
export function cut(body: Convex, plane: Plane): Halves | null {
  const reach = body.corners.map((p) => dot(plane.normal, p) - plane.at);
  if (Math.max(...reach) < cutLeast_mm || Math.min(...reach) > -cutLeast_mm) return null;
  const over = half(body, plane, 1);
  const under = half(body, plane, -1);
  return over && under ? { over, under } : null;
}

function half({ faces }: Convex, { normal, at }: Plane, side: 1 | -1): Convex | null {
  const rim: Point[] = [];
  const height = (p: Point) => side * (dot(normal, p) - at);
  const kept = faces.flatMap((face) => clipped(face, height, rim));
  const lid = lidOf(rim, [-side * normal[0], -side * normal[1], -side * normal[2]]);
  if (kept.length < 3 || lid === null) return null;
  return convexOf([...kept, lid]);
}

/** One face cut off at height 0 (Sutherland and Hodgman, 1974); where it is cut goes onto the rim. */
function clipped(face: Face, height: (p: Point) => number, rim: Point[]): Face[] {
  const points: Point[] = [];
  const edges: Edge[] = [];
  const count = face.points.length;
  for (let i = 0; i < count; i += 1) {
    const [from, to] = [face.points[i] as Point, face.points[(i + 1) % count] as Point];
    const [a, b] = [height(from), height(to)];
    const edge = face.edges[i] as Edge;
    if (a >= 0) {
      points.push(from);
      edges.push(a === 0 && b < 0 ? seam : edge);
      if (a === 0) rim.push(from);
    }
    if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
      const here = between(from, to, a / (a - b));
      rim.push(here);
      points.push(here);
      edges.push(a > 0 ? seam : edge);
    }
  }
  return points.length < 3 ? [] : [{ ...face, points, edges }];
}

/** The cut face: the corners of the rim in order round their middle. */
function lidOf(rim: readonly Point[], normal: Point): Face | null {
  const corners = [...new Map(rim.map((p) => [p.map((value) => Math.round(value * 100)).join(" "), p] as const)).values()];
  if (corners.length < 3) return null;
  const middle: Point = [0, 1, 2].map((k) => corners.reduce((sum, p) => sum + (p[k] as number), 0) / corners.length) as unknown as Point;
  const across = minus(corners[0] as Point, middle);
  const beside = cross(normal, across);
  const turn = (p: Point) => Math.atan2(dot(minus(p, middle), beside), dot(minus(p, middle), across));
  const points = [...corners].sort((a, b) => turn(a) - turn(b));
  return { points, normal, edges: points.map(() => seam), inner: true };
}
