import { layers, type Mark, path, type Subject } from "../marks/mark";
import { type Frame, touches } from "./frame";
import type { Layout } from "./layout";

/**
 * The closing mark: a heavy edge with short returns to the side that is shut. Across the whole lane where the place is closed from then on, at the
 * block alone where other ways in stay open.
 */
export function closingMarks(frame: Frame, layout: Layout): Mark[] {
  const { plan, build, axis, whole } = frame;
  const marks: Mark[] = [];
  for (const closing of plan.closings) {
    const step = build.steps[closing.step];
    if (!step) continue;
    const of: Subject = { list: "steps", id: step.id };
    const x = axis.x(closing.at);
    if (!touches(frame, x - 8, x + 8)) continue;
    let own = false;
    const block = layout.blocks.get(closing.step);
    for (const index of frame.ground.shutBy.get(closing.piece) ?? []) {
      const lane = layout.lanes[index]!;
      own ||= index === block?.lane;
      marks.push(
        bracketMark(`closes ${closing.piece} ${closing.step} ${lane.key}`, x, lane.section.y0 + 1.5, lane.section.y1 - 1.5, of, whole),
      );
    }
    if (block && !own)
      marks.push(
        bracketMark(`closes ${closing.piece} ${closing.step}`, x <= block.x0 + 1 ? block.x0 - 2 : x, block.y0 - 3, block.y1 + 1, of, whole),
      );
  }
  return marks;
}

function bracketMark(id: string, x: number, y0: number, y1: number, of: Subject, whole: boolean): Mark {
  const serif = whole ? 2.5 : 5;
  return path(
    id,
    whole ? "closing-small" : "closing",
    layers.closing,
    [
      [x + serif, y0],
      [x, y0],
      [x, y1],
      [x + serif, y1],
    ],
    { of },
  );
}
