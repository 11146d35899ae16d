import type { Digraph } from "./digraph";

/** The arcs of some ring, each leading to where the next begins; null when there is none. Depth first from the lowest node, without recursion. */
export function cycleWitness(graph: Digraph): Int32Array | null {
  const { nodes, start, arc, target } = graph;
  const state = new Uint8Array(nodes);
  const next = start.slice(0, nodes);
  const path: number[] = [];
  const taken: number[] = [];
  for (let root = 0; root < nodes; root++) {
    if (state[root] !== 0) continue;
    path.push(root);
    state[root] = 1;
    while (path.length > 0) {
      const u = path[path.length - 1] as number;
      const at = next[u] as number;
      if (at === (start[u + 1] as number)) {
        state[u] = 2;
        path.pop();
        taken.pop();
        continue;
      }
      next[u] = at + 1;
      const v = target[at] as number;
      if (state[v] === 1) return Int32Array.from([...taken.slice(path.indexOf(v)), arc[at] as number]);
      if (state[v] === 0) {
        state[v] = 1;
        path.push(v);
        taken.push(arc[at] as number);
      }
    }
  }
  return null;
}
