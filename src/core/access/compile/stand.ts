import type { Piece } from "../../build";
import { always, never, type Program } from "./program";

/**
 * When a piece stands, as seen from a step s, in options of clauses. Up is "put up", by the step `up`; what stands from the start is up before anything, what
 * nobody puts up never is.
 */
export class Stand {
  constructor(readonly program: Program) {}

  piece(p: number): Piece {
    return this.program.build.pieces[p] as Piece;
  }

  /** s < up(p) */
  notYet(p: number, s: number): number {
    const { up, fromStart } = this.piece(p);
    if (up >= 0) return this.program.before(s, up);
    return fromStart ? never : always;
  }

  /** up(p), and `least` since then, < s */
  there(p: number, s: number, least = -1): number {
    const { up, fromStart } = this.piece(p);
    if (up >= 0) return this.program.before(up, s, least);
    return fromStart ? always : never;
  }

  /** gone(p) < s: taken down, or gone by itself once its amount has passed. */
  gone(p: number, s: number): number {
    const { down, goesAfter } = this.piece(p);
    if (goesAfter !== null) return this.there(p, s, this.program.amount(goesAfter));
    return down >= 0 ? this.program.before(down, s) : never;
  }

  /** s < down(p) */
  stillThere(p: number, s: number): number {
    const { down, up, goesAfter } = this.piece(p);
    if (down >= 0) return this.program.before(s, down);
    if (goesAfter === null || up < 0 || up === s) return always;
    return this.program.timed(up, 1, s, 1, -1, this.program.amount(goesAfter));
  }
}
