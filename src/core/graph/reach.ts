import { type Digraph, digraph, reversed } from "./digraph";

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
  const asked = new Uint8Array(graph.nodes);
  for (let i = 0; i < to.length; i++) asked[to[i] as number] = 1;
  const table = tableOf(graph, order, asked);
  const { rows, words, column } = table;
  for (; table.first < table.columns; table.first += mostTargets) {
    fill(graph, order, table, null);
    for (let i = 0; i < from.length; i++) {
      const k = (column[to[i] as number] as number) - table.first;
      if (k >= 0 && k < 32 * words) answer[i] = bit(rows, (from[i] as number) * words, k);
    }
  }
  return answer;
}

/** For each arc, 1 when it follows from the others: a longer path leads the same way, or an arc with a lower number does. */
export function redundantArcs(graph: Digraph, order: Int32Array): Uint8Array {
  const { graph: sorted, arc } = byTarget(graph, order);
  const follows = new Uint8Array(graph.arcs);
  const table = tableOf(graph, order, new Uint8Array(graph.nodes).fill(1));
  for (; table.first < table.columns; table.first += mostTargets) fill(sorted, order, table, follows);
  const redundant = new Uint8Array(graph.arcs);
  for (let a = 0; a < arc.length; a++) redundant[arc[a] as number] = follows[a] as number;
  return redundant;
}

/** The same graph with its arcs numbered by where their targets stand, so that those of a node lead to near nodes first; `arc` tells their old numbers. */
function byTarget(graph: Digraph, order: Int32Array): { readonly graph: Digraph; readonly arc: Int32Array } {
  const into = reversed(graph);
  const arc = new Int32Array(graph.arcs);
  const from = new Int32Array(graph.arcs);
  const to = new Int32Array(graph.arcs);
  let count = 0;
  for (let i = 0; i < order.length; i++) {
    const v = order[i] as number;
    for (let at = into.start[v] as number; at < (into.start[v + 1] as number); at++) {
      arc[count] = into.arc[at] as number;
      from[count] = into.target[at] as number;
      to[count++] = v;
    }
  }
  return { graph: digraph(graph.nodes, from, to, count), arc };
}

/** Row u of `rows`: bit k is set when u leads to the node of column `first + k`. Columns are numbered along the order. */
interface Table {
  readonly words: number;
  readonly rows: Int32Array;
  readonly column: Int32Array;
  readonly columns: number;
  first: number;
}

function tableOf(graph: Digraph, order: Int32Array, asked: Uint8Array): Table {
  const column = new Int32Array(graph.nodes).fill(-1);
  let columns = 0;
  for (let i = 0; i < order.length; i++) {
    const u = order[i] as number;
    if (asked[u] === 1) column[u] = columns++;
  }
  const words = Math.min(mostWords, (columns + 31) >> 5);
  return { words, rows: new Int32Array(graph.nodes * words), column, columns, first: 0 };
}

/**
 * Fills the rows, last nodes first. A target that the row has already adds nothing: with the targets of each node in order, its arc follows from the others, and
 * is marked so in `follows`.
 */
function fill(graph: Digraph, order: Int32Array, { words, rows, column, columns, first }: Table, follows: Uint8Array | null): void {
  const { start, target, arc } = graph;
  rows.fill(0);
  // A node leads only to columns of nodes behind it.
  let behind = columns;
  for (let i = order.length - 1; i >= 0; i--) {
    const u = order[i] as number;
    const row = u * words;
    const low = Math.max(0, behind - first) >> 5;
    for (let at = start[u] as number; low < words && at < (start[u + 1] as number); at++) {
      const v = target[at] as number;
      const k = (column[v] as number) - first;
      if (k >= 0 && k < 32 * words) {
        const word = row + (k >> 5);
        const own = 1 << (k & 31);
        if (((rows[word] as number) & own) !== 0) {
          if (follows !== null) follows[arc[at] as number] = 1;
          continue;
        }
        rows[word] = (rows[word] as number) | own;
      }
      const other = v * words;
      for (let w = low; w < words; w++) rows[row + w] = (rows[row + w] as number) | (rows[other + w] as number);
    }
    if ((column[u] as number) >= 0) behind = column[u] as number;
  }
}

const bit = (rows: Int32Array, row: number, k: number): number => ((rows[row + (k >> 5)] as number) >>> (k & 31)) & 1;
