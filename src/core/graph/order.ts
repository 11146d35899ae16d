import { Heap } from "../base";
import type { Digraph } from "./digraph";

/** Nodes so that every arc leads forward; of those that may come next always the lowest. Null when there is a ring. O((n + m) log n). */
export function topologicalOrder(graph: Digraph): Int32Array | null {
  const { nodes, start, target } = graph;
  const waiting = new Int32Array(nodes);
  for (let at = 0, arcs = target.length; at < arcs; at++) {
    const v = target[at] as number;
    waiting[v] = (waiting[v] as number) + 1;
  }
  const order = new Int32Array(nodes);
  const ready = new Heap();
  for (let u = 0; u < nodes; u++) if (waiting[u] === 0) ready.push(u, u);
  let count = 0;
  for (let u = ready.pop(); u !== undefined; u = ready.pop()) {
    order[count++] = u;
    for (let at = start[u] as number; at < (start[u + 1] as number); at++) {
      const v = target[at] as number;
      const left = (waiting[v] as number) - 1;
      waiting[v] = left;
      if (left === 0) ready.push(v, v);
    }
  }
  return count === nodes ? order : null;
}

/** Where each node stands in an order. */
export function positions(order: Int32Array): Int32Array {
  const at = new Int32Array(order.length);
  for (let position = 0; position < order.length; position++) at[order[position] as number] = position;
  return at;
}
