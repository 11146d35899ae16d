import type { Build } from "../build";
import { ClauseSearch, type Digraph, digraph, holds, positions, reachable, reversed, topologicalOrder } from "../graph";
import { compile } from "./compile/compile";
import { orderLayer } from "./compile/layers";
import type { Access } from "./result";

/** One step is done before the other starts. */
export type Pair = readonly [before: number, after: number];

/** Most work spent on all questions, in steps of the search, and most questions asked of one precedence each way. */
const mostWork = 1_000_000;
const mostAsked = 24;

/**
 * What every order has in common though no statement asks for it by itself: bars are tied before two faces close a cage, or through its third side before that is
 * closed, and so before the last of them whatever is chosen. Looked for around what was chosen, as far before and after it as precedences of every order lead; a pair
 * whose reverse is refuted holds in every order. In pieces. What the work does not reach is left out.
 */
export function* inEveryOrder(build: Build, { possible, arcs }: Access): Generator<void, readonly Pair[]> {
  const rows = [...arcs.orders.keys()].filter((r) => arcs.orders[r] === 1);
  const forced = rows.filter((r) => arcs.forced[r] === 1);
  const chosen = new Map(rows.filter((r) => arcs.forced[r] === 0).map((r) => [`${arcs.from[r]} ${arcs.to[r]}`, r]));
  if (!possible || chosen.size === 0) return [];
  const of = (ends: Int32Array): Int32Array => Int32Array.from(forced, (r) => ends[r]!);
  const onward = digraph(build.steps.length, of(arcs.from), of(arcs.to));
  const backward = reversed(onward);
  const turn = positions(topologicalOrder(onward)!);
  const always = new Questions(build);
  const found: Pair[] = [];
  for (const r of chosen.values()) {
    const [before, after] = [arcs.from[r]!, arcs.to[r]!];
    yield;
    const onwards = { graph: onward, turn: (s: number) => turn[s]!, isTrue: (s: number) => always.has(before, s) };
    for (const s of nearest(onwards, before, after)) found.push([before, s]);
    yield;
    const back = { graph: backward, turn: (s: number) => -turn[s]!, isTrue: (s: number) => always.has(s, after) };
    for (const s of nearest(back, after, before)) found.push([s, after]);
  }
  return found;
}

interface Way {
  readonly graph: Digraph;
  /** What comes first is asked first. */
  turn(s: number): number;
  isTrue(s: number): boolean;
}

/** Of the steps that arcs lead to from one, the first of which something is true; none that is reached from `own` anyway, and none behind one that was found. */
function nearest({ graph, turn, isTrue }: Way, own: number, from: number): number[] {
  const anyway = reachable(graph, own);
  const seen = new Set<number>();
  const next: number[] = [];
  const found: number[] = [];
  const goOn = (s: number): void => {
    for (let at = graph.start[s]!; at < graph.start[s + 1]!; at++) {
      const to = graph.target[at]!;
      if (seen.has(to) || anyway[to] === 1) continue;
      seen.add(to);
      next.push(to);
    }
    next.sort((a, b) => turn(b) - turn(a));
  };
  goOn(from);
  for (let asked = 0; next.length > 0 && asked < mostAsked; asked++) {
    const s = next.pop()!;
    if (!isTrue(s)) goOn(s);
    else {
      found.push(s);
      reachable(graph, s).forEach((yes, to) => {
        anyway[to]! |= yes;
      });
    }
  }
  return found;
}

/** Whether one step is done before another in every order. */
class Questions {
  readonly #search: ClauseSearch;
  /** Whether the last answer was an order, which shows at once what is not so in all. */
  #isOrder: boolean;

  constructor(build: Build) {
    this.#search = new ClauseSearch(orderLayer(compile(build)));
    this.#isOrder = this.#search.solve([], mostWork) === "yes";
  }

  has(before: number, after: number): boolean {
    const search = this.#search;
    if (this.#isOrder && !search.leadsTo(before, after)) return false;
    const answer = search.spent >= mostWork ? "budget" : search.solve([holds(search.addArc(after, before))], mostWork - search.spent);
    this.#isOrder = answer === "yes";
    return answer === "no";
  }
}
