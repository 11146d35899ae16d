import { type Access, access } from "../access";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import type { Result } from "../schedule";
import type { Bound } from "./bound";
import { datesFor } from "./dates";

/** Sets of chosen precedences handed back before the search for an order with dates is given up. */
const mostRefused = 200;

export interface Ordered {
  readonly access: Access;
  /** Null when there is no order at all. */
  readonly bound: Bound | null;
  readonly result: Result | null;
  /** True when no order is left only because dates refuted every choice there was. */
  readonly refuted: boolean;
  readonly refused: number;
}

/**
 * An order with dates: the defaults first; where dates refute it by way of precedences that were only chosen, that set is handed back and another order
 * is asked for. Dates are called impossible when a refutation uses no chosen precedence, or when no order is left.
 */
export function orderWithDates(build: Build, clocks: Clocks): Ordered {
  const refused: (readonly (readonly [number, number])[])[] = [];
  let first: Ordered | null = null;
  for (;;) {
    const order = refused.length === 0 ? access(build) : access(build, refused);
    if (!order.possible) {
      if (first === null) return { access: order, bound: null, result: null, refuted: false, refused: 0 };
      return { ...first, refuted: true, refused: refused.length };
    }
    const { bound, result } = datesFor(build, order, clocks);
    const now: Ordered = { access: order, bound, result, refuted: false, refused: refused.length };
    if (result.status !== "infeasible") return now;
    first ??= now;
    const chosen = chosenOf(bound, result);
    if (chosen.length === 0) return now;
    if (refused.length >= mostRefused) return { ...first, refused: refused.length };
    refused.push(chosen);
  }
}

function chosenOf(bound: Bound, result: Result): (readonly [number, number])[] {
  const out: (readonly [number, number])[] = [];
  const { arcs } = bound.access;
  for (const part of result.witness) {
    if (part.kind !== "link") continue;
    const row = bound.row[part.link]!;
    if (row >= 0 && arcs.forced[row] === 0) out.push([arcs.from[row]!, arcs.to[row]!]);
  }
  return out;
}
