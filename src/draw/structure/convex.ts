import { cross, dot, minus, type Point, unit } from "./space";

/**
 * An edge of a face, as a line of the drawing: sharp is always drawn, seam never (it only joins bits of one body), smooth only as an outline: where the face
 * beyond it (`beyond`: its outward direction) looks away.
 */
export interface Edge {
  readonly kind: "sharp" | "smooth" | "seam";
  readonly beyond: Point | null;
}

/** A flat face, its corners anticlockwise seen from outside; edge i runs from corner i to the next. */
export interface Face {
  readonly points: readonly Point[];
  readonly normal: Point;
  readonly edges: readonly Edge[];
  /** Against another bit of the same body: never seen. */
  readonly inner: boolean;
}

/** A convex body bounded by flat faces. */
export interface Convex {
  readonly faces: readonly Face[];
  readonly corners: readonly Point[];
  /** Smallest upright box round it: least and most of x, y, z. */
  readonly box: readonly [Point, Point];
}

export function convexOf(faces: readonly Face[]): Convex {
  const corners = [...new Map(faces.flatMap(({ points }) => points.map((p) => [keyOf(p), p] as const))).values()];
  const ends = (pick: (...values: number[]) => number): Point => [
    pick(...corners.map(([x]) => x)),
    pick(...corners.map(([, y]) => y)),
    pick(...corners.map(([, , z]) => z)),
  ];
  return { faces, corners, box: [ends(Math.min), ends(Math.max)] };
}

/** Corners nearer than a hundredth of a millimetre are one. */
const keyOf = (p: Point): string => p.map((value) => Math.round(value * 100)).join(" ");

const edgeKey = (a: Point, b: Point): string => [keyOf(a), keyOf(b)].sort().join("|");

/** A bit as it is built: polygons, and which of them lie against another bit of the same body. */
export interface Draft {
  readonly polygons: readonly { readonly points: readonly Point[]; readonly inner?: boolean }[];
}

/** Below this angle two faces belong to one curved surface; below the lesser one to one flat surface. Cosines. */
const smoothOver = Math.cos((35 * Math.PI) / 180);
const flatOver = Math.cos((0.5 * Math.PI) / 180);

/** The bits of one body, each edge told by the angle between the two outer faces that meet there. A draft of less than four good faces is left out. */
export function bitsFrom(drafts: readonly Draft[]): Convex[] {
  const made = drafts.map(({ polygons }) =>
    polygons.flatMap(({ points, inner }) => {
      const normal = normalOf(points);
      return normal ? [{ points, normal, inner: inner === true }] : [];
    }),
  );
  const meeting = new Map<string, Point[]>();
  for (const { points, normal, inner } of made.flat()) {
    if (inner) continue;
    points.forEach((from, i) => {
      const key = edgeKey(from, points[(i + 1) % points.length] as Point);
      meeting.set(key, [...(meeting.get(key) ?? []), normal]);
    });
  }
  const edgeOf = (from: Point, to: Point, normal: Point): Edge => {
    const other = (meeting.get(edgeKey(from, to)) ?? []).find((one) => one !== normal) ?? null;
    const turn = other === null ? -1 : dot(other, normal);
    if (turn > flatOver) return { kind: "seam", beyond: null };
    return turn > smoothOver ? { kind: "smooth", beyond: other } : { kind: "sharp", beyond: null };
  };
  return made.flatMap((faces) =>
    faces.length < 4
      ? []
      : [
          convexOf(
            faces.map(({ points, normal, inner }) => ({
              points,
              normal,
              inner,
              edges: points.map((from, i) => edgeOf(from, points[(i + 1) % points.length] as Point, normal)),
            })),
          ),
        ],
  );
}

/** Outward direction of a polygon that runs anticlockwise seen from outside (Newell's sum, from memory); null where it has no area. */
function normalOf(points: readonly Point[]): Point | null {
  const first = points[0] as Point;
  let sum: Point = [0, 0, 0];
  for (let i = 1; i + 1 < points.length; i += 1) {
    const turn = cross(minus(points[i] as Point, first), minus(points[i + 1] as Point, first));
    sum = [sum[0] + turn[0], sum[1] + turn[1], sum[2] + turn[2]];
  }
  return unit(sum);
}
