import type { Digraph } from "./digraph";

/** The fewest arcs that lead from one node to another, only such as `use` allows; null when none do. Empty from a node to itself. */
export function shortestPath(graph: Digraph, from: number, to: number, use: (arc: number) => boolean = () => true): Int32Array | null {
  const by = new Int32Array(graph.nodes).fill(-1);
  const seen = new Uint8Array(graph.nodes);
  const queue = [from];
  seen[from] = 1;
  for (let head = 0; head < queue.length && seen[to] === 0; head++) {
    const u = queue[head] as number;
    for (let at = graph.start[u] as number; at < (graph.start[u + 1] as number); at++) {
      const v = graph.target[at] as number;
      const a = graph.arc[at] as number;
      if (seen[v] === 1 || !use(a)) continue;
      seen[v] = 1;
      by[v] = a;
      queue.push(v);
    }
  }
  if (seen[to] === 0) return null;
  const path: number[] = [];
  for (let v = to; v !== from; v = graph.from[by[v] as number] as number) path.push(by[v] as number);
  return Int32Array.from(path.reverse());
}

/** Marks (1) every node that `from` leads to, itself included, along such arcs as `use` allows. */
export function reachable(graph: Digraph, from: number, use: (arc: number) => boolean = () => true): Uint8Array {
  const seen = new Uint8Array(graph.nodes);
  const stack = [from];
  seen[from] = 1;
  for (let u = stack.pop(); u !== undefined; u = stack.pop()) {
    for (let at = graph.start[u] as number; at < (graph.start[u + 1] as number); at++) {
      const v = graph.target[at] as number;
      if (seen[v] === 1 || !use(graph.arc[at] as number)) continue;
      seen[v] = 1;
      stack.push(v);
    }
  }
  return seen;
}
