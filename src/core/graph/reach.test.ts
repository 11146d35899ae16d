import { expect, test } from "vitest";
import { digraph, reachMany, redundantArcs, topologicalOrder } from "./index";

test("more targets than one block holds: twelve hundred arcs side by side, each head asked for from three of the tails", () => {
  const pairs = 1200;
  const graph = digraph(
    2 * pairs,
    Int32Array.from({ length: pairs }, (_, i) => i),
    Int32Array.from({ length: pairs }, (_, i) => pairs + i),
  );
  const from = Array.from({ length: pairs }, (_, i) => [i, (i + 1) % pairs, (i + 1024) % pairs]).flat();
  const to = Array.from({ length: pairs }, (_, i) => [pairs + i, pairs + i, pairs + i]).flat();
  const answer = reachMany(graph, topologicalOrder(graph) as Int32Array, from, to);
  expect([...answer]).toEqual(from.map((u, i) => (to[i] === u + pairs ? 1 : 0)));
});

test("of thirteen hundred nodes in a row, with arcs that pass over some, those follow that pass over", () => {
  const nodes = 1300;
  // Not numbered as they stand, so that order and number differ.
  const node = (place: number): number => (place * 7) % nodes;
  const row = Array.from({ length: nodes - 1 }, (_, i) => [i, i + 1] as const);
  const over = Array.from({ length: nodes - 1 }, (_, i) => [i, Math.min(nodes - 1, i + 2 + (i % 5) * 300)] as const).filter(
    ([a, b]) => b > a + 1,
  );
  const arcs = [...over.slice(0, 600), ...row, ...over.slice(600)];
  const graph = digraph(
    nodes,
    Int32Array.from(arcs, ([a]) => node(a)),
    Int32Array.from(arcs, ([, b]) => node(b)),
  );
  const follows = redundantArcs(graph, topologicalOrder(graph) as Int32Array);
  expect([...follows]).toEqual(arcs.map(([a, b]) => (b > a + 1 ? 1 : 0)));
});

test("side by side nothing follows, whichever block its target stands in", () => {
  const pairs = 1200;
  const from = Int32Array.from({ length: pairs }, (_, i) => i);
  const to = Int32Array.from({ length: pairs }, (_, i) => pairs + ((i * 7) % pairs));
  const graph = digraph(2 * pairs, from, to);
  expect(redundantArcs(graph, topologicalOrder(graph) as Int32Array).some((yes) => yes === 1)).toBe(false);
  const twice = digraph(2 * pairs, Int32Array.of(...from, ...from), Int32Array.of(...to, ...to));
  const follows = redundantArcs(twice, topologicalOrder(twice) as Int32Array);
  expect([...follows]).toEqual(Array.from({ length: 2 * pairs }, (_, i) => (i < pairs ? 0 : 1)));
});
