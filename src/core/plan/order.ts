import { type Access, type AccessCode, access, type RefusedLink, refuteWithTimes } from "../access";
import { drained, type Finding } from "../base";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import type { Result } from "../schedule";
import type { Bound } from "./bound";
import { dating } from "./dates";
import { keptOrder, movedOf, nearer } from "./near";
import { againstServed } from "./served";
import { timeBounds } from "./time-bounds";

/** Sets of chosen precedences handed back before the search for an order with dates is given up. */
const mostRefused = 200;
/** What access says when its work was spent before it had an answer. */
const tooHard: AccessCode = "access.too-hard";

export interface Ordered {
  readonly access: Access;
  /** Null when there is no order at all. */
  readonly bound: Bound | null;
  readonly result: Result | null;
  /** Why no order has dates, told over all orders at once; null where the witness of the result says it all. */
  readonly overall: readonly Finding[] | null;
  /** How many sets of choices dates have refuted. */
  readonly refused: number;
  /** True when the search for an order, or for one with dates, was given up with others left: then nothing is proved. */
  readonly givenUp: boolean;
  /** Steps are served in the order that the build names. */
  readonly served: boolean;
}

/** Rounds in which choices are turned to suit the order in which steps are served. */
const mostTurned = 20;

/**
 * As `orderFor`, by the order in which the build says steps are served where that still gives dates; else near the plan that was kept, where leaving that is not
 * worth it.
 */
export function orderWithDates(build: Build, clocks: Clocks): Ordered {
  return drained(orderingWithDates(build, clocks));
}

/** The same in pieces, between which a search can be left. */
export function* orderingWithDates(build: Build, clocks: Clocks): Generator<void, Ordered> {
  const served = build.served ? yield* servedOrder(build, clocks) : null;
  if (served !== null) return served;
  const fresh = yield* orderFor(build, clocks);
  const kept = keptOrder(build);
  const solution = fresh.result?.solution ?? null;
  if (kept === null || (solution !== null && movedOf(build, clocks, solution.start) === 0)) return fresh;
  const near = fresh.result?.status === "infeasible" ? null : yield* servedOrder({ ...build, served: kept }, clocks);
  return near === null ? fresh : nearer(build, clocks, { ...near, served: false }, fresh);
}

function* servedOrder(build: Build, clocks: Clocks): Generator<void, Ordered | null> {
  const turned: (readonly RefusedLink[])[] = [];
  for (let round = 0; ; round++) {
    const order = access(build, turned);
    if (!order.possible) return null;
    const against = againstServed(build, order);
    if (against.length > 0 && round < mostTurned) {
      for (const link of against) turned.push([link]);
      continue;
    }
    yield;
    const { bound, result } = yield* dating(build, order, clocks, true);
    return result.solution === null ? null : { access: order, bound, result, overall: null, refused: 0, givenUp: false, served: true };
  }
}

/**
 * An order with dates: the defaults first; where dates refute it by way of rows that were only chosen, those rows, amounts included, are handed back and
 * another order is asked for. Before the first is handed back, order and times are refuted together by what clocks say on every date: a refutation there is final.
 */
function* orderFor(build: Build, clocks: Clocks): Generator<void, Ordered> {
  const refused: (readonly RefusedLink[])[] = [];
  let first: Ordered | null = null;
  for (;;) {
    const order = refused.length === 0 ? access(build) : access(build, refused);
    if (!order.possible) {
      const before = first ?? { access: order, bound: null, result: null, overall: null, served: false };
      return { ...before, refused: refused.length, givenUp: order.findings.some((f) => f.code === tooHard) };
    }
    yield;
    const { bound, result } = yield* dating(build, order, clocks);
    const now: Ordered = { access: order, bound, result, overall: null, refused: refused.length, givenUp: false, served: false };
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

function chosenOf(bound: Bound, result: Result): RefusedLink[] {
  const out: RefusedLink[] = [];
  const { arcs } = bound.access;
  for (const part of result.witness) {
    if (part.kind !== "link") continue;
    const row = bound.row[part.link]!;
    if (row >= 0 && arcs.forced[row] === 0) out.push([arcs.from[row]!, arcs.to[row]!, arcs.link?.[row] ?? -1]);
  }
  return out;
}
