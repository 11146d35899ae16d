import type { Brace } from "../../core/build";
import { type At, block, depth, type Solid, solid, stroke } from "./section";
import { cut } from "./sides";
import { lumberSize_mm } from "./stuff";

/** How far out a landing reaches, mm. */
const landing_mm = 200;

/** A brace that would be drawn steeper than this is only begun: share of its rise. */
const steepest = 0.3;

export interface BracePlace {
  readonly run_mm: number;
  /** Drawn shorter than it stands, with a cut through it. */
  readonly shortened: boolean;
  /** No room: only its head is drawn. */
  readonly begun: boolean;
}

/** How wide a brace is drawn: as it stands, shorter with a cut through it, or only its head. */
export function bracePlace(brace: Brace, room_mm: number, roomy: boolean): BracePlace {
  const whole = brace.run_mm;
  const left = room_mm - landing_mm;
  if (whole <= left) return { run_mm: whole, shortened: false, begun: false };
  const least = brace.rise_mm * steepest;
  return { run_mm: Math.max(left, Math.min(least, whole)), shortened: true, begun: left < least && !roomy };
}

/** The brace on the left side of a form, with what it lands on. `x_mm`: where it meets the form. */
export function braceMarks(brace: Brace, x_mm: number, place: BracePlace, role: Solid["role"]): { solids: Solid[]; left_mm: number } {
  const foot = x_mm - place.run_mm;
  const half = lumberSize_mm(brace.stuff).wide / 2;
  const long = Math.hypot(place.run_mm, brace.rise_mm);
  // Cut square to the ground at its foot and along the form at its head.
  const [nx, ny] = [(half * long) / brace.rise_mm, Math.min((half * long) / place.run_mm, brace.rise_mm * 0.15)];
  const shown = place.begun ? 0.3 : 1;
  const [endX, endY] = [x_mm - place.run_mm * shown, brace.rise_mm * (1 - shown)];
  const across: At[] = [
    [x_mm, brace.rise_mm + ny],
    [x_mm, brace.rise_mm - ny],
    [endX + nx, endY],
    [endX - nx, endY],
  ];
  const end = cut("brace cut", endX, endY - half * 1.5, endY + half * 1.5);
  if (place.begun) return { solids: [solid("brace", role, depth.side, across), ...end], left_mm: endX - nx - 60 };
  const [middleX, middleY] = [(x_mm + foot) / 2, brace.rise_mm / 2];
  return {
    solids: [
      solid("brace", role, depth.side, across),
      ...landing(brace.lands, foot),
      ...(place.shortened ? cut("brace cut", middleX, middleY - half * 2.5, middleY + half * 2.5) : []),
    ],
    left_mm: foot - landing_mm,
  };
}

function landing(lands: Brace["lands"], foot: number): Solid[] {
  switch (lands) {
    case "stake":
      return [
        solid("brace stake", "timber", depth.sign, [
          [foot, 0, -4, -12],
          [foot, 0, 4, -12],
          [foot, 0, 4, 14],
          [foot, 0, 0, 22],
          [foot, 0, -4, 14],
        ]),
      ];
    case "deadman":
      return [block("brace deadman", "outline-concrete", depth.sign, foot - 120, -180, foot + 40, 0)];
    case "old work":
      return [block("brace old work", "outline-closed", depth.side, foot - landing_mm, 0, foot, 260)];
    case "footing":
    case "slab":
      return [block("brace footing", "outline-concrete", depth.side, foot - landing_mm * 0.9, -90, foot + 120, 0)];
    default:
      return [
        stroke("brace unknown", "lift", depth.sign, [
          [foot, 0, -7, -7],
          [foot, 0, 7, 7],
        ]),
        stroke("brace unknown too", "lift", depth.sign, [
          [foot, 0, -7, 7],
          [foot, 0, 7, -7],
        ]),
      ];
  }
}
