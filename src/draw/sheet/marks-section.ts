import { layers, type Mark, path, rect, round, shape } from "../marks/mark";
import type { Frame } from "./frame";
import type { Lane, Layout } from "./layout";

/** Width of the texture at the edge where a state begins, and of the strip of it along the foot of the lane, px. */
const edgeWidth = 13;
const footHeight = 4;

/** Each lane drawn in section: blank while open, a pale flat while closed or filled with the texture only along its edges. */
export function sectionMarks(frame: Frame, layout: Layout): Mark[] {
  const marks: Mark[] = [];
  const width = frame.axis.width;
  layout.lanes.forEach((lane, index) => {
    marks.push(...states(frame, lane));
    const before = layout.lanes[index - 1];
    const role = "lane-line";
    if (!frame.whole) marks.push(dayTicks(frame, lane));
    if (!(before && before.y1 === lane.y0))
      marks.push(
        path(`lane ${lane.key} top`, role, layers.rule, [
          [0, lane.y0],
          [width, lane.y0],
        ]),
      );
    marks.push(
      path(`lane ${lane.key} foot`, role, layers.rule, [
        [0, lane.y1],
        [width, lane.y1],
      ]),
    );
    if (before && !before.offSite && lane.offSite) {
      const y = (before.y1 + lane.y0) / 2;
      marks.push(
        path("ground", "ground-line", layers.rule, [
          [0, y],
          [width, y],
        ]),
      );
    }
  });
  return marks;
}

/** Short strokes under the lane's upper line where days begin: the eye goes by them, and no line runs through the lane. */
function dayTicks({ axis, time }: Frame, lane: Lane): Mark {
  const starts = axis.columns.filter(
    (one) => one.kind === "site" || one.kind === "visit" || (one.kind === "day" && time.local(one.from).weekday === 6),
  );
  const d = starts.map((one) => `M${round(one.x0)} ${round(lane.y0)}v4`).join("");
  return shape(`ticks ${lane.key}`, "lane-line", layers.rule, d, { x0: 0, y0: lane.y0, x1: axis.width, y1: lane.y0 + 4 });
}

function states(frame: Frame, lane: Lane): Mark[] {
  const { plan, build, axis } = frame;
  const list = lane.place < 0 ? [] : (plan.stands.places[lane.place] ?? []);
  const marks: Mark[] = [];
  list.forEach((state, index) => {
    if (state.state === "open") return;
    const next = list[index + 1];
    const x0 = index === 0 ? 0 : axis.x(state.from);
    const x1 = next ? axis.x(next.from) : axis.width;
    if (x1 <= x0) return;
    const filled = state.state === "filled";
    const earth = build.pieces[state.by]?.sort === "earth" || build.pieces[state.by]?.sort === "fill";
    const edge = filled ? (earth ? "earth-edge" : "concrete-edge") : "closed-edge";
    const id = `${lane.key} ${index}`;
    marks.push(rect(`state ${id}`, filled ? "filled-flat" : "closed-flat", layers.section, x0, lane.y0, x1, lane.y1));
    const foot = frame.whole ? 0 : footHeight;
    if (foot > 0) marks.push(rect(`foot ${id}`, edge, layers.section, x0, lane.y1 - foot, x1, lane.y1));
    marks.push(rect(`edge ${id}`, edge, layers.section, x0, lane.y0, Math.min(x1, x0 + (frame.whole ? 4 : edgeWidth)), lane.y1 - foot));
    if (next?.state === "open")
      marks.push(
        path(`opens ${id}`, "opens-edge", layers.closing, [
          [x1, lane.y0],
          [x1, lane.y1],
        ]),
      );
  });
  return marks;
}
