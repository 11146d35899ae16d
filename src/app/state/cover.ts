import type { Build } from "../../core/build";
import type { Plan } from "../../core/plan";
import { sheet, svgText } from "../../draw";

const edge = 8;

/** The build's own drawing as SVG text, finished; null where no place of it is drawn. */
export function coverOf(build: Build, plan: Plan): string | null {
  const drawn = sheet({ build, plan, scale: "whole", elevation: true });
  const marks = drawn.structure(plan.finish).filter((mark) => mark.id.startsWith("part "));
  if (marks.length === 0) return null;
  const [x, y] = [Math.min(...marks.map((mark) => mark.x0)), Math.min(...marks.map((mark) => mark.y0))];
  const width = Math.max(...marks.map((mark) => mark.x1)) - x + 2 * edge;
  const height = Math.max(...marks.map((mark) => mark.y1)) - y + 2 * edge;
  return svgText({ title: build.name, width, height, parts: [{ name: "cover", x: edge - x, y: edge - y, width, height, marks }] });
}
