import type { Case, Fault } from "./fault";
import { goneFrom, putFrom, servesUntil, since, stoodFrom } from "./reach";

/** At every instant at which a piece begins to go up or to come down, everything that must be held is. */
export function checkHolding(c: Case): Fault[] {
  const { build } = c;
  const out: Fault[] = [];
  const instants = [
    ...new Set(
      build.pieces
        .flatMap((p) => [p.up, p.down])
        .filter((s) => s >= 0)
        .map((s) => c.start[s]!),
    ),
  ];
  build.pieces.forEach((piece, q) => {
    if (piece.heldBy.length === 0) return;
    const from = piece.fromStart ? firstTaken(c, q) : putFrom(c, q);
    const until = Math.min(goneFrom(c, q), servesUntil(c, q));
    for (const t of instants) if (from <= t && t < until && !heldAt(c, q, t)) out.push({ rule: "held", piece: piece.id, at: t });
  });
  return out;
}

function heldAt(c: Case, q: number, t: number): boolean {
  const piece = c.build.pieces[q]!;
  if (piece.holdsItself !== null && since(c, q, piece.holdsItself) <= t) return true;
  return piece.heldBy.some((set) =>
    set.every((id) => {
      const r = c.build.at.piece.get(id)!;
      const holder = c.build.pieces[r]!;
      // Put up by the very step that puts this one up, or that takes another holder of it away: one act.
      const together = holder.up >= 0 && (holder.up === piece.up || (handsOver(c, q, holder.up) && c.start[holder.up]! <= t));
      const there = stoodFrom(c, r) <= t || together;
      return holder.goesAfter === null && there && t < servesUntil(c, r);
    }),
  );
}

function handsOver(c: Case, q: number, step: number): boolean {
  return c.build.pieces[q]!.heldBy.some((set) => set.some((id) => c.build.pieces[c.build.at.piece.get(id)!]!.down === step));
}

/** What stands from the start is held by the ground until one of its holders is taken away. */
function firstTaken(c: Case, q: number): number {
  const holders = c.build.pieces[q]!.heldBy.flat().map((id) => c.build.pieces[c.build.at.piece.get(id)!]!.down);
  return Math.min(...holders.filter((s) => s >= 0).map((s) => c.start[s]!), Number.POSITIVE_INFINITY);
}
