import type { EdgeFormSpec, PourElement } from "../../core/build";
import type { FormSheet } from "../../core/pour";
import { footMarks } from "./around";
import { against, type Body } from "./body";
import { type At, depth, type Room, type Section, type Solid, solid } from "./section";
import { backing, concrete, cut, ground, layer, outside_mm, outward, type Side } from "./sides";
import { lumberSize_mm } from "./stuff";
import { memberOf, roleOf, wholeTag } from "./tags";

/** How much smaller a wide one is drawn before it is cut. */
const smaller = 1.6;
const sides: readonly Side[] = ["left", "right"];

/** Footings and slabs between boards on stakes; without a form, between earth. A wide one is cut in its middle. */
export function edgeSection(element: PourElement, form: EdgeFormSpec | null, sheet: FormSheet | null, whole: Body, room: Room): Section {
  const board = form ? lumberSize_mm({ ...form.boards, flat: false }) : null;
  const thick = board?.wide ?? 0;
  const stake_mm = 40;
  const margin = thick + stake_mm + 130;
  const high = whole.high_mm;
  const most = Math.max(high * 1.6, room.wide_mm(high * 1.9) * smaller - 2 * margin);
  const shortened = whole.wide_mm > most;
  const wide = shortened ? most : whole.wide_mm;
  const body: Body = { high_mm: high, wide_mm: wide, left_mm: () => -wide / 2, right_mm: () => wide / 2 };
  const formed = sides.filter((side) => form !== null && against(element, side) === "form");
  const earthed = sides.flatMap((side) =>
    formed.includes(side) || against(element, side) === "free"
      ? []
      : [backing(body, side, against(element, side) === "old work" ? "old work" : "earth", margin)],
  );
  const boards = formed.flatMap((side): Solid[] => [
    layer(`board ${side}`, roleOf(sheet, "boards", "timber"), body, side, 0, thick, 0),
    stake(body, side, thick, stake_mm, roleOf(sheet, "stakes", "timber")),
    ...footMarks(
      { footSealed: false, holdDown: form?.holdDown ?? null },
      sheet,
      body,
      side,
      { sheathing: thick, uprights: thick },
      high / 2,
    ),
  ]);
  const reach = wide / 2 + margin;
  const right = wide / 2 + thick + stake_mm;
  return {
    solids: [
      ...earthed,
      concrete(body),
      ...ground(-reach, reach),
      ...boards,
      ...(shortened ? cut("middle cut", 0, -high * 0.06, high * 1.04) : []),
    ],
    tags: [
      ...wholeTag(sheet, "boards", [wide / 2 + thick, high * 0.35, 3, 0]),
      ...(memberOf(sheet, "stakes") ? wholeTag(sheet, "stakes", [right, high * 0.8, 3, 0]) : []),
    ],
    notes: [],
    left_mm: -reach,
    right_mm: reach,
    bottom_mm: form ? -high * 0.5 : -high * 0.1,
    top_mm: form ? high * 1.35 : high * 1.1,
    foot_mm: 0,
  };
}

function stake(body: Body, side: Side, from: number, wide: number, role: Solid["role"]): Solid {
  const out = outward(side);
  const inner = outside_mm(body, side, 0, from);
  const high = body.high_mm;
  const at: At[] = [
    [inner, high * 1.15],
    [inner + out * wide, high * 1.15],
    [inner + out * wide, -high * 0.3],
    [inner + (out * wide) / 2, -high * 0.48],
    [inner, -high * 0.3],
  ];
  return solid(`stake ${side}`, role, depth.upright, at);
}
