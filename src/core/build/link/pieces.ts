import { asId, type EquipmentId, type StockId } from "../../base";
import type { Piece, StockUse } from "../model";
import { linkMaybe } from "./amounts";
import type { Context } from "./context";
import type { Written } from "./groups";
import type { Speaker } from "./names";
import { linkReaches, linkWays } from "./places";

/** A stock or an equipment alike. */
export function linkHeld(of: string, context: Context, speaker: Speaker, key: string, part: string): (StockId & EquipmentId) | null {
  if (context.names.entry("stock", of) || context.names.entry("equipment", of)) return asId(of);
  const known = [...context.names.sort("stock").keys(), ...context.names.sort("equipment").keys()];
  context.names.unknown("stock", of, known, speaker, key, part);
  return null;
}

export function linkPiece(written: Written<"pieces">, context: Context): Piece {
  const { draft, id } = written;
  const speaker = { list: "pieces", id: draft.id, copy: written.copy };
  const uses = draft.uses.flatMap((use, i): StockUse[] => {
    const of = linkHeld(use.of, context, speaker, "uses", String(i + 1));
    return of === null ? [] : [{ of, number: use.number, loss: use.loss }];
  });
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
    id: asId(id),
    ...draft.fixed,
    goesAfter: linkMaybe(draft.goesAfter, context, speaker, "goesAfter"),
    closes: linkWays(draft.closes, context, speaker, "closes"),
    fills: context.names.list("place", draft.fills, speaker, "fills"),
    makes: linkWays(draft.makes, context, speaker, "makes"),
    heldBy: draft.heldBy.map((set) => context.names.list("piece", set, speaker, "heldBy")),
    holdsItself: linkMaybe(draft.holdsItself, context, speaker, "holdsItself"),
    off: linkReaches(draft.off, asId(id), context, speaker, "off"),
    uses,
    group: written.membership,
    up: -1,
    down: -1,
  };
}

const none: readonly never[] = [];

/** The piece that a step makes by closing something: it has the step's name and nothing else of its own. */
export function pieceOfStep(id: string, written: Written<"steps">, context: Context): Piece {
  const { draft } = written;
  return {
    id: asId(id),
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
