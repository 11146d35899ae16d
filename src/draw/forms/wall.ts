import type { PourElement, WallFormSpec } from "../../core/build";
import type { FormSheet } from "../../core/pour";
import { around, footMarks } from "./around";
import { against, type Body } from "./body";
import { block, depth, type Room, type Section, type Solid, stroke } from "./section";
import { backing, layer, outside_mm, outward, over_mm, type Side } from "./sides";
import { lumberSize_mm, sheathingThick_mm } from "./stuff";
import { heightTags, isFirst, roleOf, wholeTag } from "./tags";

/** How wide earth or old work behind a wall is drawn, mm. */
const backing_mm = 220;

/** A wall in its form, cut through: both faces, or one against earth or old work. */
export function wallSection(element: PourElement, form: WallFormSpec, sheet: FormSheet | null, body: Body, room: Room): Section {
  const ply = sheathingThick_mm(form.sheathing);
  const studs = ply + lumberSize_mm(form.studs.stuff).deep;
  const wale = lumberSize_mm(form.wales.stuff);
  const wales = studs + wale.deep;
  const back = form.strongbacks ? lumberSize_mm(form.strongbacks.stuff).deep : 0;
  const outer = wales + back;
  const at = [...form.wales.at_mm].sort((a, b) => a - b);
  const formed = (["left", "right"] as const).filter((side) => ["form", "free"].includes(against(element, side)));
  const backed = (["left", "right"] as const).flatMap((side) => {
    const what = against(element, side);
    return what === "earth" || what === "old work" ? [backing(body, side, what, backing_mm)] : [];
  });
  const faces = formed.flatMap((side): Solid[] => [
    layer(`sheathing ${side}`, roleOf(sheet, "sheathing", "ply"), body, side, 0, ply),
    layer(`studs ${side}`, roleOf(sheet, "studs", "timber"), body, side, ply, studs),
    ...(form.strongbacks
      ? [layer(`strongback ${side}`, roleOf(sheet, "strongbacks", "timber"), body, side, wales, outer, over_mm + 120)]
      : []),
    ...at.flatMap((y, index) =>
      waleEnds(
        body,
        side,
        y,
        studs,
        wales,
        wale.wide * form.wales.stuff.pieces,
        roleOf(sheet, "wales", "timber", index),
        `wale ${side} ${index}`,
      ),
    ),
    ...footMarks(form, sheet, body, side, { sheathing: ply, uprights: studs }, (at[0] ?? body.high_mm / 4) + wale.wide),
  ]);
  // Where one face alone is formed it stands on the left, with its brace: the lines to its wales run through the concrete.
  const waleEnd = (y: number) => (formed.includes("right") ? outside_mm(body, "right", y, outer) : outside_mm(body, "left", y, studs));
  const half = body.wide_mm / 2 + Math.max(outer, backed.length > 0 ? backing_mm : 0) + 40;
  const named = (["sheathing", "studs", "strongbacks"] as const).filter((part) => isFirst(sheet, part));
  return around({
    element,
    form,
    sheet,
    body,
    solids: [...backed, ...faces, ...ties(body, form, sheet, at, formed, wales), ...overTop(body, form, sheet, formed, outer)],
    tags: [
      ...heightTags(sheet, "wales", ["ties"], at, (y) => [waleEnd(y), y, 4, 0]),
      ...named.flatMap((part) =>
        wholeTag(sheet, part, [
          formed.includes("right") ? outside_mm(body, "right", between(at), studs) : waleEnd(between(at)),
          between(at),
          4,
          0,
        ]),
      ),
    ],
    notes: [],
    half_mm: half,
    braced_mm: form.strongbacks ? outer : studs,
    room,
  });
}

const between = (at: readonly number[]): number => (at.length > 1 ? ((at[0] as number) + (at[1] as number)) / 2 : 100);

/** Wales cut across their grain: two pieces with the tie between them, or one. */
function waleEnds(body: Body, side: Side, y: number, from: number, to: number, high: number, role: Solid["role"], id: string): Solid[] {
  const [a, b] = [outside_mm(body, side, y, from), outside_mm(body, side, y, to)];
  return [block(id, role, depth.front, Math.min(a, b), y - high / 2, Math.max(a, b), y + high / 2)];
}

/** A tie through the wall at every wale, with a nut outside each. */
function ties(
  body: Body,
  form: WallFormSpec,
  sheet: FormSheet | null,
  at: readonly number[],
  formed: readonly Side[],
  wales: number,
): Solid[] {
  if (!form.ties || formed.length === 0) return [];
  const end = (side: Side, y: number) => outside_mm(body, side, y, formed.includes(side) ? wales : -60);
  return at.flatMap((y, index): Solid[] => {
    const role = roleOf(sheet, "ties", "tie", index);
    return [
      stroke(`tie ${index}`, role, depth.across, [
        [end("left", y), y, formed.includes("left") ? -4 : 0, 0],
        [end("right", y), y, formed.includes("right") ? 4 : 0, 0],
      ]),
      ...formed.map((side) =>
        stroke(`nut ${side} ${index}`, role, depth.sign, [
          [end(side, y), y, outward(side) * 4, -4],
          [end(side, y), y, outward(side) * 4, 4],
        ]),
      ),
    ];
  });
}

/** Strongbacks tied over the top and at the foot, where no tie goes through the wall. */
function overTop(body: Body, form: WallFormSpec, sheet: FormSheet | null, formed: readonly Side[], outer: number): Solid[] {
  if (!form.strongbacks || formed.length < 2) return [];
  const role = roleOf(sheet, "strongbacks", "tie");
  const line = (id: string, y: number) =>
    stroke(id, role, depth.front, [
      [outside_mm(body, "left", Math.max(0, y), outer), y, -4, 0],
      [outside_mm(body, "right", Math.max(0, y), outer), y, 4, 0],
    ]);
  return [line("tie over the top", body.high_mm + over_mm + 70), line("tie at the foot", 40)];
}
