import type { PieceId } from "../../base";
import type { Build } from "../../build";
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
    const sets = piece.heldBy.map((set) => known(set, build));
    const [only] = piece.heldBy;
    const pieces = piece.heldBy.length === 1 && only?.length === 1 ? only : [...new Set(piece.heldBy.flat())];
    const detail = { sets: piece.heldBy.map((set) => set.join(" and ")), claims: piece.claimsToHoldItself };
    const fact = facts.add({ rule: "held", piece: piece.id, pieces, detail }, "pieces", q * 1000 + 4);
    /** Selectors of the sets that stand whole once step t is done. What t puts up itself counts, what it takes down does not. */
    const wholeAt = (t: number): number[] => {
      const whole: number[] = [];
      for (const set of sets) {
        if (set.some((p) => stand.piece(p).goesAfter !== null || stand.piece(p).down === t)) continue;
        const selector = program.selector();
        for (const p of set) {
          if (stand.piece(p).up !== t) program.must(fact, selector, stand.up(p, t), never, t);
          program.must(fact, selector, stand.stillThere(p, t), never, t);
        }
        whole.push(selector);
      }
      return whole;
    };
    if (piece.up >= 0 && !program.isDone(piece.up)) program.clause(fact, -1, wholeAt(piece.up), piece.up);
    const takers: number[] = [];
    for (const set of sets) {
      for (const p of set) {
        const { down } = stand.piece(p);
        if (down >= 0 && down !== piece.down && !program.isDone(down) && !takers.includes(down)) takers.push(down);
      }
    }
    if (takers.length > 1) takers.sort((a, b) => a - b);
    for (const t of takers) {
      const options = wholeAt(t);
      if (piece.holdsItself !== null) options.push(program.together(fact, stand.there(q, t, piece.holdsItself), t));
      options.push(stand.gone(q, t, fact), stand.notYet(q, t));
      program.clause(fact, -1, options, t);
    }
  });
}

/** Positions of those that the build has. */
function known(ids: readonly PieceId[], { at }: Build): number[] {
  const pieces: number[] = [];
  for (const id of ids) {
    const p = at.piece.get(id);
    if (p !== undefined) pieces.push(p);
  }
  return pieces;
}
