import type { Solid } from "../../core/build";
import { bitsFrom, type Convex, type Draft } from "./convex";
import type { Point } from "./space";

/** How many flat strips stand for a round column, and for the arc of a vault. */
const round = 24;
const arc = 12;

type Corner = readonly [number, number];

/** What of a body says where it stands and which shape it has. */
export type Figure = Pick<Solid, "shape" | "at_mm" | "size_mm" | "thick_mm" | "steps" | "turn_deg">;

/** A body of the drawing as convex bits where it stands in the build, mm. */
export function bitsOfSolid(solid: Figure): Convex[] {
  const { at_mm, turn_deg } = solid;
  const [c, s] = [Math.cos((turn_deg * Math.PI) / 180), Math.sin((turn_deg * Math.PI) / 180)];
  const place = ([x, y, z]: Point): Point => [at_mm.x + x * c - y * s, at_mm.y + x * s + y * c, at_mm.z + z];
  return bitsFrom(
    draftsOf(solid).map(({ polygons }) => ({ polygons: polygons.map((one) => ({ ...one, points: one.points.map(place) })) })),
  );
}

/** About the middle of its base, before its turn. */
function draftsOf({ shape, size_mm, thick_mm, steps }: Figure): Draft[] {
  const { long, wide, high } = size_mm;
  const [x, y] = [long / 2, wide / 2];
  switch (shape) {
    case "box":
      return [upright(rectangle(x, y), high)];
    case "cylinder":
      return [
        upright(
          Array.from({ length: round }, (_, i): Corner => {
            const angle = (2 * Math.PI * i) / round;
            return [x * Math.cos(angle), y * Math.sin(angle)];
          }),
          high,
        ),
      ];
    case "wedge":
      return [
        acrossY(
          [
            [-x, 0],
            [x, 0],
            [-x, high],
          ],
          y,
        ),
      ];
    case "gable":
      return [
        alongX(
          [
            [-y, 0],
            [y, 0],
            [0, high],
          ],
          x,
        ),
      ];
    case "vault":
      return vault(x, wide, high, thick_mm ?? wide / 8);
    case "stairs":
      return stairs(long, y, high, Math.max(1, steps ?? Math.round(high / 180)));
  }
}

const rectangle = (x: number, y: number): Corner[] => [
  [-x, -y],
  [x, -y],
  [x, y],
  [-x, y],
];

/** A prism on a base that runs anticlockwise seen from above. */
function upright(base: readonly Corner[], high: number): Draft {
  return prism(
    base.map(([x, y]): Point => [x, y, 0]),
    [0, 0, high],
  );
}

/** A prism with a side view in x and z, anticlockwise seen from the front, from -y to y. */
const acrossY = (side: readonly Corner[], y: number): Draft =>
  prism(
    side.map(([x, z]): Point => [x, y, z]),
    [0, -2 * y, 0],
  );

/** A prism with an end view in y and z, anticlockwise seen from where x goes, from -x to x. */
function alongX(end: readonly Corner[], x: number, inner: readonly number[] = []): Draft {
  return prism(
    end.map(([y, z]): Point => [-x, y, z]),
    [2 * x, 0, 0],
    inner,
  );
}

/** Base and its like at `by`, anticlockwise seen from the end of `by`; `inner` names side faces by their first corner. */
function prism(base: readonly Point[], by: Point, inner: readonly number[] = []): Draft {
  const top = base.map((p): Point => [p[0] + by[0], p[1] + by[1], p[2] + by[2]]);
  const count = base.length;
  const next = (i: number) => (i + 1) % count;
  return {
    polygons: [
      { points: [...base].reverse() },
      { points: top },
      ...base.map((from, i) => ({
        points: [from, base[next(i)] as Point, top[next(i)] as Point, top[i] as Point],
        inner: inner.includes(i),
      })),
    ],
  };
}

/**
 * Stones between an inner and an outer circle about one middle, level where they spring; over a rise of more than half the span half a circle on straight legs.
 * Span and rise are clear, as a builder measures them; the shell stands outside. Radius by the usual (s²/4 + r²)/2r.
 */
function vault(x: number, span: number, rise: number, thick: number): Draft[] {
  const half = span / 2;
  const stilt = Math.max(0, rise - half);
  const sagitta = rise - stilt;
  const radius = (half ** 2 + sagitta ** 2) / (2 * sagitta);
  const middle = stilt + sagitta - radius;
  const outer = radius + thick;
  const drop = stilt - middle;
  const [inside, outside] = [Math.asin(Math.min(1, half / radius)), Math.acos(Math.min(1, drop / outer))];
  const at = (r: number, angle: number): Corner => [r * Math.sin(angle), middle + r * Math.cos(angle)];
  const stones = Array.from({ length: arc }, (_, i) => {
    const [from, to] = [1 - (2 * i) / arc, 1 - (2 * (i + 1)) / arc];
    const inner = [...(i > 0 || stilt > 0 ? [0] : []), ...(i < arc - 1 || stilt > 0 ? [2] : [])];
    // From the right springing to the left, anticlockwise seen from the end.
    return alongX([at(radius, from * inside), at(outer, from * outside), at(outer, to * outside), at(radius, to * inside)], x, inner);
  });
  if (stilt === 0) return stones;
  const leg = (side: 1 | -1): Draft => {
    const [a, b] = [side * half, side * (half + thick)].sort((p, q) => p - q) as [number, number];
    return alongX(
      [
        [a, 0],
        [b, 0],
        [b, stilt],
        [a, stilt],
      ],
      x,
      [2],
    );
  };
  return [...stones, leg(1), leg(-1)];
}

/** One block from the ground for each tread; the face against the lower block is inner, its riser above it is not. */
function stairs(long: number, y: number, high: number, count: number): Draft[] {
  const [run, rise] = [long / count, high / count];
  return Array.from({ length: count }, (_, i): Draft => {
    const [x0, x1] = [-long / 2 + i * run, -long / 2 + (i + 1) * run];
    const [low, top] = [i * rise, (i + 1) * rise];
    const face = (points: readonly Point[], inner = false) => ({ points, inner });
    return {
      polygons: [
        face([
          [x0, y, 0],
          [x1, y, 0],
          [x1, -y, 0],
          [x0, -y, 0],
        ]),
        face([
          [x0, -y, top],
          [x1, -y, top],
          [x1, y, top],
          [x0, y, top],
        ]),
        face([
          [x0, y, low],
          [x0, -y, low],
          [x0, -y, top],
          [x0, y, top],
        ]),
        ...(i > 0
          ? [
              face(
                [
                  [x0, y, 0],
                  [x0, -y, 0],
                  [x0, -y, low],
                  [x0, y, low],
                ],
                true,
              ),
            ]
          : []),
        face(
          [
            [x1, -y, 0],
            [x1, y, 0],
            [x1, y, top],
            [x1, -y, top],
          ],
          i < count - 1,
        ),
        face([[x0, -y, 0], [x1, -y, 0], [x1, -y, top], [x0, -y, top], ...(i > 0 ? [[x0, -y, low] as const] : [])]),
        face([...(i > 0 ? [[x0, y, low] as const] : []), [x0, y, top], [x1, y, top], [x1, y, 0], [x0, y, 0]]),
      ],
    };
  });
}
