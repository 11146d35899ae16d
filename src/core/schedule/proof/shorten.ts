import { Apart } from "./apart";
import { type Trail, Why } from "./trail";
import { type Movers, Reasons, reasonsOf } from "./why";

/** How many statements may stand between one that is left out and those that imply it, and how many are looked at for one clause. */
const deepest = 6;
const patience = 300;

/** Of more variables, a table of what follows by waits is too large. */
const mostApart = 400;

/**
 * Leaves out of a clause what the rest implies: weaker statements of a side that is there with a stronger one, statements that follow from earlier ones
 * in it (Sorensson & Biere 2009, "Minimizing learned clauses"), and last those that follow from one that stays by waits alone, whichever moved first. Before
 * that last part, what stands in for a statement has to have moved before it, so no two stand in for each other.
 */
export class Shorten {
  private readonly trail: Trail;
  private readonly strongest: Int32Array;
  private readonly moveOf: Int32Array;
  private readonly sideMark: Int32Array;
  private levels = new Uint8Array(256);
  private readonly reasons = Array.from({ length: deepest + 1 }, () => new Reasons());
  private stamp = 0;
  private left = 0;
  /** Made with the first clause. */
  private apart: Apart | null = null;

  constructor(private readonly movers: Movers) {
    this.trail = movers.trail;
    this.strongest = new Int32Array(2 * this.trail.variables);
    this.moveOf = new Int32Array(2 * this.trail.variables);
    this.sideMark = new Int32Array(2 * this.trail.variables);
  }

  /** Packs the statements that stay to the front; returns how many. `turned`, `turnedBound`: the one that is turned round. */
  run(side: Int32Array, bound: Int32Array, move: Int32Array, count: number, turned: number, turnedBound: number): number {
    const { trail, sideMark, strongest, moveOf } = this;
    this.stamp++;
    this.left = patience;
    if (this.levels.length <= trail.depth) this.levels = new Uint8Array(2 * trail.depth + 2);
    for (let k = 0; k < count; k++) {
      const s = side[k]!;
      if (sideMark[s] === this.stamp && strongest[s]! >= bound[k]!) continue;
      sideMark[s] = this.stamp;
      strongest[s] = bound[k]!;
      moveOf[s] = move[k]!;
    }
    let kept = 0;
    for (let k = 0; k < count; k++) {
      const s = side[k]!;
      if (s === turned || moveOf[s] !== move[k]!) continue;
      side[kept] = s;
      bound[kept] = bound[k]!;
      move[kept++] = move[k]!;
      this.levels[trail.level[move[k]!]!] = 1;
    }
    // The turned side's weaker statement is gone from the clause: it may not stand in for others.
    if (sideMark[turned] === this.stamp) sideMark[turned] = 0;
    const end = kept;
    kept = 0;
    for (let k = 0; k < end; k++) this.levels[trail.level[move[k]!]!] = 1;
    for (let k = 0; k < end; k++) {
      if (this.implied(side[k]!, bound[k]!, move[k]!, move[k]!, 0)) continue;
      side[kept] = side[k]!;
      bound[kept] = bound[k]!;
      move[kept++] = move[k]!;
    }
    for (let level = 0; level <= trail.depth; level++) this.levels[level] = 0;
    return this.withoutWaits(side, bound, move, kept, turned, turnedBound);
  }

  private withoutWaits(side: Int32Array, bound: Int32Array, move: Int32Array, count: number, turned: number, turnedBound: number): number {
    const { jobs, lags } = this.movers.model;
    if (jobs >= mostApart) return count;
    this.apart ??= new Apart(jobs + 1, lags);
    const { apart } = this;
    let kept = 0;
    for (let k = 0; k < count; k++) {
      const s = side[k]!;
      const b = bound[k]!;
      let follows = false;
      if (apart.moves(s)) {
        follows = apart.follows(turned, turnedBound, s, b);
        for (let m = 0; m < kept && !follows; m++) follows = apart.follows(side[m]!, bound[m]!, s, b);
        for (let m = k + 1; m < count && !follows; m++) follows = apart.follows(side[m]!, bound[m]!, s, b);
      }
      if (follows) continue;
      side[kept] = s;
      bound[kept] = b;
      move[kept++] = move[k]!;
    }
    return kept;
  }

  private implied(side: number, b: number, move: number, first: number, between: number): boolean {
    const { trail } = this;
    const why = trail.why[move]!;
    if (why === Why.decision || between > deepest || --this.left < 0) return false;
    const reasons = this.reasons[between]!;
    reasonsOf(this.movers, why, trail.what[move]!, trail.what2[move]!, side, b, move, reasons);
    for (let k = 0; k < reasons.size; k++) {
      const s = reasons.side[k]!;
      const wanted = reasons.bound[k]!;
      const e = trail.moveOf(s, wanted);
      if (e < 0) continue;
      if (this.sideMark[s] === this.stamp && this.strongest[s]! >= wanted && this.moveOf[s]! < first) continue;
      if (this.levels[trail.level[e]!] === 0) return false;
      if (!this.implied(s, wanted, e, first, between + 1)) return false;
    }
    return true;
  }
}
