import type { Digraph } from "./digraph";

export interface Components {
  readonly count: number;
  /** Component of each node; numbered so that arcs between components lead to lower numbers. */
  readonly of: Int32Array;
  readonly size: Int32Array;
}

/** Strongly connected components (Tarjan 1972), without recursion. O(n + m). */
export function components(graph: Digraph): Components {
  const { nodes, start, target } = graph;
  const seenAt = new Int32Array(nodes).fill(-1);
  const low = new Int32Array(nodes);
  const of = new Int32Array(nodes).fill(-1);
  const next = start.slice(0, nodes);
  const open: number[] = [];
  const path: number[] = [];
  const sizes: number[] = [];
  let clock = 0;
  const enter = (u: number): void => {
    seenAt[u] = low[u] = clock++;
    path.push(u);
    open.push(u);
  };
  for (let root = 0; root < nodes; root++) {
    if (seenAt[root] === -1) enter(root);
    while (path.length > 0) {
      const u = path[path.length - 1] as number;
      const at = next[u] as number;
      if (at < (start[u + 1] as number)) {
        next[u] = at + 1;
        const v = target[at] as number;
        if (seenAt[v] === -1) enter(v);
        else if (of[v] === -1) low[u] = Math.min(low[u] as number, seenAt[v] as number);
        continue;
      }
      path.pop();
      const below = path[path.length - 1];
      if (below !== undefined) low[below] = Math.min(low[below] as number, low[u] as number);
      if (low[u] === seenAt[u]) sizes.push(close(u));
    }
  }
  return { count: sizes.length, of, size: Int32Array.from(sizes) };

  function close(u: number): number {
    for (let size = 1; ; size++) {
      const v = open.pop() as number;
      of[v] = sizes.length;
      if (v === u) return size;
    }
  }
}
