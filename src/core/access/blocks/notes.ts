import type { Finding, PieceId } from "../../base";
import type { Build } from "../../build";

const none: readonly never[] = [];

/** What is worth nothing as it is written, and is said also where an order exists: holders that go by themselves, pieces said to hold themselves without an amount. */
export function notesOn(build: Build): Finding[] {
  const notes: Finding[] = [];
  for (const { id, heldBy, claimsToHoldItself } of build.pieces) {
    if (heldBy.every((set) => set.length === 0)) continue;
    const where = { list: "pieces", id, key: "heldBy" };
    const isGoer = (holder: PieceId): boolean => (build.pieces[build.at.piece.get(holder) ?? -1]?.goesAfter ?? null) !== null;
    const goers = heldBy.some((set) => set.some(isGoer)) ? heldBy.flat().filter(isGoer) : none;
    for (const holder of new Set(goers))
      notes.push({ code: "access.holds-nothing", severity: "look", where, detail: { piece: id, holder } });
    if (claimsToHoldItself)
      notes.push({ code: "access.holds-itself", severity: "look", where: { ...where, key: "holdsItself" }, detail: { piece: id } });
  }
  return notes;
}
