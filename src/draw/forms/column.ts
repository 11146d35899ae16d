import type { ColumnFormSpec, PourElement } from "../../core/build";
import type { FormSheet } from "../../core/pour";
import { around, footMarks } from "./around";
import type { Body } from "./body";
import { type At, block, depth, type Room, type Section, type Solid, solid } from "./section";
import { layer, type Side } from "./sides";
import { lumberSize_mm, sheathingThick_mm } from "./stuff";
import { firstOf, heightTags, isFirst, memberOf, roleOf, wholeTag } from "./tags";

/** How far a band stands out beyond the form, for its bolts. */
const beyond_mm = 65;
const sides: readonly Side[] = ["left", "right"];

/** A bolt at the corner of a band, as its head. */
function bolt(id: string, x: number, y: number, loud: boolean): Solid {
  const r = 3.5;
  const ring: At[] = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => [x, y, r * Math.cos((k * Math.PI) / 4), r * Math.sin((k * Math.PI) / 4)]);
  return solid(id, loud ? "sign-warn" : "sign", depth.sign, ring);
}

/** A column in its form: concrete and panels cut through, bands in front of them. */
export function columnSection(element: PourElement, form: ColumnFormSpec, sheet: FormSheet | null, body: Body, room: Room): Section {
  const ply = sheathingThick_mm(form.sheathing);
  const outer = ply + (form.battens ? lumberSize_mm(form.battens.stuff).deep : 0);
  const { wide } = lumberSize_mm(form.bands.stuff);
  const high = wide * form.bands.stuff.pieces;
  const half = body.wide_mm / 2 + outer + beyond_mm;
  const at = [...form.bands.at_mm].sort((a, b) => a - b);
  const firstBolt = firstOf(sheet, "corner bolts");
  const overBolts = (memberOf(sheet, "corner bolts")?.of100 ?? 0) > 100;
  const bands = at.flatMap((y, index): Solid[] => [
    block(`band ${index}`, roleOf(sheet, "bands", "timber", index), depth.front, -half, y - high / 2, half, y + high / 2),
    ...[-1, 1].map((out) =>
      bolt(`bolt ${index} ${out}`, out * (half - beyond_mm / 2), y, overBolts && (firstBolt === index || firstBolt === -1)),
    ),
  ]);
  const panels = sides.flatMap((side): Solid[] => [
    layer(`sheathing ${side}`, roleOf(sheet, "sheathing", "ply"), body, side, 0, ply),
    ...(form.battens ? [layer(`battens ${side}`, roleOf(sheet, "battens", "timber"), body, side, ply, outer)] : []),
    ...footMarks(form, sheet, body, side, { sheathing: ply, uprights: outer }, (at[0] ?? body.high_mm / 4) + high / 2),
  ]);
  const loose = (["sheathing", "battens"] as const).filter((part) => isFirst(sheet, part));
  return around({
    element,
    form,
    sheet,
    body,
    solids: [...panels, ...bands],
    tags: [
      ...heightTags(sheet, "bands", ["corner bolts"], at, (y) => [half, y, 3, 0]),
      ...loose.flatMap((part) => wholeTag(sheet, part, [body.wide_mm / 2 + outer, lowestGap(at), 3, 0])),
    ],
    notes: [],
    half_mm: half,
    braced_mm: outer,
    room,
  });
}

/** Middle of the lowest stretch between two bands: where the panels are pressed hardest. */
const lowestGap = (at: readonly number[]): number => (at.length > 1 ? ((at[0] as number) + (at[1] as number)) / 2 : 100);
