import type { Build } from "../../core/build";
import { structureCover, svgText } from "../../draw";

/** The build's own drawing as SVG text, as it will stand; null where there is nothing to draw. */
export function coverOf(build: Build): string | null {
  const drawing = structureCover(build);
  return drawing.parts.length === 0 ? null : svgText(drawing);
}
