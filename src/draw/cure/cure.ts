import { type Drawing, inOrder, type Part } from "../marks/mark";
import { type CureAsked, frameOf } from "./frame";
import { removalRows } from "./removals";
import { type Plot, strengthPlot } from "./strength";
import { warmthPlot } from "./warmth";

/** Strength, what waits for it and the air at the site, one above the other on one scale of time. */
export function cureDrawing(asked: CureAsked): Drawing {
  const frame = frameOf(asked);
  const plots: readonly (readonly [string, Plot])[] = [
    ["strength", strengthPlot(frame)],
    ["removals", removalRows(frame)],
    ["warmth", warmthPlot(frame)],
  ];
  let y = 0;
  const parts = plots.flatMap(([name, plot]): Part[] => {
    if (plot.marks.length === 0) return [];
    const part = { name, x: 0, y, width: asked.width, height: plot.height, marks: inOrder(plot.marks) };
    y += plot.height + frame.line * 0.8;
    return [part];
  });
  return { title: asked.title, width: asked.width, height: Math.max(0, y - frame.line * 0.8), parts };
}
