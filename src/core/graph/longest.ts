import type { Digraph } from "./digraph";

export interface LongestPath {
  /** The largest sum of delays on a path that ends at the node; 0 where none is longer. */
  readonly at: Float64Array;
  /** The last arc of such a path; -1 where the node itself is the whole path. Of equals the lowest arc. */
  readonly by: Int32Array;
}

/** Longest paths along `order`, which must be topological. O(n + m). */
export function longestPath(graph: Digraph, order: Int32Array, delay: (arc: number) => number): LongestPath {
  const at = new Float64Array(graph.nodes);
  const by = new Int32Array(graph.nodes).fill(-1);
  for (const u of order) {
    for (let i = graph.start[u] as number; i < (graph.start[u + 1] as number); i++) {
      const a = graph.arc[i] as number;
      const v = graph.target[i] as number;
      const sum = (at[u] as number) + delay(a);
      const known = at[v] as number;
      if (sum > known || (sum === known && a < (by[v] as number))) {
        at[v] = sum;
        by[v] = a;
      }
    }
  }
  return { at, by };
}
