import { alg, Graph } from "@dagrejs/graphlib";
import { DirectedGraph } from "graphology";
import { hasCycle, topologicalSort } from "graphology-dag";
import { describe, expect, test } from "vitest";
import { type Random, randomFrom } from "../base";
import {
  components,
  cycleWitness,
  type Digraph,
  digraph,
  longestPath,
  positions,
  reachable,
  reachMany,
  redundantArcs,
  reversed,
  shortestPath,
  topologicalOrder,
} from "./index";

type Arc = readonly [number, number];
const of = (nodes: number, arcs: readonly Arc[]): Digraph =>
  digraph(
    nodes,
    Int32Array.from(arcs, ([u]) => u),
    Int32Array.from(arcs, ([, v]) => v),
  );

/** Arcs with few repeats; forward only where they must form no ring. */
function randomArcs(random: Random, nodes: number, count: number, forward: boolean): Arc[] {
  const place = random.shuffled([...Array(nodes).keys()]);
  return Array.from({ length: count }, (): Arc => {
    const [i, j] = [random.int(0, nodes - 1), random.int(0, nodes - 1)];
    const [a, b] = forward ? [Math.min(i, j), Math.max(i, j) === Math.min(i, j) ? (i + 1) % nodes : Math.max(i, j)] : [i, j];
    const [u, v] = forward && a > b ? [b, a] : [a, b];
    return [place[u] as number, place[v] as number];
  });
}

/** By trying every step: the plain way, as a check. */
function leads(nodes: number, arcs: readonly Arc[]): boolean[][] {
  const table = Array.from({ length: nodes }, () => new Array<boolean>(nodes).fill(false));
  for (const [u, v] of arcs) (table[u] as boolean[])[v] = true;
  for (let m = 0; m < nodes; m++)
    for (let u = 0; u < nodes; u++) if (table[u]?.[m]) for (let v = 0; v < nodes; v++) if (table[m]?.[v]) (table[u] as boolean[])[v] = true;
  return table;
}

describe("packing", () => {
  test("arcs of a node in the order given, and turned round", () => {
    const graph = of(3, [
      [2, 0],
      [0, 1],
      [2, 1],
      [0, 2],
    ]);
    expect([graph.nodes, graph.arcs]).toEqual([3, 4]);
    expect([...graph.start]).toEqual([0, 2, 2, 4]);
    expect([...graph.arc]).toEqual([1, 3, 0, 2]);
    expect([...graph.target]).toEqual([1, 2, 0, 1]);
    const back = reversed(graph);
    expect([...back.start]).toEqual([0, 1, 3, 4]);
    expect([...back.arc]).toEqual([0, 1, 2, 3]);
    expect([...back.target]).toEqual([2, 0, 2, 0]);
  });

  test("only as many arcs as are said", () => {
    expect([...digraph(2, Int32Array.of(0, 1), Int32Array.of(1, 0), 1).target]).toEqual([1]);
  });
});

describe("order", () => {
  test("ties by the lowest node", () => {
    expect([
      ...(topologicalOrder(
        of(5, [
          [4, 0],
          [3, 1],
        ]),
      ) ?? []),
    ]).toEqual([2, 3, 1, 4, 0]);
    expect([...positions(Int32Array.of(2, 0, 1))]).toEqual([1, 2, 0]);
  });

  test("the same graphs have one as two public libraries say (@dagrejs/graphlib, graphology-dag)", () => {
    const random = randomFrom(3);
    let rings = 0;
    for (let i = 0; i < 120; i++) {
      const nodes = random.int(2, 12);
      const arcs = randomArcs(random, nodes, random.int(1, 2 * nodes), random.int(0, 1) === 1);
      const [other, third] = [new Graph(), new DirectedGraph()];
      for (let u = 0; u < nodes; u++) {
        other.setNode(String(u));
        third.addNode(u);
      }
      for (const [u, v] of arcs) {
        other.setEdge(String(u), String(v));
        third.mergeEdge(u, v);
      }
      const order = topologicalOrder(of(nodes, arcs));
      expect(order !== null).toBe(alg.isAcyclic(other));
      expect(order === null).toBe(hasCycle(third));
      if (order === null) {
        rings++;
        continue;
      }
      expect([...order].sort((a, b) => a - b)).toEqual([...Array(nodes).keys()]);
      expect(topologicalSort(third)).toHaveLength(nodes);
      const at = positions(order);
      for (const [u, v] of arcs) expect(at[u] as number).toBeLessThan(at[v] as number);
    }
    expect(rings).toBeGreaterThan(20);
  });
});

describe("rings", () => {
  test("a witness is a closed walk of arcs that exist", () => {
    const random = randomFrom(5);
    let rings = 0;
    for (let i = 0; i < 120; i++) {
      const nodes = random.int(2, 10);
      const arcs = randomArcs(random, nodes, random.int(1, 2 * nodes), random.int(0, 2) > 0);
      const graph = of(nodes, arcs);
      const ring = cycleWitness(graph);
      expect(ring === null).toBe(topologicalOrder(graph) !== null);
      if (ring === null) continue;
      rings++;
      expect(ring.length).toBeGreaterThan(0);
      expect(new Set(ring).size).toBe(ring.length);
      ring.forEach((arc, k) => {
        const next = ring[(k + 1) % ring.length] as number;
        expect(arcs[arc]?.[1]).toBe(arcs[next]?.[0]);
      });
    }
    expect(rings).toBeGreaterThan(20);
  });

  test("components: the same groups as @dagrejs/graphlib, numbered against the arcs", () => {
    const random = randomFrom(7);
    for (let i = 0; i < 80; i++) {
      const nodes = random.int(1, 12);
      const arcs = randomArcs(random, nodes, random.int(0, 2 * nodes), false);
      const other = new Graph();
      for (let u = 0; u < nodes; u++) other.setNode(String(u));
      for (const [u, v] of arcs) other.setEdge(String(u), String(v));
      const { count, of: group, size } = components(of(nodes, arcs));
      const mine = Array.from({ length: count }, (_, c) =>
        [...group.keys()]
          .filter((u) => group[u] === c)
          .map(String)
          .sort(),
      );
      const theirs = alg.tarjan(other).map((c) => [...c].sort());
      const sorted = (groups: string[][]) => groups.map((g) => g.join()).sort();
      expect(sorted(mine)).toEqual(sorted(theirs));
      expect([...size]).toEqual(mine.map((g) => g.length));
      for (const [u, v] of arcs) expect(group[u] as number).toBeGreaterThanOrEqual(group[v] as number);
    }
  });

  test("nothing is too deep", () => {
    const n = 50_000;
    const chain = of(
      n,
      Array.from({ length: n - 1 }, (_, i): Arc => [i, i + 1]),
    );
    expect(topologicalOrder(chain)?.[n - 1]).toBe(n - 1);
    expect(cycleWitness(chain)).toBeNull();
    expect(components(chain).count).toBe(n);
    expect(components(of(n, [...Array.from({ length: n - 1 }, (_, i): Arc => [i, i + 1]), [n - 1, 0]])).size[0]).toBe(n);
  });
});

describe("paths", () => {
  test("longest, against trying backwards and the free search of @dagrejs/graphlib with delays turned round", () => {
    const random = randomFrom(11);
    for (let i = 0; i < 80; i++) {
      const nodes = random.int(2, 10);
      const arcs = randomArcs(random, nodes, random.int(1, 2 * nodes), true);
      const graph = of(nodes, arcs);
      const delays = arcs.map(() => random.int(0, 9));
      const order = topologicalOrder(graph) as Int32Array;
      const { at, by } = longestPath(graph, order, (arc) => delays[arc] as number);
      const back = (v: number): number => Math.max(0, ...arcs.flatMap(([u, w], a) => (w === v ? [back(u) + (delays[a] as number)] : [])));
      for (let v = 0; v < nodes; v++) {
        expect(at[v]).toBe(back(v));
        const last = by[v] as number;
        if (last >= 0) expect((at[arcs[last]?.[0] as number] as number) + (delays[last] as number)).toBe(at[v]);
        else expect(at[v]).toBe(0);
      }
    }
    const tie = longestPath(
      of(3, [
        [1, 2],
        [0, 2],
      ]),
      Int32Array.of(0, 1, 2),
      () => 4,
    );
    expect([[...tie.at], [...tie.by]]).toEqual([
      [0, 0, 4],
      [-1, -1, 0],
    ]);
  });

  test("shortest: as few arcs as Dijkstra of @dagrejs/graphlib, along those allowed", () => {
    const random = randomFrom(13);
    for (let i = 0; i < 80; i++) {
      const nodes = random.int(2, 10);
      const arcs = randomArcs(random, nodes, random.int(1, 3 * nodes), false);
      const graph = of(nodes, arcs);
      const use = (arc: number) => arc % 4 !== 0;
      const other = new Graph();
      for (let u = 0; u < nodes; u++) other.setNode(String(u));
      arcs.forEach(([u, v], a) => {
        if (use(a)) other.setEdge(String(u), String(v));
      });
      const theirs = alg.dijkstra(other, "0");
      const seen = reachable(graph, 0, use);
      for (let v = 1; v < nodes; v++) {
        const path = shortestPath(graph, 0, v, use);
        const distance = theirs[String(v)]?.distance ?? Number.POSITIVE_INFINITY;
        expect(path === null ? Number.POSITIVE_INFINITY : path.length).toBe(distance);
        expect(seen[v]).toBe(path === null ? 0 : 1);
        let node = 0;
        for (const arc of path ?? []) {
          expect(use(arc)).toBe(true);
          expect(arcs[arc]?.[0]).toBe(node);
          node = arcs[arc]?.[1] as number;
        }
        if (path !== null) expect(node).toBe(v);
      }
    }
    expect(shortestPath(of(1, []), 0, 0)).toEqual(new Int32Array());
    expect([...reachable(of(2, [[0, 1]]), 0)]).toEqual([1, 1]);
  });
});

describe("reach and reduction", () => {
  test("many questions at once, also beyond one block of targets", () => {
    const random = randomFrom(17);
    for (const nodes of [3, 8, 40]) {
      for (let i = 0; i < 12; i++) {
        const arcs = randomArcs(random, nodes, random.int(1, 2 * nodes), true);
        const graph = of(nodes, arcs);
        const pairs = Array.from({ length: nodes * nodes }, (_, k): Arc => [Math.floor(k / nodes), k % nodes]);
        const table = leads(nodes, arcs);
        const answer = reachMany(
          graph,
          topologicalOrder(graph) as Int32Array,
          pairs.map(([u]) => u),
          pairs.map(([, v]) => v),
        );
        expect([...answer]).toEqual(pairs.map(([u, v]) => (table[u]?.[v] ? 1 : 0)));
      }
    }
    const n = 3000;
    const chain = of(
      n,
      Array.from({ length: n - 1 }, (_, i): Arc => [i, i + 1]),
    );
    const order = topologicalOrder(chain) as Int32Array;
    expect([...reachMany(chain, order, [0, 5, 2999, 1500, 1023, 1024], [2999, 5, 0, 1499, 1024, 1023])]).toEqual([1, 0, 0, 0, 1, 0]);
    expect([...reachMany(chain, order, [], [])]).toEqual([]);
  });

  test("an arc is redundant when the rest still lead the same way; of doubles only the first stays", () => {
    const random = randomFrom(19);
    for (let i = 0; i < 80; i++) {
      const nodes = random.int(2, 9);
      const arcs = randomArcs(random, nodes, random.int(1, 3 * nodes), true);
      const graph = of(nodes, arcs);
      const redundant = redundantArcs(graph, topologicalOrder(graph) as Int32Array);
      const kept = arcs.filter((_, a) => redundant[a] === 0);
      expect(leads(nodes, kept)).toEqual(leads(nodes, arcs));
      for (const arc of kept)
        expect(
          leads(
            nodes,
            kept.filter((other) => other !== arc),
          ),
        ).not.toEqual(leads(nodes, arcs));
      arcs.forEach(([u, v], a) => {
        const first = arcs.findIndex(([x, y]) => x === u && y === v);
        if (a !== first) expect(redundant[a]).toBe(1);
      });
    }
  });

  test("also far apart", () => {
    const n = 2500;
    const arcs = [...Array.from({ length: n - 1 }, (_, i): Arc => [i, i + 1]), [0, n - 1], [1100, 1101]] as Arc[];
    const redundant = redundantArcs(of(n, arcs), topologicalOrder(of(n, arcs)) as Int32Array);
    expect([...redundant.keys()].filter((a) => redundant[a] === 1)).toEqual([n - 1, n]);
  });
});
