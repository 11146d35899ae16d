/**
 * Arcs packed by source: those of node u are `arc[start[u]] .. arc[start[u + 1] - 1]` in the order they were given, and lead to the `target` at the
 * same position. `from` and `to` are the arrays handed in, by arc.
 */
export interface Digraph {
  readonly nodes: number;
  readonly arcs: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly start: Int32Array;
  readonly arc: Int32Array;
  readonly target: Int32Array;
}

/** Packs `arcs` arcs (all of `from` where not said). Arcs may be doubled; an arc from a node to itself is a ring. */
export function digraph(nodes: number, from: Int32Array, to: Int32Array, arcs = from.length): Digraph {
  const start = new Int32Array(nodes + 1);
  for (let a = 0; a < arcs; a++) {
    const after = (from[a] as number) + 1;
    start[after] = (start[after] as number) + 1;
  }
  for (let u = 0; u < nodes; u++) start[u + 1] = (start[u + 1] as number) + (start[u] as number);
  const next = start.slice();
  const arc = new Int32Array(arcs);
  const target = new Int32Array(arcs);
  for (let a = 0; a < arcs; a++) {
    const u = from[a] as number;
    const at = next[u] as number;
    next[u] = at + 1;
    arc[at] = a;
    target[at] = to[a] as number;
  }
  return { nodes, arcs, from, to, start, arc, target };
}

/** The same arcs, by the same numbers, each the other way round. */
export const reversed = (graph: Digraph): Digraph => digraph(graph.nodes, graph.to, graph.from, graph.arcs);
