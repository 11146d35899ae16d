import type { ColumnFormSpec, HoldDown, PourElement, WallFormSpec } from "../../core/build";
import type { FormSheet } from "../../core/pour";
import type { Body } from "./body";
import { braceMarks, bracePlace } from "./brace";
import type { Room, Section, Solid } from "./section";
import { concrete, ground, holdDown, outside_mm, over_mm, type Side, seal, upArrow } from "./sides";
import { isFirst, roleOf } from "./tags";

/** One side of a form as far as both kinds share it: how thick it stands outside the concrete at each layer, mm. */
export interface Depths {
  readonly sheathing: number;
  readonly uprights: number;
}

/** What a form around an element needs on every side: seal, hold-down, and an arrow where nothing holds it down. */
export function footMarks(
  form: { readonly footSealed: boolean; readonly holdDown: HoldDown | null },
  sheet: FormSheet | null,
  body: Body,
  side: Side,
  depths: Depths,
  tied_mm: number,
): Solid[] {
  const outer = outside_mm(body, side, 0, depths.uprights);
  const loose = sheet !== null && sheet.lift.needed > sheet.lift.held;
  return [
    ...(form.footSealed ? [seal(`seal ${side}`, outer, side)] : []),
    ...(form.holdDown ? holdDown(`hold-down ${side}`, outer + (side === "left" ? -30 : 30), tied_mm) : []),
    ...(loose ? upArrow(`lift ${side}`, outside_mm(body, side, body.high_mm, depths.uprights / 2), body.high_mm + over_mm) : []),
  ];
}

interface Around {
  readonly element: PourElement;
  readonly form: ColumnFormSpec | WallFormSpec;
  readonly sheet: FormSheet | null;
  readonly body: Body;
  readonly solids: readonly Solid[];
  readonly tags: Section["tags"];
  readonly notes: Section["notes"];
  /** The widest the form itself is, mm from its middle to each side, fasteners included. */
  readonly half_mm: number;
  /** How far outside the concrete a brace meets it, mm. */
  readonly braced_mm: number;
  readonly room: Room;
}

/** The form with what it stands on and its brace, on the left where nothing is written. */
export function around({ form, sheet, body, solids, tags, notes, half_mm, braced_mm, room }: Around): Section {
  const bottom = -60;
  const top = body.high_mm + over_mm + (sheet !== null && sheet.lift.needed > sheet.lift.held ? body.high_mm * 0.06 : 0);
  const brace = form.brace;
  const free = Math.max(0, room.wide_mm(top - bottom) - 2 * half_mm);
  const met_mm = outside_mm(body, "left", Math.min(brace?.rise_mm ?? 0, body.high_mm), braced_mm);
  const braced = brace ? braceMarks(brace, met_mm, bracePlace(brace, free + half_mm + met_mm, room.roomy), braceRole(sheet)) : null;
  const left_mm = Math.min(-half_mm - 30, braced?.left_mm ?? 0);
  const right_mm = half_mm + 30;
  return {
    solids: [concrete(body), ...ground(left_mm, right_mm), ...(braced?.solids ?? []), ...solids],
    tags,
    notes,
    left_mm,
    right_mm,
    bottom_mm: bottom,
    top_mm: top,
    foot_mm: 0,
  };
}

const braceRole = (sheet: FormSheet | null): Solid["role"] =>
  isFirst(sheet, "brace feet") ? roleOf(sheet, "brace feet", "timber") : roleOf(sheet, "braces", "timber");
