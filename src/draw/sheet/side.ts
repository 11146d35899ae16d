import { layers, type Mark, path, type Subject, words } from "../marks/mark";
import type { Frame } from "./frame";
import type { Layout } from "./layout";

export interface Side {
  readonly width: number;
  readonly marks: readonly Mark[];
}

export const bracketWidth = 12;
/** Room for the elevation and for its leader lines, px. */
export const elevationWidth = 118;
export const leaderWidth = 44;

const sideWidth = (nameWidth: number, elevation: boolean): number =>
  nameWidth + bracketWidth + 8 + (elevation ? elevationWidth + leaderWidth : 0);

/** Left of the lanes: their names with their brackets. */
export function sideMarks(frame: Frame, layout: Layout, elevation: boolean): Side {
  const width = sideWidth(layout.nameWidth, elevation);
  return { width, marks: [...names(frame, layout, width), ...brackets(layout, width)] };
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
