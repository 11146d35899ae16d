import type { Finding } from "../../base";
import type { Build } from "../../build";

const none: readonly never[] = [];

/** What is worth nothing as it is written, and is said also where an order exists: holders that go by themselves, pieces said to hold themselves without an amount. */
export function notesOn(build: Build): Finding[] {
  return build.pieces.flatMap((piece): readonly Finding[] => {
    if (piece.heldBy.length === 0) return none;
    const holders = new Set(piece.heldBy.flat());
    if (holders.size === 0) return none;
    const isGoer = (id: string): boolean => (build.pieces[build.at.piece.get(id as never) ?? -1]?.goesAfter ?? null) !== null;
    const where = { list: "pieces", id: piece.id, key: "heldBy" };
    const goes = [...holders]
      .filter(isGoer)
      .map((holder): Finding => ({ code: "access.holds-nothing", severity: "look", where, detail: { piece: piece.id, holder } }));
    if (!piece.claimsToHoldItself) return goes;
    return [
      ...goes,
      { code: "access.holds-itself", severity: "look", where: { ...where, key: "holdsItself" }, detail: { piece: piece.id } },
    ];
  });
}
