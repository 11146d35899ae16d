import { expect, test } from "vitest";
import { digraph, reachMany, topologicalOrder } from "./index";

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
