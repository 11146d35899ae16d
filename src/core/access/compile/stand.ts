import type { Amount, Piece } from "../../build";
import { pourAt, since, until } from "./amounts";
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

  /** up(p) < s */
  up(p: number, s: number): number {
    const { up, fromStart } = this.piece(p);
    if (up >= 0) return this.program.before(up, s);
    return fromStart ? always : never;
  }

  /**
   * Links that all hold when the piece is up and has the amount before s. What stands from the start has had every amount but the strength of a pour of this
   * build.
   */
  there(p: number, s: number, amount: Amount | null): number[] {
    const { up, fromStart } = this.piece(p);
    if (up >= 0) return since(this.program, up, s, amount);
    if (!fromStart) return [never];
    const pour = pourAt(this.program.build, amount);
    return [pour < 0 ? always : this.program.before(pour, s, this.program.amount(amount))];
  }

  /** gone(p) < s, as one option: taken down, or gone by itself once its amount has passed. */
  gone(p: number, s: number, fact: number, need = -1): number {
    const { down, goesAfter } = this.piece(p);
    if (goesAfter !== null) return this.program.together(fact, this.there(p, s, goesAfter), s, need);
    return down >= 0 ? this.program.before(down, s) : never;
  }

  /** s < down(p), or before it goes by itself. */
  stillThere(p: number, s: number): number {
    const { down, up, goesAfter } = this.piece(p);
    if (down >= 0) return this.program.before(s, down);
    if (goesAfter === null || up === s) return always;
    const pour = pourAt(this.program.build, goesAfter);
    const from = pour >= 0 ? pour : up;
    return from < 0 ? always : this.program.timed(from, 1, s, 1, -1, this.program.amount(until(goesAfter)));
  }
}
