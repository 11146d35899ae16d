import type { PassageKind } from "../model";
import type { Member } from "../schema/document";
import type { AimDraft, PlaceDraft, ReachDraft, WayDraft } from "./drafts";
import type { Notes } from "./notes";
import { inside, length_mm, mass_kg, type Quantity, type Spot, spot } from "./quantities";

type RawAim = { place: string; need?: PassageKind; depth?: Quantity; piece?: string };
type RawReach = RawAim | { any: RawAim[] };

const none: readonly never[] = [];

export function readAim(at: Spot, raw: RawAim): AimDraft {
  const depth_mm = raw.depth === undefined ? 0 : length_mm(inside(at, "depth"), "depth", raw.depth);
  return { place: raw.place, kind: raw.need ?? (raw.piece === undefined ? "person" : "unit"), depth_mm, piece: raw.piece ?? null };
}

export function readReaches(notes: Notes, key: string, raws: readonly RawReach[] | undefined): readonly ReachDraft[] {
  if (raws === undefined) return none;
  return raws.map((raw, i) => {
    const at = spot(notes, key, String(i + 1));
    if (!("any" in raw)) return { any: [readAim(at, raw)], several: false };
    if (raw.any.length === 0) notes.say("build.empty", key, { part: `${i + 1}.any` });
    return { any: raw.any.map((aim, j) => readAim(inside(inside(at, "any"), j + 1), aim)), several: raw.any.length > 1 };
  });
}

type RawWay = NonNullable<Member<"places">["ways"]>[number];

function readWay(at: Spot, raw: RawWay): WayDraft {
  const { opening, through } = raw;
  const measure = (part: string, limit: "depth" | "opening", quantity: Quantity | undefined): number | null =>
    quantity === undefined ? null : length_mm(inside(at, part), limit, quantity);
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    passes: raw.passes ?? ["person"],
    depth_mm: measure("depth", "depth", raw.depth),
    opening_mm: opening
      ? { wide: measure("opening.wide", "opening", opening.wide) ?? 0, high: measure("opening.high", "opening", opening.high) ?? 0 }
      : null,
    longest_mm: measure("longest", "opening", raw.longest),
    bears_kg: raw.bears === undefined ? null : mass_kg(inside(at, "bears"), raw.bears),
    through:
      through === undefined
        ? null
        : typeof through === "string"
          ? { place: through, kind: "person", depth_mm: 0, piece: null }
          : readAim(inside(at, "through"), through),
  };
}

function readWays(notes: Notes, raws: readonly RawWay[]): WayDraft[] {
  const first = new Map<string, number>();
  return raws.map((raw, i) => {
    const before = first.get(raw.id);
    if (before === undefined) first.set(raw.id, i);
    else notes.say("build.id-twice", "ways", { first: before + 1, second: i + 1 });
    return readWay(spot(notes, "ways", String(i + 1)), raw);
  });
}

export function readPlace(raw: Member<"places">, notes: Notes): PlaceDraft {
  const { elevation } = raw;
  const at = spot(notes, "elevation");
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    ways: readWays(notes, raw.ways ?? []),
    room: raw.room ?? null,
    below: raw.below ?? none,
    side: raw.side ?? null,
    level: raw.level ?? 0,
    layerOf: raw.layerOf ?? null,
    elevation_mm: elevation
      ? {
          x: length_mm(inside(at, "x"), "coordinate", elevation.x),
          y: length_mm(inside(at, "y"), "coordinate", elevation.y),
          wide: length_mm(inside(at, "wide"), "opening", elevation.wide),
          high: length_mm(inside(at, "high"), "opening", elevation.high),
          shape: elevation.shape ?? "box",
        }
      : null,
  };
}
