import { circle, layers, type Mark, round, type Subject, shape } from "../marks/mark";
import type { Frame } from "./frame";
import type { Block, Layout } from "./layout";

const ring = 2.6;

/** A thin line from a block into each other lane that its step reaches, ending in a ring. */
export function tailMarks(frame: Frame, layout: Layout): Mark[] {
  if (frame.whole) return [];
  const laneAt = new Map(layout.lanes.map(({ place }, index) => [place, index]));
  const marks: Mark[] = [];
  for (const block of layout.visible) {
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
  const box = layout.lanes[lane]!;
  const x = Math.min(block.x0 + 4, (block.x0 + block.x1) / 2);
  const endY = up ? box.y1 - 4 : box.y0 + 4;
  const id = `${block.step} ${box.key}`;
  const [from, to] = up ? [endY + ring, block.y0] : [block.y1, endY - ring];
  // Broken where it passes behind a block or words.
  const gaps = layout.bands.filter(
    (band) => band.y1 > from && band.y0 < to && band.taken.some((span) => x > span.from - 2 && x < span.to + 2),
  );
  let d = "";
  let y = from;
  for (const gap of [...gaps, { y0: to, y1: to }]) {
    if (gap.y0 - 1 > y) d += `M${round(x)} ${round(y)}V${round(Math.min(gap.y0 - 1, to))}`;
    y = Math.max(y, gap.y1 + 1);
  }
  return [
    ...(d === "" ? [] : [shape(`tail ${id}`, "tail", layers.tail, d, { x0: x, y0: from, x1: x, y1: to }, of)]),
    shape(
      `tail end ${id}`,
      "tail-end",
      layers.tail + 1,
      circle(x, endY, ring),
      { x0: x - ring, y0: endY - ring, x1: x + ring, y1: endY + ring },
      of,
    ),
  ];
}
