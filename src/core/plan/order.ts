import { type Access, access, refuteWithTimes } from "../access";
import type { Finding } from "../base";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import type { Result } from "../schedule";
import type { Bound } from "./bound";
import { datesFor } from "./dates";
import { timeBounds } from "./time-bounds";

/** Sets of chosen precedences handed back before the search for an order with dates is given up. */
const mostRefused = 200;

export interface Ordered {
  readonly access: Access;
  /** Null when there is no order at all. */
  readonly bound: Bound | null;
  readonly result: Result | null;
  /** Why no order has dates, told over all orders at once; null where the witness of the result says it all. */
  readonly overall: readonly Finding[] | null;
  /** How many sets of choices dates have refuted. */
  readonly refused: number;
  /** True when dates refuted the choices one after the other and the search was given up with others left. */
  readonly givenUp: boolean;
}

/**
 * An order with dates: the defaults first; where dates refute it by way of precedences that were only chosen, that set is handed back and another order
 * is asked for. Before the first is handed back, order and times are refuted together by what clocks say on every date: a refutation there is final.
 */
export function orderWithDates(build: Build, clocks: Clocks): Ordered {
  const refused: (readonly (readonly [number, number])[])[] = [];
  let first: Ordered | null = null;
  for (;;) {
    const order = refused.length === 0 ? access(build) : access(build, refused);
    if (!order.possible)
      return { ...(first ?? { access: order, bound: null, result: null, overall: null, givenUp: false }), refused: refused.length };
    const { bound, result } = datesFor(build, order, clocks);
    const now: Ordered = { access: order, bound, result, overall: null, refused: refused.length, givenUp: false };
    if (result.status !== "infeasible") return now;
    const chosen = chosenOf(bound, result);
    if (chosen.length === 0) return now;
    if (first === null) {
      first = now;
      const together = refuteWithTimes(build, timeBounds(bound));
      if (together.verdict === "refuted") return { ...now, overall: together.findings };
    }
    if (refused.length >= mostRefused) return { ...first, refused: refused.length, givenUp: true };
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
