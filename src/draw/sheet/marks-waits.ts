import { circle, layers, type Mark, path, rect, type Subject, shape, words } from "../marks/mark";
import type { Frame } from "./frame";
import type { Layout, WaitPlace } from "./layout";
import { plates } from "./plate";
import { shortest, type WaitEnd, waitTextGap } from "./waits";

const most = { half: 4, tick: 8 } as const;
const ring = 3;

/** Waits as hatched runs at their true length, a tick where each lets go, what is awaited beside it, and a ring for each visit. */
export function waitMarks(frame: Frame, layout: Layout): Mark[] {
  const { build, plan, axis } = frame;
  if (frame.whole) return wholeVisits(frame, layout);
  const marks: Mark[] = [];
  const visits = new Map<number, number[]>();
  plan.visits.forEach(({ from }, index) => {
    visits.set(from, [...(visits.get(from) ?? []), index]);
  });
  for (const run of layout.waits) {
    const y = (run.y0 + run.y1) / 2;
    const half = Math.min(most.half, (run.y1 - run.y0) / 3);
    const of: Subject = { list: "steps", id: build.steps[run.from]!.id };
    const corners: [number, number][] = [
      [run.x0, y - half],
      [run.x1, y - half],
      [run.x1, y + half],
      [run.x0, y + half],
    ];
    marks.push(
      rect(run.id, "wait", layers.wait, run.x0, y - half, run.x1, y + half, of),
      path(`${run.id} frame`, "wait-frame", layers.wait, corners, { closed: true, of }),
    );
    for (const end of run.ends) marks.push(...endMarks(frame, layout, run, end, y, of));
    for (const index of visits.get(run.from) ?? []) {
      const { at } = plan.visits[index]!;
      if (at < run.begins || axis.x(at) > run.x1) continue;
      const x = axis.x(at);
      marks.push(
        shape(
          `visit ${index}`,
          "visit",
          layers.wait + 2,
          circle(x, y, ring),
          { x0: x - ring, y0: y - ring, x1: x + ring, y1: y + ring },
          of,
        ),
      );
    }
  }
  return marks;
}

function endMarks(frame: Frame, layout: Layout, run: WaitPlace, end: WaitEnd, y: number, of: Subject): Mark[] {
  const marks: Mark[] = [
    path(
      `${run.id} end ${end.row}`,
      "wait-end",
      // A short one may end within the block that starts it.
      run.x1 - run.x0 < shortest ? layers.text : layers.wait + 1,
      [
        [end.x, y - Math.min(most.tick, (run.y1 - run.y0) / 2)],
        [end.x, y + Math.min(most.tick, (run.y1 - run.y0) / 2)],
      ],
      { of },
    ),
  ];
  if (!end.labelled) return marks;
  const label = words(`${run.id} label ${end.row}`, "text-soft", {
    text: end.label,
    x: end.x + waitTextGap,
    y: y + 0.34 * frame.text,
    size: frame.text,
    of,
  });
  // On the run itself words stand on blank paper.
  if (end.x < run.x1)
    marks.push(rect(`plate on ${label.id}`, "plate", layers.plate, label.x0 - 3, run.y0 + 2, label.x1 + 3, run.y1 - 2, of));
  return [...marks, ...plates(frame, layout.lanes[run.lane]!, label, run.y0 + 1, run.y1 - 1), label];
}

/** In the whole build a short stroke at the foot of the lane for each visit. */
function wholeVisits({ build, plan, axis }: Frame, layout: Layout): Mark[] {
  return plan.visits.flatMap((visit, index) => {
    const place = build.steps[visit.from]?.place;
    const lane = place ? layout.lanes.find((one) => one.key === place) : undefined;
    if (!lane) return [];
    const x = axis.x(visit.at);
    return [
      path(`visit ${index}`, "wait-end", layers.wait, [
        [x, lane.y1 - 6],
        [x, lane.y1],
      ]),
    ];
  });
}
