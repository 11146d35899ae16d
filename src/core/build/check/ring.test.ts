import { alg, Graph } from "@dagrejs/graphlib";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rings, ungrounded } from "./ring";

const graphs = fc
  .integer({ min: 1, max: 9 })
  .chain((count) => fc.tuple(fc.constant(count), fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 20 })));
const nextOf = (edges: readonly (readonly [number, number])[]) => (node: number) =>
  edges.filter(([from]) => from === node).map(([, to]) => to);

describe("rings", () => {
  // Second opinion: the strongly connected components of @dagrejs/graphlib.
  test("one for each knot that a graph library finds, and each a ring", () => {
    fc.assert(
      fc.property(graphs, ([count, edges]) => {
        const graph = new Graph();
        for (let node = 0; node < count; node++) graph.setNode(String(node));
        for (const [from, to] of edges) graph.setEdge(String(from), String(to));
        const found = rings(count, nextOf(edges));
        expect(found).toHaveLength(alg.findCycles(graph).length);
        for (const ring of found) {
          expect(new Set(ring).size).toBe(ring.length);
          ring.forEach((from, i) => {
            expect(edges).toContainEqual([from, ring[(i + 1) % ring.length]]);
          });
        }
      }),
    );
  });

  test("through its first node the ring is a shortest one", () => {
    const edges = [
      [0, 1],
      [1, 2],
      [2, 0],
      [1, 0],
      [3, 0],
    ] as const;
    expect(rings(4, nextOf(edges))).toEqual([[0, 1]]);
    expect(rings(1, () => [0])).toEqual([[0]]);
  });

  test("a chain of 20,000 steps in one ring overflows nothing", () => {
    const count = 20_000;
    const [ring] = rings(count, (node) => [(node + 1) % count]);
    expect(ring).toHaveLength(count);
    expect(rings(count, (node) => (node === 0 ? [0, 1] : node + 1 < count ? [node + 1] : []))).toEqual([[0]]);
  });
});

describe("ungrounded", () => {
  /** The slow obvious version: go round until nothing changes. */
  const slowly = (sets: readonly (readonly (readonly number[])[])[]): number[] => {
    const grounded = new Set<number>();
    for (let size = -1; size !== grounded.size; ) {
      size = grounded.size;
      sets.forEach((alternatives, node) => {
        if (alternatives.length === 0 || alternatives.some((set) => set.every((member) => grounded.has(member)))) grounded.add(node);
      });
    }
    return sets.map((_, node) => (grounded.has(node) ? 0 : 1));
  };

  test("equals going round until nothing changes", () => {
    const cases = fc
      .integer({ min: 1, max: 7 })
      .chain((count) =>
        fc.array(fc.array(fc.array(fc.nat(count - 1), { maxLength: 3 }), { maxLength: 3 }), { minLength: count, maxLength: count }),
      );
    fc.assert(
      fc.property(cases, (sets) => {
        expect([...ungrounded(sets.length, (node) => sets[node] ?? [])]).toEqual(slowly(sets));
      }),
    );
  });
});
