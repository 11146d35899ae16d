import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Solid, SolidShape } from "../../core/build";
import { bitsOf } from "./bits";
import type { Convex } from "./convex";
import { paintOrder } from "./order";
import { bitsOfSolid } from "./shapes";
import { dot, type Point } from "./space";
import { boxSolid } from "./testing";
import { type Flat, holds, type Turn, type View, viewOf } from "./view";

const turns: readonly Turn[] = [0, 1, 2, 3];

/** Where a line of sight first meets a body, as depth towards the viewer: clipped against its faces one by one; null where it passes beside it. */
function meets(body: Convex, { right, up, toward }: View, [x, y]: Flat): number | null {
  const foot: Point = [right[0] * x + up[0] * y, right[1] * x + up[1] * y, right[2] * x + up[2] * y];
  let [far, near] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { normal, points } of body.faces) {
    const [room, speed] = [dot(normal, points[0] as Point) - dot(normal, foot), dot(normal, toward)];
    if (Math.abs(speed) < 1e-12) {
      if (room < 0) return null;
    } else if (speed > 0) near = Math.min(near, room / speed);
    else far = Math.max(far, room / speed);
  }
  return near - far > 0 ? near : null;
}

/** Lines of sight nearer than this to an edge graze it, and say nothing, mm. */
const grazing = 3;

function grazes(outline: readonly Flat[], [x, y]: Flat): boolean {
  return outline.some(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] as Flat;
    const long = Math.hypot(bx - ax, by - ay) || 1;
    const along = Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long ** 2));
    return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay)) < grazing;
  });
}

/** Points of sight where the bit painted last is not of the body that a line of sight meets first. */
function wrong(solids: readonly Solid[], turn: Turn, points: readonly Flat[]): string[] {
  const view = viewOf(turn);
  const bodies = solids.map((solid) => bitsOfSolid(solid));
  const order = paintOrder(bitsOf(bodies.map((convex) => ({ convex, loose: false }))), view);
  return points.flatMap((point) => {
    if (order.some(({ outline }) => grazes(outline, point))) return [];
    const seen = bodies.flatMap((convex, body) => convex.flatMap((one) => ({ body, at: meets(one, view, point) ?? Number.NaN })));
    const front = seen.filter(({ at }) => !Number.isNaN(at)).sort((a, b) => b.at - a.at);
    const [first] = front;
    if (!first) return [];
    // Where the next body is as near there is nothing to hide.
    const level = new Set(front.filter(({ at }) => first.at - at < 4).map(({ body }) => body));
    const last = order.findLast(({ outline }) => holds(outline, point));
    return last && level.has(last.bit.body) ? [] : [`${point}: painted last ${last?.bit.body}, met first ${first.body}`];
  });
}

const size = fc.integer({ min: 20, max: 900 });
const place = fc.integer({ min: 0, max: 1500 });
const block = fc.record({
  x: place,
  y: place,
  z: place,
  long: size,
  wide: size,
  high: size,
  turn_deg: fc.constantFrom(0, 0, 0, 30, 90, 45, 211),
});
const shapes: readonly SolidShape[] = ["box", "cylinder", "wedge", "vault", "gable", "stairs"];
const sight = fc.array(fc.tuple(fc.integer({ min: -2500, max: 2500 }), fc.integer({ min: -1500, max: 3500 })), {
  minLength: 60,
  maxLength: 60,
});

const solidOf = (
  one: { x: number; y: number; z: number; long: number; wide: number; high: number; turn_deg: number },
  i: number,
  shape: SolidShape,
): Solid => ({
  ...boxSolid(`b${i}`, [one.x, one.y, one.z], [one.x + one.long, one.y + one.wide, one.z + one.high]),
  shape,
  turn_deg: one.turn_deg,
  thick_mm: 60,
  steps: 3,
});

describe("what is nearer is never painted before what it hides", () => {
  test.each(turns)("boxes side by side and on top of one another, view %i", (turn) => {
    // Cells of a grid, some of them full: every box touches its neighbours.
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 36, maxLength: 36 }), sight, (full, points) => {
        const solids = full.flatMap((is, i) => {
          const [x, y, z] = [(i % 3) * 500, (Math.floor(i / 3) % 4) * 350, Math.floor(i / 12) * 400];
          return is ? [boxSolid(`b${i}`, [x, y, z], [x + 500, y + 350, z + 400])] : [];
        });
        expect(wrong(solids, turn, points)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test.each(turns)("boxes anywhere, also into each other and turned, view %i", (turn) => {
    fc.assert(
      fc.property(fc.array(block, { minLength: 2, maxLength: 9 }), sight, (blocks, points) => {
        expect(
          wrong(
            blocks.map((one, i) => solidOf(one, i, "box")),
            turn,
            points,
          ),
        ).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test.each(shapes)("a %s among boxes, all four views", (shape) => {
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 4 }), block, fc.constantFrom(...turns), sight, (blocks, odd, turn, points) => {
        const solids = [...blocks.map((one, i) => solidOf(one, i, "box")), solidOf(odd, 99, shape)];
        expect(wrong(solids, turn, points)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test("three bars that hide each other in a ring: one of them is cut, in the views where they do", () => {
    const along = [
      boxSolid("x", [400, 400, 600], [1300, 500, 700]),
      boxSolid("y", [800, 300, 300], [900, 1200, 400]),
      boxSolid("z", [600, 600, 300], [700, 700, 1200]),
    ];
    const bits = bitsOf(along.map((solid) => ({ convex: bitsOfSolid(solid), loose: false })));
    expect(turns.map((turn) => paintOrder(bits, viewOf(turn)).length)).toEqual([3, 4, 3, 3]);
    const points: Flat[] = [];
    for (let x = -1500; x <= 1500; x += 37) for (let y = -1000; y <= 1800; y += 41) points.push([x, y]);
    for (const turn of turns) expect(wrong(along, turn, points)).toEqual([]);
  });
});
