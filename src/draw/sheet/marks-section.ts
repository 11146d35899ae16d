import { layers, type Mark, path, rect, round, shape } from "../marks/mark";
import { isEarth } from "./earth";
import { type Frame, touches } from "./frame";
import type { Lane, Layout } from "./layout";

/** Width of the texture at the edge where a state begins, and of the strip of it along the foot of the lane, px. */
const edgeWidth = 13;
const footHeight = 4;

/** Each lane drawn in section: blank while open, a pale flat while closed or filled with the texture only along its edges. */
export function* sectionMarks(frame: Frame, layout: Layout): Generator<Mark, void, void> {
  const width = frame.axis.width;
  const starts = frame.whole ? [] : dayStarts(frame);
  for (const [index, lane] of layout.lanes.entries()) {
    yield* states(frame, lane);
    const before = layout.lanes[index - 1];
    yield edgeLines(lane, before, width);
    if (!frame.whole && !lane.thin) yield dayTicks(starts, lane, width);
    if (before && !before.offSite && lane.offSite) {
      const y = (before.y1 + lane.y0) / 2;
      yield path("ground", "ground-line", layers.rule, [
        [0, y],
        [width, y],
      ]);
    }
  }
}

/** The lines a lane lies between, as one mark: one line where nothing stands in it, and no second one where the lane above ends. */
function edgeLines(lane: Lane, before: Lane | undefined, width: number): Mark {
  const { y0, y1 } = lane.section;
  const joined = before !== undefined && before.section.y1 === y0;
  const ys = lane.thin ? [(y0 + y1) / 2] : joined ? [y1] : [y0, y1];
  const d = ys.map((y) => `M0 ${round(y)}H${round(width)}`).join("");
  return shape(`lane ${lane.key}`, "lane-line", layers.rule, d, { x0: 0, y0: ys[0]!, x1: width, y1: ys[ys.length - 1]! });
}

/** Where days begin: short strokes under each lane's upper line, so that no line runs through a lane. */
function dayStarts(frame: Frame): readonly number[] {
  const { axis, time } = frame;
  return axis.columns
    .filter(({ x0, x1 }) => touches(frame, x0, x1))
    .filter(({ kind, from }) => kind === "site" || kind === "visit" || (kind === "day" && time.local(from).weekday === 6))
    .map(({ x0 }) => round(x0));
}

function dayTicks(starts: readonly number[], lane: Lane, width: number): Mark {
  const d = starts.map((x) => `M${x} ${round(lane.section.y0)}v4`).join("");
  return shape(`ticks ${lane.key}`, "lane-line", layers.rule, d, { x0: 0, y0: lane.section.y0, x1: width, y1: lane.section.y0 + 4 });
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
    // Shut from the start: not there yet, or never yet opened. Hatched along the foot alone.
    const notYet = index === 0 && state.state === "closed";
    const filled = state.state === "filled";
    const earth = isEarth(build, lane.place, state.by);
    const edge = filled ? (earth ? "earth-edge" : "concrete-edge") : "closed-edge";
    const id = `${lane.key} ${index}`;
    if (!notYet)
      marks.push(rect(`state ${id}`, filled ? "filled-flat" : "closed-flat", layers.section, x0, lane.section.y0, x1, lane.section.y1));
    const foot = frame.whole || lane.thin ? 0 : footHeight;
    if (foot > 0) marks.push(rect(`foot ${id}`, edge, layers.section, x0, lane.section.y1 - foot, x1, lane.section.y1));
    marks.push(
      rect(
        `edge ${id}`,
        edge,
        layers.section,
        x0,
        lane.section.y0,
        Math.min(x1, x0 + (frame.whole ? 4 : edgeWidth)),
        lane.section.y1 - foot,
      ),
    );
    if (next?.state === "open")
      marks.push(
        path(`opens ${id}`, "opens-edge", layers.closing, [
          [x1, lane.section.y0],
          [x1, lane.section.y1],
        ]),
      );
  });
  return marks;
}
