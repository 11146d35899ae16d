import { layers, type Mark, path, type Subject, words } from "../marks/mark";
import type { Frame } from "./frame";
import type { Layout } from "./layout";

export interface Side {
  readonly width: number;
  readonly marks: readonly Mark[];
}

export const bracketWidth = 12;
/** Room for the tracks of the leader lines, between the names and the brackets, px. */
export const trackRoom = 46;

/** Width of the names with what stands beside them, px. */
export const sideWidth = (nameWidth: number, elevation: boolean): number => nameWidth + 8 + bracketWidth + (elevation ? trackRoom + 6 : 0);

/** Left of the lanes: their names with their brackets, and room for the leader lines where the structure is drawn. */
export function sideMarks(frame: Frame, layout: Layout, elevation: boolean): Side {
  const width = sideWidth(layout.nameWidth, elevation);
  return { width, marks: [...names(frame, layout, layout.nameWidth + 8), ...brackets(layout, width)] };
}

function names({ text, build }: Frame, layout: Layout, right: number): Mark[] {
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
