import { formatPressure } from "../../core/base";
import { layers, type Mark, path, rect, words } from "../marks/mark";
import { textWidth } from "../text/measure";
import { dateLabel } from "../time/labels";
import { type CureFrame, ticksOf } from "./frame";

const high = 220;

export interface Plot {
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Strength against time: expected at the site heavy, at a steady 20 °C thin and broken, what was shown as filled squares with their figure. */
export function strengthPlot(frame: CureFrame): Plot {
  const { sheet, text, line, left, x } = frame;
  const top = 3 * line;
  const most = Math.max(1100, ...[...sheet.expected, ...sheet.at20, ...sheet.shown].map(({ share }) => share));
  const y = (share: number) => top + high * (1 - share / most);
  const [x0, x1] = [x(sheet.placed), x(sheet.until)];
  const marks: Mark[] = [...legend(frame)];
  for (const share of [0, 250, 500, 750, 1000]) {
    marks.push(
      path(`share ${share}`, share === 1000 ? "lane-line" : "day-line", layers.rule, [
        [x0, y(share)],
        [x1, y(share)],
      ]),
    );
    marks.push(
      words(`share figure ${share}`, "text-soft", {
        text: `${share / 10} %`,
        x: left - 6,
        y: y(share) + text * 0.3,
        size: text,
        anchor: "end",
      }),
    );
  }
  const full = `100 %: ${formatPressure(frame.strength_MPa, frame.units)}, as specified`;
  marks.push(rect("specified plate", "plate", layers.plate, x0 + 4, y(1000) - text, x0 + 8 + textWidth(full, text), y(1000) - 2));
  marks.push(words("specified", "text-soft", { text: full, x: x0 + 6, y: y(1000) - 5, size: text }));
  marks.push(...ticks(frame, top, top + high));
  const line20 = sheet.at20.map(({ at, share }) => [x(at), y(share)] as const);
  const expected = sheet.expected.map(({ at, share }) => [x(at), y(share)] as const);
  if (line20.length > 1) marks.push(path("at 20", "arrow-chosen", layers.chalkThin, line20));
  if (expected.length > 1) marks.push(path("expected", "lit", layers.chalkHeavy, expected));
  marks.push(...shown(frame, y));
  return { height: top + high + 2.5 * line, marks };
}

/** The key on one or two lines above the plot, each sample before its words. */
function legend(frame: CureFrame): Mark[] {
  const { text, line, left, width } = frame;
  const entries = [
    { id: "expected", say: "expected at the site", role: "lit" as const },
    ...(frame.sheet.at20.length > 1
      ? [{ id: "20", say: `expected at a steady ${frame.units === "us" ? "68 °F" : "20 °C"}`, role: "arrow-chosen" as const }]
      : []),
    { id: "shown", say: "shown by a test", role: "crew" as const },
  ];
  let [at, row] = [left, 0];
  return entries.flatMap(({ id, say, role }): Mark[] => {
    const wide = 30 + textWidth(say, text) + 22;
    if (at + wide - 22 > width && at > left) [at, row] = [left, row + 1];
    const [from, base] = [at, row * line + text];
    at += wide;
    const sample =
      role === "crew"
        ? rect(`key ${id}`, role, layers.block, from + 8, base - text * 0.3 - 4, from + 16, base - text * 0.3 + 4)
        : path(`key ${id}`, role, layers.chalkThin, [
            [from, base - text * 0.3],
            [from + 24, base - text * 0.3],
          ]);
    return [sample, words(`key words ${id}`, "text", { text: say, x: from + 30, y: base, size: text })];
  });
}

/** Days and dates below, with a fine stroke up the plot. */
function ticks(frame: CureFrame, top: number, foot: number): Mark[] {
  const { text, line, x, time, sheet } = frame;
  const end = x(sheet.until);
  return ticksOf(frame).flatMap(({ days, at }): Mark[] => {
    const date = dateLabel(time, at);
    const anchor = days === 0 ? "start" : x(at) + textWidth(date, text) / 2 > end ? "end" : "middle";
    const place = anchor === "end" ? end : x(at);
    return [
      path(`day ${days}`, "day-line", layers.rule, [
        [x(at), top],
        [x(at), foot + 4],
      ]),
      words(`day figure ${days}`, "text-soft", { text: days === 0 ? "placed" : `${days} d`, x: place, y: foot + line, size: text, anchor }),
      words(`day date ${days}`, "text-soft", { text: date, x: place, y: foot + 2 * line - 2, size: text, anchor }),
    ];
  });
}

function shown(frame: CureFrame, y: (share: number) => number): Mark[] {
  const { sheet, text, x } = frame;
  let clear = Number.NEGATIVE_INFINITY;
  return sheet.shown.flatMap(({ at, share, strength_MPa }, index): Mark[] => {
    const [px, py] = [x(at), y(share)];
    const say = formatPressure(strength_MPa, frame.units);
    const square = rect(`shown ${index}`, "crew", layers.block, px - 4.5, py - 4.5, px + 4.5, py + 4.5);
    // Below the curves, where there is room; the list beside the drawing has every figure.
    if (px + 8 < clear || px + 8 + textWidth(say, text, 600) > x(sheet.until)) return [square];
    clear = px + 8 + textWidth(say, text, 600) + 6;
    const plate = rect(`shown plate ${index}`, "plate", layers.plate, px + 7, py + 5, clear - 5, py + 7 + text * 1.2);
    return [square, plate, words(`shown figure ${index}`, "text", { text: say, x: px + 8, y: py + 5 + text, size: text, weight: 600 })];
  });
}
