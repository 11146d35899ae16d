import { layers, type Mark, path, rect, type Subject, shape, words } from "../marks/mark";
import type { Frame } from "./frame";
import { type Layout, waitTextGap } from "./layout";
import { circle } from "./marks-blocks";
import { plates } from "./plate";

const half = 4;
const tick = 8;
const ring = 3;

/** Waits as hatched runs at their true length, a tick where they let go, what is awaited beside it, and a ring for each visit. */
export function waitMarks(frame: Frame, layout: Layout): Mark[] {
  const { build, plan, axis } = frame;
  const marks: Mark[] = [];
  const seen = new Set<number>();
  for (const run of layout.waits) {
    const y = (run.y0 + run.y1) / 2;
    const of: Subject = run.wait ? { list: "waits", id: run.wait.id } : { list: "steps", id: build.steps[run.from]!.id };
    marks.push(rect(run.id, "wait", layers.wait, run.x0, y - half, run.x1, y + half, of));
    marks.push(
      path(
        `${run.id} frame`,
        "wait-frame",
        layers.wait,
        [
          [run.x0, y - half],
          [run.x1, y - half],
          [run.x1, y + half],
          [run.x0, y + half],
        ],
        { closed: true, of },
      ),
    );
    marks.push(
      path(
        `${run.id} end`,
        "wait-end",
        layers.wait + 1,
        [
          [run.x1, y - tick],
          [run.x1, y + tick],
        ],
        { of },
      ),
    );
    const label = words(`${run.id} label`, "text-soft", {
      text: run.label,
      x: run.x1 + waitTextGap,
      y: y + 0.34 * frame.text,
      size: frame.text,
      of,
    });
    marks.push(...plates(frame, layout.lanes[run.lane]!, label, run.y0 + 1, run.y1 - 1), label);
    plan.visits.forEach((visit, index) => {
      if (seen.has(index) || visit.from !== run.from || visit.at < run.begins || visit.at > run.ready) return;
      seen.add(index);
      marks.push(visitMark(index, axis.x(visit.at), y));
    });
  }
  if (frame.whole) marks.push(...wholeVisits(frame, layout));
  return marks;
}

function wholeVisits({ build, plan, axis }: Frame, layout: Layout): Mark[] {
  return plan.visits.flatMap((visit, index) => {
    const place = build.steps[visit.from]?.place;
    const lane = layout.lanes.find((one) => place !== null && place !== undefined && one.key === place);
    return lane ? [visitMark(index, axis.x(visit.at), lane.y1 - 4.5)] : [];
  });
}

function visitMark(index: number, x: number, y: number): Mark {
  return shape(`visit ${index}`, "visit", layers.wait + 2, circle(x, y, ring), { x0: x - ring, y0: y - ring, x1: x + ring, y1: y + ring });
}
