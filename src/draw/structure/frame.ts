import type { Painted } from "./painted";
import { type Flat, seenAt, type Turn, viewOf } from "./view";

/** Where the build lies on the drawing: from mm to px. */
export interface Fit {
  place(p: Flat): Flat;
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  /** Where it begins below the top of the drawing, px. */
  readonly top: number;
}

/** The corners of the ground that is drawn, level with the datum, mm on the drawing: first the far ones, then the near ones. */
export interface Ground {
  readonly corners: readonly Flat[];
  /** Sides towards the viewer, from left to right. */
  readonly near: readonly Flat[];
}

const beside_mm = 700;

export function groundOf(painted: readonly Painted[], turn: Turn): Ground | null {
  if (painted.length === 0) return null;
  const view = viewOf(turn);
  const corners = painted.flatMap(({ bit }) => bit.convex.corners);
  const [x0, x1] = [Math.min(...corners.map(([x]) => x)) - beside_mm, Math.max(...corners.map(([x]) => x)) + beside_mm];
  const [y0, y1] = [Math.min(...corners.map(([, y]) => y)) - beside_mm, Math.max(...corners.map(([, y]) => y)) + beside_mm];
  const flat = (
    [
      [x0, y0, 0],
      [x1, y0, 0],
      [x1, y1, 0],
      [x0, y1, 0],
    ] as const
  ).map((p) => seenAt(view, p));
  const lowest = flat.reduce((best, [, y], i) => (y < (flat[best] as Flat)[1] ? i : best), 0);
  const near = [-1, 0, 1].map((by) => flat[(lowest + by + 4) % 4] as Flat).sort((a, b) => a[0] - b[0]);
  return { corners: flat, near };
}

/** As large as the room allows, the whole build and its ground in it, in the middle of the width. */
export function fitOf(
  painted: readonly Painted[],
  ground: Ground | null,
  room: { width: number; high: number; left: number; top: number },
): Fit {
  const all = [...painted.flatMap(({ outline }) => outline), ...(ground?.corners ?? [])];
  const [x0, x1] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [y0, y1] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const edge = 8;
  const scale = Math.min((room.width - 2 * edge) / Math.max(1, x1 - x0), (room.high - 2 * edge) / Math.max(1, y1 - y0));
  const left = room.left + (room.width - (x1 - x0) * scale) / 2;
  return {
    scale,
    width: room.width,
    top: room.top,
    height: (y1 - y0) * scale + 2 * edge,
    place: ([x, y]) => [left + (x - x0) * scale, room.top + edge + (y1 - y) * scale],
  };
}
