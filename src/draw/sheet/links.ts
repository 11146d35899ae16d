import { layers, type Mark, path, rect, round, shape } from "../marks/mark";
import type { Neighbours } from "./lit";
import { routes } from "./route";
import type { Sheet } from "./sheet";

/** Over the sheet: a frame round the selected step, and a line to it from each cause and from it to each consequence. */
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
  const id = `link ${from} ${to}`;
  const [x, into] = [Math.max(a.x0, a.x1 - 3), b.x0 + 3];
  // Along the channels, broken behind what stands in its way, and down into the block from the channel above it.
  const lines = routes(sheet.bands, a.band, x, b.band - 1, into, { far: 40, broken: true });
  lines[0]!.unshift([x, a.y1]);
  lines[lines.length - 1]!.push([into, b.y0 - 5]);
  return [
    ...lines.map((line, index) => path(`${id} ${index}`, "link", layers.link, line)),
    shape(`${id} head`, "link-head", layers.link, `M${round(into)} ${round(b.y0)}l-3.5 -6h7Z`, {
      x0: into - 3.5,
      y0: b.y0 - 6,
      x1: into + 3.5,
      y1: b.y0,
    }),
  ];
}
