import { layers, type Mark, path, rect, round, shape } from "../marks/mark";
import type { Neighbours } from "./lit";
import type { Sheet } from "./sheet";

/** Over the sheet: a frame round the selected step, and a line to it from each cause and from it to each consequence, bent once. */
export function linkMarks(sheet: Sheet, step: number, { causes, consequences }: Neighbours): Mark[] {
  const block = sheet.blocks.get(step);
  if (!block) return [];
  const marks: Mark[] = [rect("lit", "lit", layers.link, block.x0 - 3, block.y0 - 3, block.x1 + 3, block.y1 + 3)];
  for (const cause of causes) marks.push(...link(sheet, cause, step));
  for (const consequence of consequences) marks.push(...link(sheet, step, consequence));
  return marks;
}

function link(sheet: Sheet, from: number, to: number): Mark[] {
  const [a, b] = [sheet.blocks.get(from), sheet.blocks.get(to)];
  if (!a || !b) return [];
  const down = b.y0 > a.y0;
  const x = a.x1 - Math.min(3, (a.x1 - a.x0) / 2);
  const y = (b.y0 + b.y1) / 2;
  const id = `link ${from} ${to}`;
  const tip = (tx: number, ty: number, d: string, box: readonly [number, number, number, number]) =>
    shape(`${id} head`, "link-head", layers.link, `M${round(tx)} ${round(ty)}${d}Z`, { x0: box[0], y0: box[1], x1: box[2], y1: box[3] });
  if (Math.abs(b.y0 - a.y0) < 1) {
    const level = a.y0 - 3;
    return [
      path(id, "link", layers.link, [
        [x, a.y0],
        [x, level],
        [b.x0 + 3, level],
        [b.x0 + 3, b.y0 - 4],
      ]),
      tip(b.x0 + 3, b.y0, "l-3.5 -6h7", [b.x0 - 0.5, b.y0 - 6, b.x0 + 6.5, b.y0]),
    ];
  }
  const startY = down ? a.y1 : a.y0;
  if (b.x0 - x > 8)
    return [
      path(id, "link", layers.link, [
        [x, startY],
        [x, y],
        [b.x0 - 6, y],
      ]),
      tip(b.x0, y, "l-7 -3.5v7", [b.x0 - 7, y - 3.5, b.x0, y + 3.5]),
    ];
  const [endX, endY] = [b.x0 + 3, down ? b.y0 : b.y1];
  const turn = down ? endY - 5 : endY + 5;
  return [
    path(id, "link", layers.link, [
      [x, startY],
      [x, turn],
      [endX, turn],
      [endX, endY],
    ]),
    tip(endX, endY, down ? "l-3.5 -6h7" : "l-3.5 6h7", [
      endX - 3.5,
      Math.min(endY, endY + (down ? -6 : 6)),
      endX + 3.5,
      Math.max(endY, endY + (down ? -6 : 6)),
    ]),
  ];
}
