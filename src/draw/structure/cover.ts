import type { Build } from "../../core/build";
import { type Drawing, inOrder, type Mark } from "../marks/mark";
import type { Role } from "../marks/roles";
import { bodiesOf } from "./fallback";
import { fitOf } from "./frame";
import { bodyLooks } from "./looks";
import { bodyMarks } from "./paint";
import { paintedOf } from "./painted";

export interface CoverAsked {
  /** The room it may take, px. Usual: 160 by 110. */
  readonly width?: number;
  readonly high?: number;
}

/** Textures are too coarse for a picture of this size: earth is toned, all else is paper. */
const plainer: Partial<Record<Role, Role>> = {
  "body-earth": "body-carrying",
  "body-earth-top": "body-carrying",
  "body-carrying": "body-stands",
  "body-edge": "body-later-edge",
  "body-edge-below": "body-later-below",
};

/** A small picture of a build as it will stand, for a list of builds. No text; nothing in `parts` where there is nothing to draw. */
export function structureCover(build: Build, { width = 160, high = 110 }: CoverAsked = {}): Drawing {
  const { solids } = bodiesOf(build);
  const title = build.name;
  const painted = paintedOf(build, solids, 0);
  if (painted.length === 0) return { title, width, height: high, parts: [] };
  const fit = fitOf(painted, null, { width, high, left: 0, top: 0 });
  const marks = bodyMarks(painted, bodyLooks(build, solids, null, null, new Set()), fit)
    .filter(({ role }) => role !== "body-dug")
    .map((mark): Mark => ({ ...mark, role: plainer[mark.role] ?? mark.role }));
  return {
    title,
    width,
    height: high,
    parts: [{ name: "cover", x: 0, y: (high - fit.height) / 2, width, height: fit.height, marks: inOrder(marks) }],
  };
}
