import { never, type Program } from "./program";
import { Stand } from "./stand";

/**
 * A piece with holders is held when it is put up, and still held, held by others, by itself or gone whenever a holder is taken down. Checked at every such
 * moment, so what stands on a stack stands as long as the whole stack does.
 */
export function compileHeld(program: Program): void {
  const { build, facts } = program;
  const stand = new Stand(program);
  build.pieces.forEach((piece, q) => {
    if (piece.heldBy.length === 0 || (piece.up < 0 && !piece.fromStart)) return;
    const sets = piece.heldBy.map((set) => set.flatMap((id) => build.at.piece.get(id) ?? []));
    const pieces = [...new Set(piece.heldBy.flat())];
    const detail = { sets: piece.heldBy.map((set) => set.join(" and ")), claims: piece.claimsToHoldItself };
    const fact = facts.add({ rule: "held", piece: piece.id, pieces, detail }, "pieces", q * 1000 + 4);
    /** Selectors of the sets that stand whole once step t is done. What t puts up itself counts, what it takes down does not. */
    const wholeAt = (t: number): number[] =>
      sets
        .filter((set) => set.every((p) => stand.piece(p).goesAfter === null && stand.piece(p).down !== t))
        .map((set) => {
          const selector = program.selector();
          for (const p of set) {
            if (stand.piece(p).up !== t) program.must(fact, selector, stand.up(p, t), never, t);
            program.must(fact, selector, stand.stillThere(p, t), never, t);
          }
          return selector;
        });
    if (piece.up >= 0) program.clause(fact, -1, wholeAt(piece.up), piece.up);
    const takers = new Set(sets.flat().map((p) => stand.piece(p).down));
    for (const t of [...takers].sort((a, b) => a - b)) {
      if (t < 0 || piece.down === t) continue;
      const whole = wholeAt(t);
      const itself = piece.holdsItself === null ? [] : [program.together(fact, stand.there(q, t, piece.holdsItself), t)];
      program.clause(fact, -1, [...whole, ...itself, stand.gone(q, t, fact), stand.notYet(q, t)], t);
    }
  });
}
