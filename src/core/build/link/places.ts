import { asId, type PieceId } from "../../base";
import type { Passage, Place, Reach, Way, WayRef } from "../model";
import type { AimDraft, PieceDraft, ReachDraft, WayDraft } from "../read/drafts";
import type { Written } from "./groups";
import type { Names, Speaker } from "./names";

/** What reaching needs to know: the ways of each place and the size of each piece, by the id they are read as. */
export interface ReachContext {
  readonly names: Names;
  readonly waysOf: ReadonlyMap<string, readonly WayDraft[]>;
  readonly pieces: ReadonlyMap<string, PieceDraft>;
}

const none: readonly never[] = [];
const anyUnit: Passage = { kind: "unit", long_mm: 0, wide_mm: 0, thick_mm: 0, mass_kg: 0, piece: null };

function unit(piece: PieceId, context: ReachContext, speaker: Speaker, key: string, part: string): Passage {
  const { size_mm, mass_kg } = context.pieces.get(piece)?.fixed ?? { size_mm: null, mass_kg: null };
  if (!size_mm) {
    context.names.say("build.no-size", { list: speaker.list, id: speaker.id, key }, { part, piece });
    return anyUnit;
  }
  return {
    kind: "unit",
    long_mm: size_mm.long,
    wide_mm: size_mm.wide,
    thick_mm: size_mm.thick,
    mass_kg: mass_kg ?? 0,
    piece,
  };
}

/** What must pass. A unit that names no piece is `carried`: the one piece that is being put up or taken down. */
function passage(aim: AimDraft, carried: PieceId | null, context: ReachContext, speaker: Speaker, key: string, part: string): Passage {
  if (aim.kind === "hand" || aim.kind === "arm") return { kind: aim.kind, depth_mm: aim.depth_mm };
  if (aim.kind !== "unit") return { kind: aim.kind };
  const piece = aim.piece === null ? carried : context.names.one("piece", aim.piece, speaker, key, part);
  if (piece !== null) return unit(piece, context, speaker, key, part);
  if (aim.piece === null)
    context.names.say("build.missing", { list: speaker.list, id: speaker.id, key }, { part: part === "" ? "piece" : `${part}.piece` });
  return anyUnit;
}

/** Reaches as the other rooms read them; a reach of a whole group of places from outside it is one reach for each. */
export function linkReaches(
  drafts: readonly ReachDraft[],
  carried: PieceId | null,
  context: ReachContext,
  speaker: Speaker,
  key: string,
): readonly Reach[] {
  if (drafts.length === 0) return none;
  const reaches: Reach[] = [];
  drafts.forEach((draft, i) => {
    const part = drafts.length > 1 ? String(i + 1) : "";
    const any: Reach["any"][number][] = [];
    for (const aim of draft.any) {
      const need = passage(aim, carried, context, speaker, key, part);
      if (draft.several) {
        const place = context.names.one("place", aim.place, speaker, key, part);
        if (place !== null) any.push({ place, need });
      } else for (const place of context.names.many("place", aim.place, speaker, key, part)) reaches.push({ any: [{ place, need }] });
    }
    if (draft.several) reaches.push({ any });
  });
  return reaches;
}

/** `place.way`, or `place` for all its ways. */
export function linkWays(refs: readonly string[], context: ReachContext, speaker: Speaker, key: string): readonly WayRef[] {
  if (refs.length === 0) return none;
  const linked: WayRef[] = [];
  refs.forEach((ref, i) => {
    const part = refs.length > 1 ? String(i + 1) : "";
    const dot = ref.indexOf(".");
    const place = dot < 0 ? ref : ref.slice(0, dot);
    const way = dot < 0 ? null : ref.slice(dot + 1);
    for (const id of context.names.many("place", place, speaker, key, part)) {
      const ways = context.waysOf.get(id) ?? none;
      const meant = way === null ? ways : ways.filter((one) => one.id === way);
      if (!context.names.spend(meant.length)) return;
      for (const one of meant) linked.push({ place: id, way: one.id });
      if (way === null || meant.length > 0) continue;
      const known = ways.map((one) => `${place}.${one.id}`);
      context.names.unknown("way", ref, known, speaker, key, part);
    }
  });
  return linked;
}

function linkWay(draft: WayDraft, place: string, at: number, context: ReachContext, speaker: Speaker): Way {
  const through = draft.through && context.names.one("place", draft.through.place, speaker, "ways", `${at + 1}.through`);
  const need = (aim: AimDraft): Passage =>
    aim.kind === "unit" && aim.piece === null ? anyUnit : passage(aim, null, context, speaker, "ways", `${at + 1}.through`);
  return {
    id: draft.id,
    full: `${place}.${draft.id}`,
    name: draft.name,
    passes: draft.passes,
    depth_mm: draft.depth_mm,
    opening_mm: draft.opening_mm,
    longest_mm: draft.longest_mm,
    bears_kg: draft.bears_kg,
    through: draft.through && through !== null ? { place: through, need: need(draft.through) } : null,
  };
}

export function linkPlace(written: Written<"places">, context: ReachContext): Place {
  const { draft, id } = written;
  const speaker = { list: "places", id: draft.id, copy: written.copy };
  return {
    id: asId(id),
    name: draft.name,
    ways: draft.ways.map((way, i) => linkWay(way, id, i, context, speaker)),
    room: draft.room,
    below: context.names.list("place", draft.below, speaker, "below"),
    side: draft.side,
    level: draft.level,
    layerOf: draft.layerOf === null ? null : context.names.one("place", draft.layerOf, speaker, "layerOf"),
    elevation_mm: draft.elevation_mm,
    group: written.membership,
  };
}
