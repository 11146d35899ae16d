import type { Digraph } from "./digraph";

/** Targets looked at in one pass: 32 words of 32 bits, so that memory stays at 128 bytes a node however many nodes there are. */
const words = 32;
const targets = 32 * words;

/**
 * For each question, 1 when arcs lead from `from[i]` to `to[i]` (a node does not lead to itself). Bit rows along the order, backwards.
 * @param order topological; O((n + m) n / 32) for many questions, less when they ask for few targets
 */
export function reachMany(graph: Digraph, order: Int32Array, from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
  const answer = new Uint8Array(from.length);
  const byBlock = new Map<number, number[]>();
  for (let i = 0; i < from.length; i++) {
    const block = Math.floor((to[i] as number) / targets);
    const list = byBlock.get(block);
    if (list) list.push(i);
    else byBlock.set(block, [i]);
  }
  const rows = new Int32Array(byBlock.size > 0 ? graph.nodes * words : 0);
  for (const [block, questions] of byBlock) {
    fill(graph, order, block * targets, rows);
    for (const i of questions) answer[i] = bit(rows, from[i] as number, (to[i] as number) - block * targets);
  }
  return answer;
}

/** For each arc, 1 when it follows from the others: a longer path leads the same way, or an arc with a lower number does. */
export function redundantArcs(graph: Digraph, order: Int32Array): Uint8Array {
  const redundant = new Uint8Array(graph.arcs);
  const rows = new Int32Array(graph.nodes * words);
  for (let first = 0; first < graph.nodes; first += targets) {
    fill(graph, order, first, rows);
    for (let u = 0; u < graph.nodes; u++) markRow(graph, u, first, rows, redundant);
  }
  return redundant;
}

/** An arc u -> v follows when another arc u -> w has w leading to v, or is the same arc with a lower number. */
function markRow(graph: Digraph, u: number, first: number, rows: Int32Array, redundant: Uint8Array): void {
  const start = graph.start[u] as number;
  const end = graph.start[u + 1] as number;
  if (end - start < 2) return;
  const through = new Int32Array(words);
  for (let at = start; at < end; at++) {
    const row = (graph.target[at] as number) * words;
    for (let w = 0; w < words; w++) through[w] = (through[w] as number) | (rows[row + w] as number);
  }
  const once = new Int32Array(words);
  for (let at = start; at < end; at++) {
    const v = (graph.target[at] as number) - first;
    if (v < 0 || v >= targets) continue;
    if (bit(through, 0, v) === 1 || bit(once, 0, v) === 1) redundant[graph.arc[at] as number] = 1;
    once[v >> 5] = (once[v >> 5] as number) | (1 << (v & 31));
  }
}

/** Row u: bit k is set when u leads to node `first + k`. */
function fill(graph: Digraph, order: Int32Array, first: number, rows: Int32Array): void {
  rows.fill(0);
  for (let i = order.length - 1; i >= 0; i--) {
    const u = order[i] as number;
    const row = u * words;
    for (let at = graph.start[u] as number; at < (graph.start[u + 1] as number); at++) {
      const v = graph.target[at] as number;
      const other = v * words;
      for (let w = 0; w < words; w++) rows[row + w] = (rows[row + w] as number) | (rows[other + w] as number);
      const k = v - first;
      if (k >= 0 && k < targets) rows[row + (k >> 5)] = (rows[row + (k >> 5)] as number) | (1 << (k & 31));
    }
  }
}

const bit = (rows: Int32Array, row: number, k: number): number => ((rows[row * words + (k >> 5)] as number) >>> (k & 31)) & 1;
