import type { Drawing, Mark } from "../../src/draw";

type Text = Extract<Mark, { shape: "text" }>;

const meet = (a: Mark, b: Mark, by: number) => a.x0 < b.x1 - by && b.x0 < a.x1 - by && a.y0 < b.y1 - by && b.y0 < a.y1 - by;
const holds = (outer: Mark, inner: Mark) => outer.x0 <= inner.x0 && outer.x1 >= inner.x1 && outer.y0 <= inner.y0 && outer.y1 >= inner.y1;

/** What is wrong with the lettering of a drawing: twice the same id, text on text, text across the edge of a block, cut text, small text. Empty when it is sound. */
export function troubles(drawing: Drawing, least = 13): string[] {
  return drawing.parts.flatMap((part) => {
    const texts = part.marks.filter((mark): mark is Text => mark.shape === "text");
    const blocks = part.marks.filter((mark) => mark.shape === "rect" && mark.role.startsWith("block"));
    const found: string[] = [];
    const ids = new Set<string>();
    for (const { id } of part.marks) {
      if (ids.has(id)) found.push(`two marks of the ${part.name} are called "${id}"`);
      ids.add(id);
    }
    texts.forEach((a, index) => {
      if (a.size < least) found.push(`"${a.text}" is ${a.size} px high`);
      if (a.x0 < -0.5 || a.y0 < -1 || a.x1 > part.width + 0.5 || a.y1 > part.height + 1)
        found.push(`"${a.text}" is cut by the edge of the ${part.name}`);
      for (const b of texts.slice(index + 1)) if (meet(a, b, 0.5)) found.push(`"${a.text}" stands on "${b.text}" in the ${part.name}`);
      for (const b of blocks) if (meet(a, b, 0.5) && !holds(b, a)) found.push(`"${a.text}" runs over the edge of ${b.id}`);
    });
    return found;
  });
}
