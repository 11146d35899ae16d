import { type Apply, access, type RefusedLink } from "../../access";
import type { Finding } from "../../base";
import type { Build } from "../../build";
import type { Clocks } from "../../clock";
import { type Dated, datedParts, netOf, type Problem, problemOfParts, type Refusal, refusalOf, type Solution } from "../../schedule";
import { bind } from "../bind";
import { type Bound, furthest } from "../bound";
import type { Ordered } from "../order";
import { begun, eachFor, goOn, uncounted } from "./portions";
import { anyOrder } from "./relaxed";
import { type Found, replaying, serving } from "./replay";
import { ruledOut } from "./ruled-out";

/** Units for the question about what has to do with dates alone: at first about as little as that can be, then before it is asked about everything. */
const mostForLittle = 1_000;
const mostDated = 5_000;

/** Clashes for a smaller set of parts: at least, and so many times as many as showed that the whole cannot be. */
const leastForParts = 200;
const timesForParts = 2;

/** Orders that are looked at one by one, and the work of finding out which of the precedences chosen in one take part. */
const mostOrders = 60;
const mostForOrder = 3_000;

/** Work that yields the units done; 0 in the midst of them. */
type Looking<T> = Generator<number, T>;

interface Looked {
  readonly solution: Solution | null;
  readonly infeasible: boolean;
  readonly units: number;
}

/**
 * A plan for a build for which the quick passes found none, or why there is none: first by what has to do with latest and fixed dates alone, for all orders at
 * once and then order by order; then by everything.
 */
export function* anyPlan(build: Build, clocks: Clocks, first: Ordered, edited: Apply | null): Looking<Found | Finding | null> {
  const bound = bind(build, first.access, clocks, furthest);
  yield 0;
  const little = anyOrder(bound, []);
  const least = datedParts(little.problem, netOf(little.problem));
  const some = yield* looked(problemOfParts(little.problem, least.parts), mostForLittle);
  if (some.infeasible) return yield* ruledOut(little, yield* why(little.problem, some.units, least), edited);
  const any = anyOrder(bound);
  const over = any.problem;
  const dated = datedParts(over, netOf(over));
  const all = yield* looked(problemOfParts(over, dated.parts), mostDated);
  if (all.infeasible) return yield* ruledOut(any, yield* why(over, all.units, dated), edited);
  const found = all.solution && (yield* served(build, clocks, over, dated, all.solution));
  if (found) return found;
  const one = all.solution && (yield* orderByOrder(build, clocks, bound, edited));
  if (one) return one;
  const { solution, infeasible, units } = yield* looked(over, Number.POSITIVE_INFINITY);
  if (infeasible) return yield* ruledOut(any, yield* why(over, units), edited);
  return solution && (yield* eachFor(0, replaying(build, clocks, solution.start, first.access.order)));
}

/**
 * One order after the other: where what has to do with dates cannot be in it, the precedences chosen in it that take part are handed back, and another order is asked
 * for (logic-based Benders: Hooker & Ottosson 2003, from memory). Where none takes part, no order has a plan.
 */
function* orderByOrder(build: Build, clocks: Clocks, own: Bound, edited: Apply | null): Looking<Found | Finding | null> {
  const refused: (readonly RefusedLink[])[] = [];
  for (let bound = own; ; ) {
    const p = bound.problem;
    const dated = datedParts(p, netOf(p));
    const { solution, infeasible, units } = yield* looked(problemOfParts(p, dated.parts), mostDated);
    if (solution !== null) return yield* served(build, clocks, p, dated, solution);
    if (!infeasible || refused.length === mostOrders) return null;
    const refusal = partsOf(p, units, dated);
    // As few as are found soon are enough to ask for another order.
    yield* goOnTo(refusal, mostForOrder);
    const chosen = chosenOf(bound, refusal.result());
    if (chosen.length === 0) {
      yield* goOnTo(refusal, Number.POSITIVE_INFINITY);
      return yield* ruledOut(bound, refusal.result(), edited);
    }
    refused.push(chosen);
    const order = access(build, refused);
    yield 1;
    if (!order.possible) return null;
    bound = bind(build, order, clocks, furthest);
    yield 0;
  }
}

/** The chosen precedences among parts that cannot be. */
function chosenOf({ access: { arcs }, row }: Bound, { parts }: ReturnType<Refusal["result"]>): RefusedLink[] {
  return parts.flatMap((part): RefusedLink[] => {
    const r = part.kind === "link" ? row[part.link]! : -1;
    return r < 0 || arcs.forced[r] === 1 ? [] : [[arcs.from[r]!, arcs.to[r]!, arcs.link?.[r] ?? -1]];
  });
}

/** Any schedule of a problem, or that there is none, by so many units of work. */
function* looked(p: Problem, most: number): Looking<Looked> {
  const search = yield* uncounted(begun(p, null));
  let { solution } = search.result();
  let units = 0;
  while (!search.done && solution === null && units < most) {
    const done = yield* uncounted(goOn(search));
    ({ solution } = search.result());
    units += done;
    yield done;
  }
  return { solution, infeasible: search.done && solution === null, units };
}

/**
 * A plan that serves first what has to do with dates, in the order of a schedule of that, and the rest after it: none of it before that was only chosen so, or else
 * when it is needed.
 */
function* served(build: Build, clocks: Clocks, p: Problem, { jobs }: Dated, { start }: Solution): Looking<Found | null> {
  const at = new Map(jobs.map((j, k) => [j, start[k]!]));
  const turn = (s: number): number => at.get(s) ?? Number.POSITIVE_INFINITY;
  const order = [...build.steps.keys()].sort((a, b) => (turn(a) === turn(b) ? 0 : turn(a) - turn(b)) || p.rank[a]! - p.rank[b]!);
  const ids = order.map((s) => build.steps[s]!.id);
  const found = yield* eachFor(0, serving(build, clocks, ids));
  const dated = order.findIndex((s) => !at.has(s));
  return found ?? (yield* eachFor(0, serving(build, clocks, ids.slice(0, dated < 0 ? ids.length : dated))));
}

/** Parts that cannot be, of a problem of which `units` have shown that: fewer parts should not take many more. */
function* why(p: Problem, units: number, dated?: Dated): Looking<ReturnType<Refusal["result"]>> {
  const refusal = partsOf(p, units, dated);
  yield* goOnTo(refusal, Number.POSITIVE_INFINITY);
  return refusal.result();
}

function partsOf(p: Problem, units: number, dated?: Dated): Refusal {
  return refusalOf(p, Math.max(leastForParts, timesForParts * units), dated?.parts);
}

function* goOnTo(refusal: Refusal, most: number): Looking<void> {
  while (!refusal.done && refusal.work < most) {
    const before = refusal.work;
    refusal.step(1);
    yield refusal.work - before;
  }
}
