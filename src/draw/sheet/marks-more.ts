import { layers, type Mark, path, rect, type Subject } from "../marks/mark";
import { type Frame, touches } from "./frame";
import type { Layout } from "./layout";

/** Idle days as pale bands through all lanes: a break in the axis, not a stretch of it. */
export function foldMarks(frame: Frame, height: number): Mark[] {
  const { axis, time } = frame;
  return axis.columns.flatMap((column): Mark[] => {
    if (!touches(frame, column.x0, column.x1)) return [];
    const { weekday } = time.local(column.from);
    const idle = column.kind === "fold" || (column.kind === "day" && weekday !== 0 && weekday !== 6);
    return idle ? [rect(`fold ${column.date} ${column.kind}`, "fold", layers.fold, column.x0, 0, column.x1, height)] : [];
  });
}

export function todayMarks({ asked, axis }: Frame, height: number, part: string): Mark[] {
  const today = asked.today ?? null;
  const last = axis.columns[axis.columns.length - 1]!;
  if (today === null || today < axis.columns[0]!.from || today > last.to) return [];
  const x = axis.x(today);
  return [
    path(`today ${part}`, "today", layers.today, [
      [x, 0],
      [x, height],
    ]),
  ];
}

/** Slack as a thin rule from the block to the latest finish that costs nothing. */
export function slackMarks({ plan, axis, build, whole }: Frame, layout: Layout): Mark[] {
  if (whole) return [];
  return layout.visible.flatMap((block): Mark[] => {
    const dates = plan.steps[block.step]!;
    const x = axis.x(dates.latestFinish);
    if (dates.slack <= 0 || x <= block.x1 + 3) return [];
    const of: Subject = { list: "steps", id: build.steps[block.step]!.id };
    const y = block.y1 + 1.5;
    return [
      path(
        `slack ${of.id}`,
        "slack",
        layers.slack,
        [
          [block.x1, y],
          [x, y],
        ],
        { of },
      ),
      path(
        `slack end ${of.id}`,
        "slack-end",
        layers.slack,
        [
          [x, y - 4],
          [x, y + 3],
        ],
        { of },
      ),
    ];
  });
}

/** Where steps stood in the plan before: a dashed outline and a dotted way to where they stand now. */
export function ghostMarks(frame: Frame, layout: Layout): Mark[] {
  const before = frame.asked.before;
  if (!before) return [];
  const { axis, build } = frame;
  const marks: Mark[] = [];
  for (const block of layout.blocks.values()) {
    const step = build.steps[block.step]!;
    const dates = before.plan.steps[before.build.at.step.get(step.id) ?? -1];
    if (!dates || dates.start === frame.plan.steps[block.step]!.start) continue;
    const [x0, x1] = [axis.x(dates.start), axis.x(dates.finish)];
    const of: Subject = { list: "steps", id: step.id };
    const outline: [number, number][] = [
      [x0, block.y0 + 2],
      [x1, block.y0 + 2],
      [x1, block.y1 - 2],
      [x0, block.y1 - 2],
    ];
    marks.push(path(`ghost ${step.id}`, "ghost", layers.ghost, outline, { closed: true, of }));
    const y = block.y1 - 5;
    const [from, to] = x1 < block.x0 ? [x1, block.x0] : x0 > block.x1 ? [x0, block.x1] : [x0, x0];
    if (from !== to)
      marks.push(
        path(
          `ghost way ${step.id}`,
          "ghost-move",
          layers.ghost,
          [
            [from, y],
            [to, y],
          ],
          { of },
        ),
      );
  }
  return marks;
}
