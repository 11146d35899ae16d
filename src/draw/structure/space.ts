/** A point or direction in the build: x to the right, y away from the viewer of the front, z up; mm. */
export type Point = readonly [number, number, number];

export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

export const cross = (a: Point, b: Point): Point => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** The point at share `t` of the way from a to b. */
export const between = (a: Point, b: Point, t: number): Point => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** Length 1 in the same direction; null where there is none to speak of. */
export function unit(a: Point): Point | null {
  const long = Math.hypot(a[0], a[1], a[2]);
  return long < 1e-9 ? null : [a[0] / long, a[1] / long, a[2] / long];
}

/** All points p with p·normal = at. */
export interface Plane {
  readonly normal: Point;
  readonly at: number;
}
