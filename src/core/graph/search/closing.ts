import { type Digraph, digraph } from "../digraph";
import { IntList } from "../int-list";
import { positions } from "../order";
import { reachMany } from "../reach";
import { holds } from "./problem";
import type { Theory } from "./theory";
import type { Trail } from "./trail";

/** Arcs that hold, in the order in which they came to hold; only those among the first `length` values of the trail. */
export function arcsThatHold(trail: Trail, theory: Theory, length = trail.length): IntList {
  const arcs = new IntList(length);
  for (let at = 0; at < length; at++) {
    const literal = trail.literals.at(at);
    if ((literal & 1) === 0 && theory.isArc(literal >> 1)) arcs.push(literal >> 1);
  }
  return arcs;
}

/** Of the arcs that are still open, those that would close a ring with the ones given. */
export function ringClosers(arcs: IntList, variables: number, trail: Trail, theory: Theory): number[] {
  const at = theory.order.at;
  const open = new IntList(256);
  const tails = new IntList(256);
  const heads = new IntList(256);
  for (let v = 0; v < variables; v++) {
    if (!theory.isArc(v) || trail.value(holds(v)) !== 0) continue;
    if ((at[theory.to(v)] as number) > (at[theory.from(v)] as number)) continue;
    open.push(v);
    tails.push(theory.from(v));
    heads.push(theory.to(v));
  }
  const refuted = reachMany(graphOf(arcs, theory), positions(at), heads.packed(), tails.packed());
  const closers: number[] = [];
  for (let i = 0; i < open.length; i++) if (refuted[i] === 1 || heads.at(i) === tails.at(i)) closers.push(open.at(i));
  return closers;
}

/** For each pair, 1 when the arcs lead from the first node to the second. */
export function leading(arcs: IntList, theory: Theory, from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
  return reachMany(graphOf(arcs, theory), positions(theory.order.at), from, to);
}

function graphOf(arcs: IntList, theory: Theory): Digraph {
  const from = new Int32Array(arcs.length);
  const to = new Int32Array(arcs.length);
  for (let a = 0; a < arcs.length; a++) {
    from[a] = theory.from(arcs.at(a));
    to[a] = theory.to(arcs.at(a));
  }
  return digraph(theory.order.at.length, from, to);
}
