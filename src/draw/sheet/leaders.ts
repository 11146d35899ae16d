import { circle, layers, type Mark, path, type Subject, shape } from "../marks/mark";
import { caption, type Drawn } from "./elevation";
import type { Lane, Layout } from "./layout";
import { bracketWidth, trackRoom } from "./side";

/** From a part of the elevation to its lane, or to the bracket of its lanes: level out of the part, down a track of its own, level into the lane. */
export interface Leader {
  /** Places that it stands for. */
  readonly places: readonly string[];
  /** Whether it is drawn though nobody asks: something stands in its lanes. */
  readonly shown: boolean;
  readonly inCorner: readonly Mark[];
  readonly inSide: readonly Mark[];
}

const apart = 3;
/** A leader may leave a part this far beyond its edge: thin layers are thinner than the lines. px */
const slop = 2;
const dot = 1.6;

/**
 * One leader for each lane or bracket whose part is drawn. They do not cross: from the top down each leaves lower and runs down further to the left
 * than the one before. A part that lies out of that order gets none; a tap lights its lane all the same.
 */
export function leadersOf(layout: Layout, parts: readonly Drawn[], width: number, corner: number, whole: boolean): Leader[] {
  const partOf = new Map(parts.map((part) => [part.place, part]));
  const groups: { lanes: Lane[]; part: Drawn }[] = [];
  for (const lane of layout.lanes) {
    const part = partOf.get(lane.place);
    const last = groups[groups.length - 1];
    if (last && lane.bracket !== null && last.lanes[0]!.bracket === lane.bracket) {
      last.lanes.push(lane);
      // The bracket is led to from the place that its layers belong to.
      if (part && lane.key === lane.bracket) last.part = part;
    } else if (part) groups.push({ lanes: [lane], part });
  }
  const placed = leaves(groups, caption);
  const pitch = Math.min(5, trackRoom / Math.max(1, placed.length));
  return placed.map(({ lanes, part, y }, index): Leader => {
    const x = width - bracketWidth - 2 - index * pitch;
    const [first, last] = [lanes[0]!, lanes[lanes.length - 1]!];
    const target = (first.y0 + last.y1) / 2;
    const of: Subject = { list: "places", id: part.id };
    const from = Math.min(part.x1 - dot - 1, (part.x0 + 2 * part.x1) / 3);
    const end = lanes.length > 1 ? width - 4 : width - 1;
    const line = (id: string, points: [number, number][]) => path(`leader ${part.id} ${id}`, "leader", layers.block + 2, points, { of });
    return {
      places: lanes.map(({ key }) => key),
      shown: whole || lanes.some(({ thin }) => !thin),
      inCorner: [
        line("out", [
          [from, y],
          [x, y],
          [x, corner],
        ]),
        shape(
          `leader ${part.id} dot`,
          "leader-dot",
          layers.block + 2,
          circle(from, y, dot),
          { x0: from - dot, y0: y - dot, x1: from + dot, y1: y + dot },
          of,
        ),
      ],
      inSide: [
        line("in", [
          [x, 0],
          [x, target],
          [end, target],
        ]),
      ],
    };
  });
}

/** Heights at which the leaders leave their parts, each lower than the one before and as near to the middle of its part as that lets it be. */
function leaves<T extends { readonly part: Drawn }>(groups: readonly T[], under: number): (T & { readonly y: number })[] {
  const kept: T[] = [];
  // Below the day that stands over them.
  let low = under;
  for (const group of groups) {
    const y = Math.max(group.part.y0 - slop, low + apart);
    if (y > group.part.y1 + slop) continue;
    low = y;
    kept.push(group);
  }
  const latest: number[] = [];
  kept.reduceRight((below, { part }, index) => {
    latest[index] = Math.min(part.y1 + slop, below - apart);
    return latest[index]!;
  }, Number.POSITIVE_INFINITY);
  let before = under;
  return kept.map((group, index) => {
    before = Math.min(Math.max((group.part.y0 + group.part.y1) / 2, before + apart), latest[index]!);
    return { ...group, y: before };
  });
}
