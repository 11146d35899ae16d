import type { Build, Solid } from "../../core/build";
import { each, lastOf } from "../sheet/remembered";
import { bitsOf } from "./bits";
import type { Convex, Face } from "./convex";
import { cut, cutLeast_mm } from "./cut";
import { matterOf } from "./matter";
import { type Placed, paintOrder } from "./order";
import { bitsOfSolid, type Figure } from "./shapes";
import { dot, type Point } from "./space";
import { type Flat, seenAt, type Turn, viewOf } from "./view";

/** How much light a face gets: 0 the most (tops), 2 the least. The light comes over the viewer's left shoulder, as drafters have it. */
type Shade = 0 | 1 | 2;

/** A bit of a body as it is painted, mm on the drawing. */
export interface Painted extends Placed {
  readonly body: number;
  readonly faces: readonly { readonly points: readonly Flat[]; readonly shade: Shade; readonly area: number }[];
  /** Lies below the datum: seen through the ground. */
  readonly below: boolean;
  /** Lines to be drawn over the faces. */
  readonly edges: readonly (readonly [Flat, Flat])[];
  /** Painted before it and, on the drawing, under it: positions in the same list. */
  readonly over: readonly number[];
}

/** What is painted of a body whatever its name is and whatever it is linked to. */
type Stuff = Figure & { readonly loose: boolean };
type Views = (turn: Turn) => readonly Painted[];

const known = new WeakMap<readonly Solid[], Views>();

/** The bits of all bodies in the order in which they are painted, for one of four views. Kept as long as the bodies stand where they stand. */
export function paintedOf(build: Build, solids: readonly Solid[], turn: Turn): readonly Painted[] {
  const views = known.get(solids) ?? viewsOf(solids.map((solid) => stuffOf(build, solid)));
  known.set(solids, views);
  return views(turn);
}

function stuffOf(build: Build, solid: Solid): Stuff {
  const { shape, at_mm, size_mm, thick_mm, steps, turn_deg } = solid;
  return { shape, at_mm, size_mm, thick_mm, steps, turn_deg, loose: ["hole", "frame"].includes(matterOf(build, solid)) };
}

// A build that is read anew has bodies of its own, most often the same as before.
const viewsOf = lastOf((bodies: readonly Stuff[]): Views => {
  const bits = bitsOf(bodies.map((body) => ({ convex: bitsOfSolid(body).flatMap(atDatum), loose: body.loose })));
  return each((turn: Turn) => paint(paintOrder(bits, viewOf(turn)), turn));
});

/** What stands partly below the datum in two: that part is drawn as seen through the ground. */
function atDatum(bit: Convex): Convex[] {
  const halves = cut(bit, { normal: [0, 0, 1], at: 0 });
  return halves ? [halves.under, halves.over] : [bit];
}

function paint(order: readonly Placed[], turn: Turn): Painted[] {
  const view = viewOf(turn);
  const sees = (normal: Point) => dot(normal, view.toward) > 1e-9;
  const boxes = order.map(({ outline }) => boxOf(outline));
  return order.map((placed, index) => {
    const seen = placed.bit.convex.faces.filter(({ inner, normal }) => !inner && sees(normal));
    const flat = (p: Point) => seenAt(view, p);
    return {
      ...placed,
      body: placed.bit.body,
      below: placed.bit.convex.box[1][2] <= cutLeast_mm,
      faces: seen.map(({ points, normal }) => {
        const outline = points.map(flat);
        return { points: outline, shade: shadeOf(normal, view.right), area: areaOf(outline) };
      }),
      edges: edgesOf(seen, sees, flat),
      over: boxes.flatMap((box, other) => (other < index && meet(box, boxes[index] as Box) ? [other] : [])),
    };
  });
}

type Box = readonly [number, number, number, number];

function boxOf(outline: readonly Flat[]): Box {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

const meet = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];

function shadeOf(normal: Point, right: Point): Shade {
  if (normal[2] > 0.5) return 0;
  return dot(normal, right) < 0.1 ? 1 : 2;
}

function areaOf(points: readonly Flat[]): number {
  let sum = 0;
  points.forEach(([x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] as Flat;
    sum += x * ny - nx * y;
  });
  return Math.abs(sum) / 2;
}

/** Each line once, though two faces share it. */
function edgesOf(seen: readonly Face[], sees: (normal: Point) => boolean, flat: (p: Point) => Flat): [Flat, Flat][] {
  const lines = new Map<string, [Flat, Flat]>();
  for (const { points, edges } of seen)
    points.forEach((from, i) => {
      const edge = edges[i];
      if (!edge || edge.kind === "seam" || (edge.beyond !== null && sees(edge.beyond))) return;
      const line: [Flat, Flat] = [flat(from), flat(points[(i + 1) % points.length] as Point)];
      const key = line
        .map(([x, y]) => `${Math.round(x)} ${Math.round(y)}`)
        .sort()
        .join("|");
      if (!lines.has(key)) lines.set(key, line);
    });
  return [...lines.values()];
}
