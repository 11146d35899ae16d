import type { Atoms } from "./atoms";
import type { Clauses } from "./clauses";
import { edgeReasons } from "./edges-why";
import type { Arcs, Lags } from "./lags";
import type { Model } from "./model";
import type { Orders } from "./orders";
import type { Stretches } from "./stretches";
import { tableReasons } from "./table-why";
import { type TimeTable, taskRoom } from "./time-table";
import { type Trail, Why, wider } from "./trail";

/** Of a statement: whether an atom says so has to be looked up. */
export const askAtoms = -2;

/** Statements "side is at least bound" that a move rests on. */
export class Reasons {
  side = new Int32Array(256);
  bound = new Int32Array(256);
  /** The atom that says so where it is at hand, else `askAtoms`. */
  atom = new Int32Array(256);
  size = 0;

  add(side: number, bound: number, atom = askAtoms): void {
    if (this.size === this.side.length) {
      this.side = wider(this.side);
      this.bound = wider(this.bound);
      this.atom = wider(this.atom);
    }
    this.side[this.size] = side;
    this.atom[this.size] = atom;
    this.bound[this.size++] = bound;
  }
}

/** What everything that moves bounds needs to tell why, long after it did. */
export interface Movers {
  readonly trail: Trail;
  readonly atoms: Atoms;
  readonly clauses: Clauses;
  readonly lags: Lags;
  readonly arcs: Arcs;
  readonly orders: Orders;
  readonly tables: readonly TimeTable[];
  readonly stretches: Stretches;
  readonly model: Model;
  readonly length: Int32Array;
}

const pairOut = new Int32Array(2);

/**
 * What a move of `side` to at least `b` rests on: worked out only when it is asked for, and for no more than is asked (a smaller `b` may rest on less).
 * `move`: only what was there before it counts. A side of -1 asks why nothing could be.
 */
export function reasonsOf(
  m: Movers,
  why: number,
  what: number,
  what2: number,
  side: number,
  asked: number,
  move: number,
  out: Reasons,
): void {
  out.size = 0;
  const b = side < 0 ? 0 : m.trail.weakest(side, asked);
  switch (why) {
    case Why.clause: {
      const { cells, now } = m.clauses;
      const { side: sides, bound } = m.atoms;
      const end = what + cells[what - 3]!;
      cells[what - 1] = now;
      for (let k = side < 0 ? what : what + 1; k < end; k++) {
        const denied = cells[k]! ^ 1;
        out.add(sides[denied]!, bound[denied]!, denied >> 1);
      }
      return;
    }
    case Why.lag:
      out.add(m.lags.from[what]!, b - m.lags.lag[what]!);
      return;
    case Why.arc:
      m.arcs.why(what, b, pairOut);
      out.add(pairOut[0]!, pairOut[1]!);
      return;
    case Why.order: {
      const { first, second } = m.orders.pairs[what]!;
      const v = m.orders.base + what;
      // The side says which comes first: the later one's lower bound, or the earlier one's upper bound, is what moved.
      const moved = side >> 1;
      const earlier = (side & 1) === 0 ? (moved === first ? second : first) : moved;
      out.add(earlier === first ? 2 * v : 2 * v + 1, earlier === first ? 1 : 0);
      const other = moved === first ? second : first;
      out.add((side & 1) === 0 ? 2 * other : 2 * other + 1, b - m.length[earlier]!);
      return;
    }
    case Why.pair: {
      // Moved to 1 ("first before second"): the second cannot be before the first.
      const { first, second } = m.orders.pairs[what]!;
      const denied = (side & 1) === 0 ? second : first;
      const other = denied === first ? second : first;
      out.add(2 * denied, what2);
      out.add(2 * other + 1, 1 - (what2 + m.length[denied]!));
      return;
    }
    case Why.table:
      tableReasons(m.trail, m.model.maps, m.tables[Math.floor(what / taskRoom)]!, what, what2, side, move, out);
      return;
    case Why.edge: {
      const { from, to } = m.stretches;
      const table = m.tables[Math.floor(what / taskRoom)]!;
      edgeReasons(m.trail, m.model.maps, table, { task: what % taskRoom, from: from[what2]!, to: to[what2]!, side, asked: b, move }, out);
      return;
    }
    default:
      return;
  }
}
