import type { Finding } from "../../base";
import type { Build } from "../../build";

const none: readonly Finding[] = [];

/** What is worth nothing as it is written, and is said also where an order exists: holders that go by themselves, pieces said to hold themselves without an amount. */
export function notesOn(build: Build): Finding[] {
  return build.pieces.flatMap((piece): readonly Finding[] => {
    if (piece.heldBy.length === 0) return none;
    const isGoer = (id: string): boolean => (build.pieces[build.at.piece.get(id as never) ?? -1]?.goesAfter ?? null) !== null;
    const lone = piece.claimsToHoldItself && piece.holdsItself === null;
    if (!lone && !piece.heldBy.some((set) => set.some(isGoer))) return none;
    const where = { list: "pieces", id: piece.id, key: "heldBy" };
    const goers = [...new Set(piece.heldBy.flat())].filter(isGoer);
    const goes = goers.map(
      (holder): Finding => ({ code: "access.holds-nothing", severity: "look", where, detail: { piece: piece.id, holder } }),
    );
    if (!lone) return goes;
    return [
      ...goes,
      { code: "access.holds-itself", severity: "look", where: { ...where, key: "holdsItself" }, detail: { piece: piece.id } },
    ];
  });
}
