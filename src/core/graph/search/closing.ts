import { type Digraph, digraph } from "../digraph";
import { IntList, membersAt } from "../int-list";
import { positions } from "../order";
import { reachMany } from "../reach";
import { holds } from "./problem";
import type { Theory } from "./theory";
import type { Trail } from "./trail";

/** Arcs that hold, in the order in which they came to hold; only those among the first `length` values of the trail. */
export function arcsThatHold(trail: Trail, theory: Theory, length = trail.length): Int32Array {
  const literals = trail.literals.data;
  const { tails } = theory;
  const arcs = new Int32Array(length);
  let count = 0;
  for (let at = 0; at < length; at++) {
    const literal = literals[at] as number;
    if ((literal & 1) === 0 && (tails[literal >> 1] as number) >= 0) arcs[count++] = literal >> 1;
  }
  return arcs.subarray(0, count);
}

/** Of the arcs that are still open, those that would close a ring with the ones given. */
export function ringClosers(arcs: Int32Array, variables: number, trail: Trail, theory: Theory): number[] {
  const { at } = theory.order;
  const { tails, heads } = theory;
  const { values } = trail;
  const open = new IntList(256);
  for (let v = 0; v < variables; v++) {
    const tail = tails[v] as number;
    if (tail >= 0 && values[holds(v)] === 0 && (at[heads[v] as number] as number) <= (at[tail] as number)) open.push(v);
  }
  const from = membersAt(heads, open.packed());
  const to = membersAt(tails, open.packed());
  const refuted = reachMany(graphOf(arcs, theory), positions(at), from, to);
  const closers: number[] = [];
  for (let i = 0; i < open.length; i++) if (refuted[i] === 1 || from[i] === to[i]) closers.push(open.at(i));
  return closers;
}

/** For each pair, 1 when the arcs lead from the first node to the second. */
export function leading(arcs: Int32Array, theory: Theory, from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
  return reachMany(graphOf(arcs, theory), positions(theory.order.at), from, to);
}

function graphOf(arcs: Int32Array, theory: Theory): Digraph {
  return digraph(theory.order.at.length, membersAt(theory.tails, arcs), membersAt(theory.heads, arcs));
}
