import { dot, type Point } from "./space";

/** Quarter turns of the build, seen from above anticlockwise: 0 shows the front and what is to the right of it. */
export type Turn = 0 | 1 | 2 | 3;

/**
 * Parallel lines stay parallel (an axonometry). The build is turned 30° and looked down on at 30°: the front keeps 87 % of its width, so that it reads like the
 * elevation of the sheet, heights keep 87 % too, a circle on the ground is half as high as wide, and no two corners of a cube fall on each other, as they do
 * where all three directions are treated alike.
 */
const turned_deg = 30;
const down_deg = 30;

export interface View {
  /** Directions in the build that point to the right, up and towards the viewer on the drawing. */
  readonly right: Point;
  readonly up: Point;
  readonly toward: Point;
}

export const viewOf = (turn: Turn): View => views[turn];

const views: readonly View[] = [0, 1, 2, 3].map((turn) => {
  const [angle, down] = [turned_deg + 90 * turn, down_deg].map((deg) => (deg * Math.PI) / 180) as [number, number];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [cd, sd] = [Math.cos(down), Math.sin(down)];
  return { right: [c, s, 0], up: [-s * sd, c * sd, cd], toward: [s * cd, -c * cd, sd] };
});

export type Flat = readonly [number, number];

/** Where a point falls, mm to the right and mm upwards. */
export const seenAt = ({ right, up }: View, p: Point): Flat => [dot(right, p), dot(up, p)];

/** Outline of points on the drawing, anticlockwise (Andrew's monotone chain, 1979). */
export function outlineOf(points: readonly Flat[]): Flat[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (from: readonly Flat[]): Flat[] => {
    const line: Flat[] = [];
    for (const p of from) {
      while (line.length > 1 && turnOf(line[line.length - 2] as Flat, line[line.length - 1] as Flat, p) <= 0) line.pop();
      line.push(p);
    }
    line.pop();
    return line;
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

const turnOf = (a: Flat, b: Flat, c: Flat): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether a point lies in a convex outline. */
export const holds = (outline: readonly Flat[], p: Flat): boolean =>
  outline.every((from, i) => turnOf(from, outline[(i + 1) % outline.length] as Flat, p) >= 0);

/** Whether two convex outlines lie over each other by more than `by`: no side of either parts them. */
export function overlap(a: readonly Flat[], b: readonly Flat[], by: number): boolean {
  return !parts(a, b, by) && !parts(b, a, by);
}

function parts(a: readonly Flat[], b: readonly Flat[], by: number): boolean {
  return a.some((from, i) => {
    const to = a[(i + 1) % a.length] as Flat;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return long > 0 && b.every((p) => turnOf(from, to, p) <= by * long);
  });
}
