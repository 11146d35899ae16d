import { isApart, planesBetween } from "./apart";
import type { Bit } from "./bits";
import { cut } from "./cut";
import { dot, type Plane } from "./space";
import { type Flat, outlineOf, overlap, seenAt, type View } from "./view";

/** A bit with its outline on the drawing, mm. */
export interface Placed {
  readonly bit: Bit;
  readonly outline: readonly Flat[];
}

interface Node extends Placed {
  readonly left: number;
  readonly right: number;
  /** What has to be painted before it, and what after. */
  readonly before: Set<Node>;
  readonly after: Set<Node>;
  readonly rank: number;
}

/** Outlines that lie over each other by less than this do not hide each other, mm. */
const hides_mm = 1;
/** Rings are opened by cutting so many times; after that by depth. */
const mostCuts = 400;

/**
 * Bits from the farthest to the nearest, so that painting them in this order hides what is hidden. Of two whose outlines lie over each other the one on the viewer's
 * side of a plane between them comes later; that is the same for every such plane. The rest is a topological order. Where bits hide each other in a ring, one of them is
 * cut along a plane between its neighbours in the ring.
 */
export function paintOrder(bits: readonly Bit[], view: View): Placed[] {
  const nodes = new Set<Node>();
  let rank = 0;
  const add = (bit: Bit) => {
    const outline = outlineOf(bit.convex.corners.map((p) => seenAt(view, p)));
    const xs = outline.map(([x]) => x);
    const node: Node = { bit, outline, left: Math.min(...xs), right: Math.max(...xs), before: new Set(), after: new Set(), rank };
    rank += 1;
    for (const other of nodes) join(node, other, view);
    nodes.add(node);
  };
  for (const bit of bits) add(bit);
  const out: Placed[] = [];
  let cuts = 0;
  let last = -1;
  while (nodes.size > 0) {
    const next = ready(nodes, last);
    if (next) {
      out.push(next);
      last = next.bit.body;
      take(nodes, next);
      continue;
    }
    const ring = ringOf(nodes);
    const opened = cuts < mostCuts ? open(ring) : null;
    if (opened) {
      cuts += 1;
      take(nodes, opened.node);
      for (const bit of opened.bits) add(bit);
    } else {
      const farthest = ring.reduce((a, b) => (depth(a, view) <= depth(b, view) ? a : b));
      out.push(farthest);
      take(nodes, farthest);
    }
  }
  return out.map(({ bit, outline }) => ({ bit, outline }));
}

function join(a: Node, b: Node, view: View): void {
  if (a.left > b.right - hides_mm || b.left > a.right - hides_mm || !overlap(a.outline, b.outline, hides_mm)) return;
  const front = nearer(a, b, view);
  if (front === null) return;
  const back = front === a ? b : a;
  front.before.add(back);
  back.after.add(front);
}

/** Which of two that lie over each other on the drawing is in front. */
function nearer(a: Node, b: Node, view: View): Node | null {
  if (a.bit.within.includes(b.bit.root)) return b;
  if (b.bit.within.includes(a.bit.root)) return a;
  let touching: { readonly faces: number } | null = null;
  let edgeOn = false;
  for (const { normal, gap } of planesBetween(a.bit.convex, b.bit.convex)) {
    const faces = dot(normal, view.toward);
    if (gap >= 0 && Math.abs(faces) > 1e-9) return faces > 0 ? b : a;
    if (gap < 0 && Math.abs(faces) > Math.abs(touching?.faces ?? 0)) touching = { faces };
    edgeOn = true;
  }
  if (touching) return touching.faces > 0 ? b : a;
  if (edgeOn) return null;
  return depth(a, view) > depth(b, view) ? a : b;
}

const depth = ({ bit }: Node, { toward }: View): number =>
  bit.convex.corners.reduce((sum, p) => sum + dot(p, toward), 0) / bit.convex.corners.length;

function take(nodes: Set<Node>, node: Node): void {
  nodes.delete(node);
  for (const other of node.after) other.before.delete(node);
  for (const other of node.before) other.after.delete(node);
}

/** The first that waits for nothing; of several one of the body that was just painted, so that its bits follow each other. */
function ready(nodes: ReadonlySet<Node>, body: number): Node | null {
  let best: Node | null = null;
  for (const node of nodes) {
    if (node.before.size > 0) continue;
    if (node.bit.body === body) return node;
    if (best === null || node.rank < best.rank) best = node;
  }
  return best;
}

/** Bits each of which waits for the next, the last for the first. */
function ringOf(nodes: ReadonlySet<Node>): Node[] {
  const path: Node[] = [];
  let node = nodes.values().next().value as Node;
  while (!path.includes(node)) {
    path.push(node);
    node = node.before.values().next().value as Node;
  }
  return path.slice(path.indexOf(node));
}

function open(ring: readonly Node[]): { readonly node: Node; readonly bits: readonly Bit[] } | null {
  const count = ring.length;
  for (const [i, node] of ring.entries()) {
    const [behind, front] = [ring[(i + 1) % count] as Node, ring[(i + count - 1) % count] as Node];
    for (const plane of planesFor(behind, front)) {
      const halves = cut(node.bit.convex, plane);
      if (halves) return { node, bits: [halves.under, halves.over].map((convex) => ({ ...node.bit, convex })) };
    }
  }
  return null;
}

function* planesFor(a: Node, b: Node): Generator<Plane> {
  if (a !== b && isApart(a.bit.convex, b.bit.convex)) yield* planesBetween(a.bit.convex, b.bit.convex);
  for (const { bit } of [a, b])
    for (const { normal, points } of bit.convex.faces) yield { normal, at: dot(normal, points[0] as readonly [number, number, number]) };
}
