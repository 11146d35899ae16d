import type { Piece, StockUse } from "../model";
import { linkMaybe } from "./amounts";
import type { Context } from "./context";
import type { Written } from "./groups";
import type { Speaker } from "./names";
import { linkReaches, linkWays } from "./places";

/** Until the steps that put it up and take it down are known. */
export type LoosePiece = { -readonly [K in keyof Piece]: Piece[K] };

/** A stock or a number of equipment alike. */
export function linkHeld(of: string, context: Context, speaker: Speaker, key: string, part: string): string | null {
  if (context.names.entry("stock", of) || context.names.entry("equipment", of)) return of;
  const known = [...context.names.sort("stock").keys(), ...context.names.sort("equipment").keys()];
  context.names.unknown("stock", of, known, speaker, key, part);
  return null;
}

export function linkPiece(written: Written<"pieces">, context: Context): LoosePiece {
  const { draft, id } = written;
  const speaker = { list: "pieces", id: draft.id, copy: written.copy };
  const uses = draft.uses.filter((use, i) => linkHeld(use.of, context, speaker, "uses", String(i + 1)) !== null);
  for (const use of uses) {
    if (use.loss > use.number) {
      context.names.say(
        "build.range",
        { list: "pieces", id: draft.id, key: "uses" },
        { part: "loss", value: String(use.loss), least: 0, most: use.number, unit: "" },
      );
    }
  }
  return {
    id: id as never,
    ...draft.fixed,
    goesAfter: linkMaybe(draft.goesAfter, context, speaker, "goesAfter"),
    closes: linkWays(draft.closes, context, speaker, "closes"),
    fills: context.names.list("place", draft.fills, speaker, "fills") as never,
    makes: linkWays(draft.makes, context, speaker, "makes"),
    heldBy: draft.heldBy.map((set) => context.names.list("piece", set, speaker, "heldBy")) as never,
    holdsItself: linkMaybe(draft.holdsItself, context, speaker, "holdsItself"),
    off: linkReaches(draft.off, id, context, speaker, "off"),
    uses: uses as unknown as readonly StockUse[],
    group: written.membership,
    up: -1,
    down: -1,
  };
}

const none: readonly never[] = [];

/** The piece that a step makes by closing something: it has the step's name and nothing else of its own. */
export function pieceOfStep(id: string, written: Written<"steps">, context: Context): LoosePiece {
  const { draft } = written;
  return {
    id: id as never,
    name: draft.own.name,
    fromStart: false,
    goesAfter: null,
    closes: linkWays(draft.closes, context, { list: "steps", id: draft.id, copy: written.copy }, "closes"),
    fills: none,
    makes: none,
    heldBy: none,
    holdsItself: null,
    claimsToHoldItself: false,
    off: none,
    uses: none,
    size_mm: null,
    mass_kg: null,
    sort: "other",
    from: null,
    group: written.membership,
    up: -1,
    down: -1,
  };
}
