import type { DeckFormSpec, ElementShape } from "../../core/build";
import type { FormSheet, MemberPart } from "../../core/pour";
import { below, every, heightAt, type Line } from "./along";
import { type Cast, castOf } from "./cast";
import { type At, block, depth, type Room, type Section, type Solid, solid, type Tag } from "./section";
import { cut, ground } from "./sides";
import { lumberSize_mm, sheathingThick_mm } from "./stuff";
import { roleOf, wholeTag } from "./tags";

const sill_mm = 45;
const margin_mm = 150;

const raised = (line: Line, by: number): Line => line.map(([x, y]) => [x, y + by] as const);
const ring = (upper: Line, lower: Line): At[] => [...upper, ...[...lower].reverse()].map(([x, y]) => [x, y] as const);

/** What carries a deck, a barrel or a stair, cut through: sheathing, joists across their grain, a stringer, shores on mudsills. */
export function deckSection(shape: ElementShape, form: DeckFormSpec | null, sheet: FormSheet | null, room: Room): Section | null {
  if (form === null) return bare(shape, room);
  const ply = sheathingThick_mm(form.sheathing);
  const joist = lumberSize_mm(form.joists.stuff);
  const stringer = lumberSize_mm(form.stringers.stuff);
  const stack = ply + joist.deep + stringer.deep;
  const crown = sill_mm + form.shores.high_mm + stack;
  const spacing = Math.max(form.shores.spacing_mm, 1);
  const most = Math.max(spacing * 1.5, room.wide_mm(crown + 300) - 2 * margin_mm);
  const cast = castOf(shape, most);
  if (cast === null) return null;
  const lift = Math.max(crown - Math.max(...cast.under.map(([, y]) => y)), sill_mm + stack + 60);
  const under = raised(cast.under, lift);
  const [l1, l2, l3] = [below(under, ply), below(under, ply + joist.deep), below(under, stack)];
  const shores = shoreMarks(form, sheet, l3, cast.wide_mm, spacing);
  return {
    solids: [
      ...ground(-margin_mm, cast.wide_mm + margin_mm),
      concreteOf(cast, lift),
      ...edgeBoards(cast, lift, ply),
      solid("sheathing", roleOf(sheet, "sheathing", "ply"), depth.upright, ring(under, l1)),
      ...every(l1, form.joists.spacing_mm, Math.min(joist.wide, form.joists.spacing_mm / 2)).map((at, index) =>
        endGrain(`joist ${index}`, roleOf(sheet, "joists", "timber"), at, joist.wide, joist.deep),
      ),
      solid("stringer", roleOf(sheet, "stringers", "timber"), depth.upright, ring(l2, l3)),
      ...shores,
      ...(cast.long ? cut("right cut", cast.wide_mm, lift - stack - 60, lift + cast.high_mm + 60) : []),
    ],
    tags: deckTags(sheet, form, cast, lift, [l1, l2, l3]),
    notes: [],
    left_mm: -margin_mm,
    right_mm: cast.wide_mm + margin_mm,
    bottom_mm: -30,
    top_mm: lift + cast.high_mm + 40,
    foot_mm: lift + Math.min(...cast.under.map(([, y]) => y)),
  };
}

/** Concrete alone, where no form is written. */
function bare(shape: ElementShape, room: Room): Section | null {
  const cast = castOf(shape, room.wide_mm(1500));
  if (cast === null) return null;
  const lift = -Math.min(...cast.under.map(([, y]) => y));
  return {
    solids: [concreteOf(cast, lift), ...(cast.long ? cut("right cut", cast.wide_mm, -40, cast.high_mm + 40) : [])],
    tags: [],
    notes: [],
    left_mm: -margin_mm,
    right_mm: cast.wide_mm + margin_mm,
    bottom_mm: -30,
    top_mm: lift + cast.high_mm + 40,
    foot_mm: 0,
  };
}

const concreteOf = (cast: Cast, lift: number): Solid =>
  solid("concrete", "outline-concrete", depth.concrete, [...raised(cast.under, lift), ...raised(cast.over, lift)] as At[]);

function edgeBoards(cast: Cast, lift: number, ply: number): Solid[] {
  const left = block(
    "edge left",
    "ply",
    depth.side,
    -ply,
    lift + (cast.under[0]?.[1] ?? 0),
    0,
    lift + (cast.over[cast.over.length - 1]?.[1] ?? 0),
  );
  const right = block(
    "edge right",
    "ply",
    depth.side,
    cast.wide_mm,
    lift + (cast.under[cast.under.length - 1]?.[1] ?? 0),
    cast.wide_mm + ply,
    lift + (cast.over[0]?.[1] ?? 0),
  );
  return cast.long ? [left] : [left, right];
}

/** A member cut across its grain, hanging square below the line. */
function endGrain(
  id: string,
  role: Solid["role"],
  at: { x: number; y: number; dx: number; dy: number },
  wide: number,
  deep: number,
): Solid {
  const corner = (along: number, down: number): At => [at.x + at.dx * along + at.dy * down, at.y + at.dy * along - at.dx * down];
  return solid(id, role, depth.across, [corner(-wide / 2, 0), corner(wide / 2, 0), corner(wide / 2, deep), corner(-wide / 2, deep)]);
}

/** Middles of the shores that are shown, as far apart as they are, and half the width of one. */
function shorePlaces({ shores }: DeckFormSpec, wide_mm: number, spacing: number): { half: number; xs: number[] } {
  const half = (lumberSize_mm(shores.stuff).wide * shores.stuff.pieces) / 2;
  const count = Math.max(1, Math.floor((wide_mm - 2 * half) / spacing) + 1);
  const start = Math.max(half, (wide_mm - (count - 1) * spacing) / 2);
  return { half, xs: Array.from({ length: count }, (_, k) => start + k * spacing).filter((x) => x + half <= wide_mm) };
}

function shoreMarks(form: DeckFormSpec, sheet: FormSheet | null, line: Line, wide_mm: number, spacing: number): Solid[] {
  const { half, xs } = shorePlaces(form, wide_mm, spacing);
  const role = roleOf(sheet, "shores", "timber");
  const sill = (form.mudsills?.long_mm ?? 0) / 2;
  const shown = Math.min(sill, spacing * 0.42);
  const braces = form.brace
    ? xs
        .slice(1)
        .map((x, index) =>
          diagonal(`bracing ${index}`, roleOf(sheet, "braces", "timber"), xs[index] as number, x, form.shores.high_mm, half),
        )
    : [];
  const lacing =
    form.shores.unbraced_mm !== null && form.shores.unbraced_mm < form.shores.high_mm ? [laced(xs, half, form.shores.unbraced_mm)] : [];
  return [
    ...braces,
    ...lacing,
    ...xs.flatMap((x, index): Solid[] => {
      const top = heightAt(line, x);
      return [
        ...(top - sill_mm > 40 ? [block(`shore ${index}`, role, depth.side, x - half, sill_mm, x + half, top)] : []),
        ...(form.mudsills
          ? [block(`mudsill ${index}`, roleOf(sheet, "mudsills", "timber"), depth.front, x - shown, 0, x + shown, sill_mm)]
          : []),
      ];
    }),
  ];
}

function diagonal(id: string, role: Solid["role"], x0: number, x1: number, high: number, half: number): Solid {
  return solid(id, role, depth.ground, [
    [x0, sill_mm + 120],
    [x0, sill_mm + 120 + half * 2],
    [x1, high * 0.85 + half * 2],
    [x1, high * 0.85],
  ]);
}

function laced(xs: readonly number[], half: number, y: number): Solid {
  const [first = 0, last = 0] = [xs[0], xs[xs.length - 1]];
  return block("lacing", "timber", depth.upright, first - half - 60, sill_mm + y - half, last + half + 60, sill_mm + y + half);
}

function deckTags(sheet: FormSheet | null, form: DeckFormSpec, cast: Cast, lift: number, [l1, l2, l3]: readonly Line[]): Tag[] {
  const x = cast.wide_mm;
  const y = (line: Line | undefined) => heightAt(line ?? [[0, lift]], x);
  const out = (part: MemberPart, at_mm: number, at = x) => wholeTag(sheet, part, [at, at_mm, 8, 0]);
  const { half, xs } = shorePlaces(form, cast.wide_mm, Math.max(form.shores.spacing_mm, 1));
  const last = (xs[xs.length - 1] ?? x) + half;
  return [
    ...out("sheathing", y(l1)),
    ...out("joists", (y(l1) + y(l2)) / 2),
    ...out("stringers", (y(l2) + y(l3)) / 2),
    ...out("shores", sill_mm + form.shores.high_mm * 0.4, last),
    ...out("braces", sill_mm + form.shores.high_mm * 0.25),
    ...out("mudsills", sill_mm / 2),
  ];
}
