import { layers, type Mark, path, type Subject, shape } from "../marks/mark";
import type { Frame } from "./frame";
import type { Block, Layout } from "./layout";
import { circle } from "./marks-blocks";
import { route } from "./route";

const ring = 2.6;

/** A thin line from a block into each other lane that its step reaches, ending in a ring. */
export function tailMarks(frame: Frame, layout: Layout): Mark[] {
  if (frame.whole) return [];
  const laneAt = new Map(layout.lanes.map(({ place }, index) => [place, index]));
  const marks: Mark[] = [];
  for (const block of layout.blocks.values()) {
    const step = frame.build.steps[block.step]!;
    const of: Subject = { list: "steps", id: step.id };
    const lanes = new Set<number>();
    for (const reach of step.reaches)
      for (const { place } of reach.any) {
        const lane = laneAt.get(frame.build.at.place.get(place) ?? -2);
        if (lane !== undefined && lane !== block.lane) lanes.add(lane);
      }
    for (const lane of lanes) marks.push(...tail(layout, block, lane, of));
  }
  return marks;
}

function tail(layout: Layout, block: Block, lane: number, of: Subject): Mark[] {
  const up = lane < block.lane;
  const rows = layout.bands.map((band, index) => ({ band, index })).filter(({ band }) => band.lane === lane);
  const target = (up ? rows[rows.length - 1] : rows[0])!.index;
  const x = Math.min(block.x0 + 4, (block.x0 + block.x1) / 2);
  const id = `${block.step} ${layout.lanes[lane]!.key}`;
  // Downwards the tail ends at the top of the lane, in the channel above its first row.
  const to = up ? target : target - 1;
  const points = route(layout.bands, block.band, x, to, x, true);
  const lastPoint = points[points.length - 1]!;
  const before = points[points.length - 2] ?? lastPoint;
  const laneBox = layout.lanes[lane]!;
  const endX = before[0];
  const endY = up ? laneBox.y1 - 4 : laneBox.y0 + 4;
  const shortened = [...points.slice(0, -1), [endX, endY] as const];
  return [
    path(`tail ${id}`, "tail", layers.tail, shortened, { of }),
    shape(
      `tail end ${id}`,
      "tail-end",
      layers.tail + 1,
      circle(endX, endY, ring),
      { x0: endX - ring, y0: endY - ring, x1: endX + ring, y1: endY + ring },
      of,
    ),
  ];
}
