import { alg, Graph } from "@dagrejs/graphlib";
import { DirectedGraph } from "graphology";
import { topologicalGenerations, topologicalSort } from "graphology-dag";
import { describe, expect, it } from "vitest";
import type { ElapsedMinute } from "../../src/core/base";
import { earliest, latest, netOf, type Problem } from "../../src/core/schedule";
import oracles from "../published/oracles.json";
import { type LinkSpec, problemOf } from "./problem-of";

/**
 * Worked examples of networks with published early and late dates and slack; every example names its book, manual or handout in
 * test/published/oracles.json. Examples marked unusable follow another convention (starts before zero).
 */
interface Example {
  readonly id: string;
  readonly activities: readonly { readonly id: string; readonly dur: number }[];
  readonly relations: readonly { readonly i: string; readonly j: string; readonly type: string; readonly lag: number }[];
  readonly published: Values;
  readonly computed: Values;
  readonly usable: boolean;
}

interface Values {
  readonly duration?: number;
  readonly ES?: Readonly<Record<string, number>>;
  readonly EF?: Readonly<Record<string, number>>;
  readonly LS?: Readonly<Record<string, number>>;
  readonly LF?: Readonly<Record<string, number>>;
  readonly TF?: Readonly<Record<string, number>>;
  readonly critical?: readonly string[];
}

const examples = oracles.examples as unknown as Example[];
const usable = examples.filter((e) => e.usable);
/** Three-point durations come in sixths, others with up to three decimals. */
const scale = 6000;

function problem(e: Example): Problem {
  const row = new Map(e.activities.map((a, i) => [a.id, i]));
  return problemOf({
    jobs: e.activities.map((a) => ({ amount: Math.round(a.dur * scale) })),
    links: e.relations.map(({ i, j, type, lag }): LinkSpec => {
      const [from, to] = [row.get(i)!, row.get(j)!];
      const by = Math.round(lag * scale);
      if (by >= 0) return { from, to, ends: type as "FS", least: by };
      // A negative lag is an upper wait the other way round: end(i) - L <= end(j) reads end(i) <= end(j) + L.
      return { from: to, to: from, ends: `${type[1]}${type[0]}` as "FS", most: -by };
    }),
  });
}

function compare(e: Example, values: Values): number {
  const p = problem(e);
  const net = netOf(p);
  const early = earliest(p, net);
  expect(early.broken).toBe(-1);
  const finish = Math.max(...early.finish) as ElapsedMinute;
  const late = latest(p, net, finish);
  const tables: [Readonly<Record<string, number>> | undefined, (j: number) => number][] = [
    [values.ES, (j) => early.start[j]!],
    [values.EF, (j) => early.finish[j]!],
    [values.LS, (j) => late.start[j]!],
    [values.LF, (j) => late.finish[j]!],
    [values.TF, (j) => late.finish[j]! - early.finish[j]!],
  ];
  let checked = 0;
  // Sources round sums of rounded durations: up to 0.02 after a few.
  const close = (got: number, want: number, what: string): void => {
    expect(Math.abs(got / scale - want), `${e.id}: ${what}`).toBeLessThanOrEqual(0.0201);
    checked++;
  };
  if (values.duration !== undefined) close(finish, values.duration, "duration");
  e.activities.forEach(({ id }, j) => {
    for (const [table, of] of tables) if (table?.[id] !== undefined) close(of(j), table[id], id);
    if (values.critical !== undefined) {
      expect(late.start[j] === early.start[j], `${e.id}: ${id} without slack`).toBe(values.critical.includes(id));
      checked++;
    }
  });
  return checked;
}

describe("networks against published examples", () => {
  it("has all of them", () => {
    expect(examples).toHaveLength(45);
    expect(usable).toHaveLength(29);
  });

  let published = 0;
  it.each(usable.map((e) => [e.id, e] as const))("%s", (_, e) => {
    published += compare(e, e.published);
    expect(compare(e, e.computed)).toBeGreaterThan(0);
  });

  it("compared every printed value", () => {
    expect(published).toBe(669);
  });
});

describe("order and longest path against two graph libraries", () => {
  const chains = usable.filter((e) => e.relations.every((r) => r.type === "FS" && r.lag >= 0));

  it.each(chains.map((e) => [e.id, e] as const))("%s", (_, e) => {
    const p = problem(e);
    const net = netOf(p);
    const early = earliest(p, net);
    const graph = new DirectedGraph();
    const other = new Graph({ directed: true });
    for (const { id } of e.activities) {
      graph.addNode(`n ${id}`);
      other.setNode(id);
    }
    for (const { i, j } of e.relations) {
      graph.mergeDirectedEdge(`n ${i}`, `n ${j}`);
      other.setEdge(i, j);
    }
    expect(alg.isAcyclic(other)).toBe(true);
    const row = new Map(e.activities.map((a, k) => [`n ${a.id}`, k]));
    // Longest path by the library's order, in four lines.
    const finish = new Map<string, number>();
    for (const node of topologicalSort(graph)) {
      const start = Math.max(0, ...graph.inNeighbors(node).map((from) => finish.get(from)! + lagOf(e, from, node)));
      finish.set(node, start + p.amount[row.get(node)!]!);
      expect(early.start[row.get(node)!]).toBe(start);
    }
    const place = new Map([...net.order].map((job, k) => [job, k]));
    for (const [k, generation] of topologicalGenerations(graph).entries()) expect(generation.length, `${k}`).toBeGreaterThan(0);
    for (const { v, w } of other.edges()) expect(place.get(row.get(`n ${v}`)!)!).toBeLessThan(place.get(row.get(`n ${w}`)!)!);
  });

  it("covers them", () => {
    expect(chains.length).toBeGreaterThanOrEqual(12);
  });
});

function lagOf(e: Example, from: string, to: string): number {
  return Math.max(...e.relations.filter((r) => `n ${r.i}` === from && `n ${r.j}` === to).map((r) => Math.round(r.lag * scale)));
}
