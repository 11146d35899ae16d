import type { Digraph } from "./digraph";

/** Targets looked at in one pass: at most 32 words of 32 bits, so that memory stays at 128 bytes a node however many nodes there are. */
const mostWords = 32;
const mostTargets = 32 * mostWords;

/**
 * For each question, 1 when arcs lead from `from[i]` to `to[i]` (a node does not lead to itself). Bit rows along the order, backwards; a column for each node that is
 * asked about as a target.
 * @param order topological; O((n + m) t / 32) for questions about t targets
 */
export function reachMany(graph: Digraph, order: Int32Array, from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
  const answer = new Uint8Array(from.length);
  const column = new Int32Array(graph.nodes).fill(-1);
  let columns = 0;
  for (let i = 0; i < to.length; i++) if (column[to[i] as number] === -1) column[to[i] as number] = columns++;
  const words = Math.min(mostWords, (columns + 31) >> 5);
  const rows = new Int32Array(graph.nodes * words);
  for (let first = 0; first < columns; first += mostTargets) {
    fill(graph, order, { words, rows, column, first });
    for (let i = 0; i < from.length; i++) {
      const k = (column[to[i] as number] as number) - first;
      if (k >= 0 && k < 32 * words) answer[i] = bit(rows, (from[i] as number) * words, k);
    }
  }
  return answer;
}

/** For each arc, 1 when it follows from the others: a longer path leads the same way, or an arc with a lower number does. */
export function redundantArcs(graph: Digraph, order: Int32Array): Uint8Array {
  const redundant = new Uint8Array(graph.arcs);
  const column = Int32Array.from({ length: graph.nodes }, (_, u) => u);
  const words = Math.min(mostWords, (graph.nodes + 31) >> 5);
  const table = { words, rows: new Int32Array(graph.nodes * words), column, first: 0 };
  const scratch = { through: new Int32Array(words), once: new Int32Array(words) };
  for (; table.first < graph.nodes; table.first += mostTargets) {
    fill(graph, order, table);
    for (let u = 0; u < graph.nodes; u++) markRow(graph, u, table, redundant, scratch);
  }
  return redundant;
}

/** Row u of `rows`: bit k is set when u leads to the node of column `first + k`. */
interface Table {
  readonly words: number;
  readonly rows: Int32Array;
  readonly column: Int32Array;
  readonly first: number;
}

/** An arc u -> v follows when another arc u -> w has w leading to v, or is the same arc with a lower number. */
function markRow(
  graph: Digraph,
  u: number,
  { words, rows, column, first }: Table,
  redundant: Uint8Array,
  { through, once }: { readonly through: Int32Array; readonly once: Int32Array },
): void {
  const start = graph.start[u] as number;
  const end = graph.start[u + 1] as number;
  if (end - start < 2) return;
  through.fill(0);
  once.fill(0);
  for (let at = start; at < end; at++) {
    const row = (graph.target[at] as number) * words;
    for (let w = 0; w < words; w++) through[w] = (through[w] as number) | (rows[row + w] as number);
  }
  for (let at = start; at < end; at++) {
    const k = (column[graph.target[at] as number] as number) - first;
    if (k < 0 || k >= 32 * words) continue;
    if (bit(through, 0, k) === 1 || bit(once, 0, k) === 1) redundant[graph.arc[at] as number] = 1;
    once[k >> 5] = (once[k >> 5] as number) | (1 << (k & 31));
  }
}

function fill(graph: Digraph, order: Int32Array, { words, rows, column, first }: Table): void {
  rows.fill(0);
  for (let i = order.length - 1; i >= 0; i--) {
    const u = order[i] as number;
    const row = u * words;
    for (let at = graph.start[u] as number; at < (graph.start[u + 1] as number); at++) {
      const v = graph.target[at] as number;
      const other = v * words;
      for (let w = 0; w < words; w++) rows[row + w] = (rows[row + w] as number) | (rows[other + w] as number);
      const k = (column[v] as number) - first;
      if (k >= 0 && k < 32 * words) rows[row + (k >> 5)] = (rows[row + (k >> 5)] as number) | (1 << (k & 31));
    }
  }
}

const bit = (rows: Int32Array, row: number, k: number): number => ((rows[row + (k >> 5)] as number) >>> (k & 31)) & 1;
