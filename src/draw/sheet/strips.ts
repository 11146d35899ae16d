import { layers, type Mark, path, rect, words } from "../marks/mark";
import { textWidth } from "../text/measure";
import { clockLabel } from "../time/labels";
import type { Frame } from "./frame";

export interface Foot {
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Names of the rows, with their baselines. */
  readonly rows: readonly { readonly name: string; readonly y: number }[];
}

type Day = Frame["plan"]["days"][number];

interface Cell {
  readonly id: string;
  readonly text: string;
  readonly warn?: boolean;
  readonly x: number;
  readonly room: number;
}

/** Below the sheet: hands wanted of hands there, daylight, the usual temperatures. */
export function footMarks(frame: Frame): Foot {
  return frame.whole ? wholeFoot(frame) : weekendsFoot(frame);
}

function weekendsFoot(frame: Frame): Foot {
  const { text, axis } = frame;
  const line = text + 6;
  const rows: { name: string; y: number; cells: Cell[] }[] = [];
  const add = (name: string, cells: Cell[]) => {
    if (cells.length > 0) rows.push({ name, y: 8 + rows.length * line + text * 0.8, cells });
  };
  const narrow = (frame.asked.dayWidth ?? 60) < 56;
  const manned = (day: Day) => day.site || day.peopleWanted > 0;
  const short = (day: Day) => day.peopleWanted > day.peopleThere;
  const hands = (say: (day: Day) => { text: string; warn?: boolean }) => dayCells(frame, (day) => (manned(day) ? say(day) : null));
  if (frame.dense)
    add(
      "hands wanted/there",
      hands((day) => ({ text: `${day.peopleWanted}/${day.peopleThere}`, warn: short(day) })),
    );
  else {
    add(
      "hands wanted",
      hands((day) => ({ text: `${day.peopleWanted}`, warn: short(day) })),
    );
    add(
      "hands there",
      hands((day) => ({ text: `${day.peopleThere}` })),
    );
  }
  add(
    "daylight",
    dayCells(frame, (day) =>
      day.sunrise === null || day.sunset === null
        ? null
        : { text: `${clockLabel(frame.time, day.sunrise)} to ${clockLabel(frame.time, day.sunset)}` },
    ),
  );
  add(`usual °${frame.asked.units === "us" ? "F" : "C"}`, temperatureCells(frame, narrow));
  const marks: Mark[] = [
    path("foot top", "lane-line", layers.rule, [
      [0, 1],
      [axis.width, 1],
    ]),
  ];
  for (const row of rows) marks.push(...cellsOf(row.name, row.cells, row.y, text));
  return { height: 8 + rows.length * line + 4, marks, rows: rows.map(({ name, y }) => ({ name, y })) };
}

function dayCells(frame: Frame, say: (day: Day) => { text: string; warn?: boolean } | null): Cell[] {
  const columns = new Map(
    frame.axis.columns.filter(({ kind }) => kind !== "fold" && kind !== "night").map((column) => [column.date, column]),
  );
  return frame.plan.days.flatMap((day): Cell[] => {
    const column = columns.get(day.date);
    if (!column || (frame.seen && column.x1 < frame.seen.from - 200) || (frame.seen && column.x0 > frame.seen.to)) return [];
    const said = say(day);
    return said ? [{ id: day.date, ...said, x: column.x0 + 4, room: column.x1 - column.x0 }] : [];
  });
}

/** Usual lows and highs change by the month, so they stand once a month and at most once a weekend. */
function temperatureCells(frame: Frame, narrow: boolean): Cell[] {
  const usual = frame.build.site.usualTemperatures_C;
  if (!usual) return [];
  const shown = (celsius: number) => Math.round(frame.asked.units === "us" ? celsius * 1.8 + 32 : celsius);
  const seen = new Set<string>();
  return dayCells(frame, (day) => {
    const month = day.date.slice(0, 7);
    const range = usual[Number(day.date.slice(5, 7)) - 1];
    if (!day.site || !range || seen.has(month)) return null;
    seen.add(month);
    return { text: `${shown(range.low)} to ${shown(range.high)}` };
  }).map((cell) => ({ ...cell, room: narrow ? cell.room * 2 : cell.room }));
}

function cellsOf(row: string, cells: readonly Cell[], y: number, size: number): Mark[] {
  let clear = Number.NEGATIVE_INFINITY;
  return cells.flatMap((cell): Mark[] => {
    if (cell.x < clear) return [];
    const weight = cell.warn ? 600 : 400;
    clear = cell.x + textWidth(cell.text, size, weight) + 5;
    return [words(`${row} ${cell.id}`, cell.warn ? "text-warn" : "text", { text: cell.text, x: cell.x, y, size, weight })];
  });
}

const barHeight = 26;

/** In the whole build a bar for each day: hands wanted, with a stroke across it at the number there where fewer come than are wanted. */
function wholeFoot({ plan, axis, text }: Frame): Foot {
  const most = Math.max(1, ...plan.days.map((day) => Math.max(day.peopleWanted, day.peopleThere)));
  const marks: Mark[] = [
    path("foot top", "lane-line", layers.rule, [
      [0, 1],
      [axis.width, 1],
    ]),
  ];
  const base = barHeight + 8;
  for (const day of plan.days) {
    if (day.peopleWanted === 0) continue;
    const [x0, x1] = [axis.x(day.from), Math.max(axis.x(day.to), axis.x(day.from) + 2)];
    const high = (count: number) => base - (count / most) * barHeight;
    marks.push(rect(`wanted ${day.date}`, "bar", layers.block, x0, high(day.peopleWanted), x1, base));
    if (day.peopleThere < day.peopleWanted)
      marks.push(
        path(`there ${day.date}`, "bar-there", layers.text, [
          [x0 - 1.5, high(day.peopleThere)],
          [x1 + 1.5, high(day.peopleThere)],
        ]),
      );
  }
  return { height: base + 6, marks, rows: [{ name: `hands, most ${most}`, y: base - text * 0.3 }] };
}
