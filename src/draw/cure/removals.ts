import { circle, layers, type Mark, path, shape, words } from "../marks/mark";
import { textWidth, wrap } from "../text/measure";
import type { CureFrame } from "./frame";
import type { Plot } from "./strength";

/** Half the width of the mark where a ground is met. px */
const ring = 4;

/** What waits for the pour, one under the other: name and date, a line from the pour to it with a ring where each ground is met, full for the last, the grounds in words. */
export function removalRows(frame: CureFrame): Plot {
  const marks: Mark[] = [];
  let top = 0;
  frame.sheet.removals.forEach((_, index) => {
    const row = rowOf(frame, index, top);
    marks.push(...row.marks);
    top = row.foot;
  });
  return { height: top, marks };
}

function rowOf(frame: CureFrame, index: number, top: number): { marks: Mark[]; foot: number } {
  const { sheet, text, line, left, x, width } = frame;
  const removal = sheet.removals[index]!;
  const said = frame.removals[index]!;
  const marks: Mark[] = [];
  let base = top + line;
  const head = [`${said.name}, `, said.date].join("");
  for (const [n, piece] of wrap(head, width - left, text, 600).entries()) {
    marks.push(words(`removal ${index} head ${n}`, "text", { text: piece, x: left, y: base, size: text, weight: 600 }));
    base += line;
  }
  const last = wrap(head, width - left, text, 600).at(-1) ?? "";
  if (said.state !== "") {
    const role = removal.hold ? "text-warn" : "text-soft";
    const beside = left + textWidth(last, text, 600) + 10;
    const fits = beside + textWidth(said.state, text) <= width;
    if (fits) marks.push(words(`removal ${index} state`, role, { text: said.state, x: beside, y: base - line, size: text }));
    else {
      marks.push(words(`removal ${index} state`, role, { text: said.state, x: left, y: base, size: text }));
      base += line;
    }
  }
  const level = base - line * 0.35;
  const end = Math.min(removal.planned, sheet.until);
  marks.push(
    path(`removal ${index} run`, "wait-frame", layers.wait, [
      [x(sheet.placed), level],
      [x(end), level],
    ]),
    path(`removal ${index} at`, "closing", layers.closing, [
      [x(end), level - 7],
      [x(end), level + 7],
    ]),
  );
  removal.grounds.forEach((ground, n) => {
    if (ground.at > sheet.until) return;
    const px = x(ground.at);
    const box = { x0: px - ring, y0: level - ring, x1: px + ring, y1: level + ring };
    const role = n === removal.governs ? "crew" : "outline";
    marks.push(shape(`removal ${index} ground ${n}`, role, layers.block, circle(px, level, ring), box));
  });
  base += line * 0.6;
  for (const [n, piece] of said.grounds.flatMap((ground) => wrap(ground, width - left, text)).entries()) {
    marks.push(words(`removal ${index} words ${n}`, "text-soft", { text: piece, x: left, y: base + text * 0.4, size: text }));
    base += line;
  }
  return { marks, foot: base + line * 0.4 };
}
