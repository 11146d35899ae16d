import type { Place } from "../../core/build";
import { layers, type Mark, path, shape } from "../marks/mark";
import type { Role } from "../marks/roles";
import { textWidth } from "../text/measure";
import { isEarth } from "./earth";
import type { Frame } from "./frame";
import type { Layout } from "./layout";
import { bracketWidth, elevationWidth, leaderWidth } from "./side";

/** From one height to another, px. */
export interface Room {
  readonly from: number;
  readonly to: number;
}

const tallest = 560;

type Outline = NonNullable<Place["elevation_mm"]>;

/**
 * The structure in elevation, in proportion, between two heights of the side, with a leader line from each part to its lane. `at`: the instant up to
 * which it is built.
 */
export function elevationMarks(frame: Frame, layout: Layout, width: number, room: Room, at: number): Mark[] {
  const { build } = frame;
  const drawn = build.places
    .map((place, index) => ({ place, index, outline: place.elevation_mm }))
    .filter((one): one is { place: Place; index: number; outline: Outline } => one.outline !== null);
  if (drawn.length === 0) return [];
  const box = {
    x0: Math.min(...drawn.map(({ outline }) => outline.x)),
    x1: Math.max(...drawn.map(({ outline }) => outline.x + outline.wide)),
    y0: Math.min(...drawn.map(({ outline }) => outline.y)),
    y1: Math.max(...drawn.map(({ outline }) => outline.y + outline.high)),
  };
  const space = Math.max(40, Math.min(tallest, room.to - room.from - 16));
  const scale = Math.min((elevationWidth - 10) / Math.max(1, box.x1 - box.x0), space / Math.max(1, box.y1 - box.y0));
  const base = (room.from + room.to) / 2 + ((box.y1 - box.y0) * scale) / 2;
  const toX = (x: number) => 5 + (x - box.x0) * scale;
  const toY = (y: number) => base - (y - box.y0) * scale;
  const ordered = [...drawn].sort((a, b) => b.outline.wide * b.outline.high - a.outline.wide * a.outline.high || a.index - b.index);
  const marks: Mark[] = [];
  ordered.forEach(({ place, index, outline }, rank) => {
    const box = { x0: toX(outline.x), x1: toX(outline.x + outline.wide), y0: toY(outline.y + outline.high), y1: toY(outline.y) };
    marks.push(
      shape(`part ${place.id}`, lookOf(frame, index, at), layers.block + rank / 100, outlinePath(outline, box), box, {
        list: "places",
        id: place.id,
      }),
    );
    const lane = layout.lanes.find((one) => one.place === index);
    if (!lane) return;
    const name = width - bracketWidth - Math.max(...lane.lines.map((line) => textWidth(line, frame.text)));
    const [y, target] = [(box.y0 + box.y1) / 2, (lane.y0 + lane.y1) / 2];
    if (target < room.from || target > room.to) return;
    marks.push(
      path(
        `leader ${place.id}`,
        "leader",
        layers.rule,
        [
          [box.x1, y],
          [elevationWidth, y],
          [elevationWidth + leaderWidth - 8, target],
          [Math.max(elevationWidth + leaderWidth - 6, name - 6), target],
        ],
        { of: { list: "places", id: place.id } },
      ),
    );
  });
  return marks;
}

/** The state of a place at the instant the elevation is drawn for. */
function lookOf({ plan, build }: Frame, place: number, at: number): Role {
  const states = plan.stands.places[place] ?? [];
  const index = states.findLastIndex(({ from }) => from <= at);
  const state = states[Math.max(0, index)];
  if (!state || state.state === "open") return "outline";
  if (index <= 0 && state.state === "closed") return "outline-later";
  if (state.state === "closed") return "outline-closed";
  return isEarth(build, place, state.by) ? "outline-earth" : "outline-concrete";
}

function outlinePath(outline: Outline, { x0, y0, x1, y1 }: { x0: number; y0: number; x1: number; y1: number }): string {
  const n = (value: number) => value.toFixed(1);
  const middle = (x0 + x1) / 2;
  if (outline.shape === "gable") return `M${n(x0)} ${n(y1)}L${n(middle)} ${n(y0)}L${n(x1)} ${n(y1)}Z`;
  if (outline.shape === "arch") {
    const [rx, ry] = [(x1 - x0) / 2, Math.min((x1 - x0) / 2, y1 - y0)];
    return `M${n(x0)} ${n(y1)}V${n(y0 + ry)}A${n(rx)} ${n(ry)} 0 0 1 ${n(x1)} ${n(y0 + ry)}V${n(y1)}Z`;
  }
  return `M${n(x0)} ${n(y0)}H${n(x1)}V${n(y1)}H${n(x0)}Z`;
}
