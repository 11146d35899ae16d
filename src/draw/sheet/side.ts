import type { Place } from "../../core/build";
import { layers, type Mark, path, type Subject, shape, words } from "../marks/mark";
import type { Role } from "../marks/roles";
import { textWidth } from "../text/measure";
import type { Frame } from "./frame";
import type { Layout } from "./layout";

export interface Side {
  readonly width: number;
  readonly marks: readonly Mark[];
}

const elevationWidth = 118;
const leaderWidth = 44;
const bracketWidth = 12;
const tallest = 560;

type Outline = NonNullable<Place["elevation_mm"]>;

export const sideWidth = (nameWidth: number, elevation: boolean): number =>
  nameWidth + bracketWidth + 8 + (elevation ? elevationWidth + leaderWidth : 0);

/** Left of the lanes: the structure in elevation, in proportion, its leader lines, and the names of the lanes with their brackets. */
export function sideMarks(frame: Frame, layout: Layout, elevation: boolean): Side {
  const width = sideWidth(layout.nameWidth, elevation);
  return {
    width,
    marks: [...names(frame, layout, width), ...brackets(layout, width), ...(elevation ? elevationMarks(frame, layout, width) : [])],
  };
}

function names({ text, build }: Frame, layout: Layout, width: number): Mark[] {
  const right = width - bracketWidth;
  return layout.lanes.flatMap((lane) => {
    const line = text + 3;
    const first = (lane.y0 + lane.y1) / 2 - ((lane.lines.length - 1) * line) / 2 + text * 0.34;
    const place = build.places[lane.place];
    const of: Subject | undefined = place ? { list: "places", id: place.id } : undefined;
    return lane.lines.map((one, index) =>
      words(`lane ${lane.key} ${index}`, "text", {
        text: one,
        x: right,
        y: first + index * line,
        size: text,
        anchor: "end",
        ...(of ? { of } : {}),
      }),
    );
  });
}

function brackets(layout: Layout, width: number): Mark[] {
  const marks: Mark[] = [];
  const x = width - 4;
  layout.lanes.forEach((lane, index) => {
    if (lane.bracket === null || layout.lanes[index - 1]?.bracket === lane.bracket) return;
    let last = index;
    while (layout.lanes[last + 1]?.bracket === lane.bracket) last += 1;
    if (last === index) return;
    const [y0, y1] = [lane.y0 + 3, layout.lanes[last]!.y1 - 3];
    marks.push(
      path(`bracket ${lane.bracket}`, "bracket", layers.rule, [
        [x + 4, y0],
        [x, y0],
        [x, y1],
        [x + 4, y1],
      ]),
    );
  });
  return marks;
}

function elevationMarks(frame: Frame, layout: Layout, width: number): Mark[] {
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
  const onSite = layout.lanes.filter(({ offSite }) => !offSite);
  const foot = onSite[onSite.length - 1]?.y1 ?? layout.height;
  const scale = Math.min((elevationWidth - 10) / Math.max(1, box.x1 - box.x0), Math.min(tallest, foot - 16) / Math.max(1, box.y1 - box.y0));
  const high = (box.y1 - box.y0) * scale;
  const base = high > foot * 0.5 ? foot - 8 : foot / 2 + high / 2;
  const toX = (x: number) => 5 + (x - box.x0) * scale;
  const toY = (y: number) => base - (y - box.y0) * scale;
  const ordered = [...drawn].sort((a, b) => b.outline.wide * b.outline.high - a.outline.wide * a.outline.high || a.index - b.index);
  const marks: Mark[] = [];
  ordered.forEach(({ place, index, outline }, rank) => {
    const box = { x0: toX(outline.x), x1: toX(outline.x + outline.wide), y0: toY(outline.y + outline.high), y1: toY(outline.y) };
    marks.push(
      shape(`part ${place.id}`, lookOf(frame, index), layers.block + rank / 100, outlinePath(outline, box), box, {
        list: "places",
        id: place.id,
      }),
    );
    const lane = layout.lanes.find((one) => one.place === index);
    if (!lane) return;
    const name = width - bracketWidth - Math.max(...lane.lines.map((line) => textWidth(line, frame.text)));
    const [y, target] = [(box.y0 + box.y1) / 2, (lane.y0 + lane.y1) / 2];
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
function lookOf({ plan, asked, build }: Frame, place: number): Role {
  const at = asked.filledAt ?? asked.today ?? 0;
  const state = [...(plan.stands.places[place] ?? [])].reverse().find(({ from }) => from <= at);
  if (!state || state.state === "open") return "outline";
  if (state.state === "closed") return "outline-closed";
  const sort = build.pieces[state.by]?.sort;
  return sort === "earth" || sort === "fill" ? "outline-earth" : "outline-concrete";
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
