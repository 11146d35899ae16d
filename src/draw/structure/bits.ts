import { isApart } from "./apart";
import type { Convex } from "./convex";
import { cut } from "./cut";

/** A convex bit of a body: what is put in order and painted. */
export interface Bit {
  readonly body: number;
  readonly convex: Convex;
  /** What it is a part of, however often it is cut. */
  readonly root: number;
  /** Roots of bits of other bodies that it lies in: those are painted over it. */
  readonly within: readonly number[];
}

/** More bits than this are not made: what then still lies into each other is painted by its middle. */
const most = 4000;

/**
 * The bits of bodies, with no two into each other but where one wholly lies within another. Larger ones stay whole; a smaller one is cut along the faces of what it
 * lies in. A body that is `loose` (a hole: it is gone before what stands in it comes) cuts nothing; what lies into it counts as within.
 */
export function bitsOf(bodies: readonly { readonly convex: readonly Convex[]; readonly loose: boolean }[]): Bit[] {
  const all = bodies.flatMap(({ convex, loose }, body) => convex.map((one) => ({ body, convex: one, loose, size: sizeOf(one) })));
  const whole = all.map((one, root): Bit & { loose: boolean; size: number } => ({ ...one, root, within: [] }));
  const done: (Bit & { loose: boolean })[] = [];
  for (const bit of [...whole].sort((a, b) => b.size - a.size || a.root - b.root)) {
    let parts: Bit[] = [bit];
    for (const other of done) {
      if (done.length + parts.length > most) break;
      parts = parts.flatMap((part) => meet(part, other, bit.loose || other.loose));
    }
    done.push(...parts.map((part) => ({ ...part, loose: bit.loose })));
  }
  return done.map(({ body, convex, root, within }) => ({ body, convex, root, within })).sort((a, b) => a.body - b.body || a.root - b.root);
}

function meet(part: Bit, other: Bit, loose: boolean): Bit[] {
  if (part.body === other.body || isApart(part.convex, other.convex)) return [part];
  if (loose) return [{ ...part, within: [...part.within, other.root] }];
  const out: Bit[] = [];
  let rest = part.convex;
  for (const { normal, points } of other.convex.faces) {
    const [x, y, z] = points[0] as readonly [number, number, number];
    const plane = { normal, at: normal[0] * x + normal[1] * y + normal[2] * z };
    const halves = cut(rest, plane);
    if (halves) {
      out.push({ ...part, convex: halves.over });
      rest = halves.under;
    }
  }
  return [...out, { ...part, convex: rest, within: [...part.within, other.root] }];
}

/** Volume of the upright box round it. */
function sizeOf({ box: [from, to] }: Convex): number {
  return (to[0] - from[0]) * (to[1] - from[1]) * (to[2] - from[2]);
}
