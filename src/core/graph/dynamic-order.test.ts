import { describe, expect, test } from "vitest";
import { randomFrom } from "../base";
import { DynamicOrder } from "./dynamic-order";

const ends = (arcs: readonly (readonly [number, number])[]) =>
  [Int32Array.from(arcs, ([u]) => u), Int32Array.from(arcs, ([, v]) => v)] as const;

describe("an order kept up", () => {
  test("arcs come and go: the same refusals, reach and paths as by looking afresh", () => {
    const random = randomFrom(2);
    let refused = 0;
    for (let round = 0; round < 60; round++) {
      const nodes = random.int(3, 9);
      const arcs = Array.from({ length: 40 }, () => [random.int(0, nodes - 1), random.int(0, nodes - 1)] as const);
      const start = round % 2 === 0 ? null : Int32Array.from(random.shuffled([...Array(nodes).keys()]));
      const order = new DynamicOrder(nodes, ...ends(arcs), start);
      const now: number[] = [];
      const leads = (u: number, v: number, seen = new Set([u])): boolean =>
        u === v ||
        now.some(
          (a) =>
            arcs[a]?.[0] === u && !seen.has(arcs[a]?.[1] as number) && leads(arcs[a]?.[1] as number, v, seen.add(arcs[a]?.[1] as number)),
        );
      for (let arc = 0; arc < arcs.length; arc++) {
        if (random.int(0, 3) === 0 && now.length > 0) order.remove(now.pop() as number);
        const [u, v] = arcs[arc] as readonly [number, number];
        const ring = leads(v, u);
        expect(order.reaches(v, u)).toBe(ring);
        expect(order.add(arc)).toBe(!ring);
        if (ring) refused++;
        else now.push(arc);
        for (const a of now) expect(order.at[arcs[a]?.[0] as number]).toBeLessThan(order.at[arcs[a]?.[1] as number] as number);
        expect([...order.at].sort((a, b) => a - b)).toEqual([...Array(nodes).keys()]);
        const [x, y] = [random.int(0, nodes - 1), random.int(0, nodes - 1)];
        const path = order.path(x, y, () => true);
        expect(path !== null).toBe(leads(x, y));
        let at = x;
        for (const a of path ?? []) {
          expect(now).toContain(a);
          expect(arcs[a]?.[0]).toBe(at);
          at = arcs[a]?.[1] as number;
        }
        if (path !== null) expect(at).toBe(y);
      }
    }
    expect(refused).toBeGreaterThan(150);
  });

  test("a path is the shortest along arcs that may be used", () => {
    const arcs = [
      [0, 1],
      [1, 2],
      [0, 2],
      [2, 3],
    ] as const;
    const order = new DynamicOrder(4, ...ends(arcs), null);
    for (let a = 0; a < 4; a++) expect(order.add(a)).toBe(true);
    expect(order.path(0, 3, () => true)).toEqual([2, 3]);
    expect(order.path(0, 3, (a) => a !== 2)).toEqual([0, 1, 3]);
    expect(order.path(0, 3, (a) => a !== 3)).toBeNull();
    expect(order.path(3, 3, () => true)).toEqual([]);
  });

  test("starts from the order it is given and leaves it alone where it suits", () => {
    const order = new DynamicOrder(
      3,
      ...ends([
        [2, 0],
        [0, 2],
      ]),
      Int32Array.of(2, 1, 0),
    );
    expect([...order.at]).toEqual([2, 1, 0]);
    expect(order.add(0)).toBe(true);
    expect([...order.at]).toEqual([2, 1, 0]);
    expect(order.work).toBe(0);
    expect(order.add(1)).toBe(false);
    expect(order.work).toBeGreaterThan(0);
    order.remove(0);
    expect(order.add(1)).toBe(true);
    expect([...order.at]).toEqual([0, 1, 2].map((u) => order.at[u]));
    expect(order.at[0]).toBeLessThan(order.at[2] as number);
  });

  test("more arcs may be made known later", () => {
    const order = new DynamicOrder(3, ...ends([[0, 1]]), null);
    order.add(0);
    order.widen(
      ...ends([
        [0, 1],
        [1, 2],
        [2, 0],
      ]),
    );
    expect([order.add(1), order.add(2)]).toEqual([true, false]);
    expect(order.path(0, 2, () => true)).toEqual([0, 1]);
  });

  test("a longer way round that is found later does not lengthen a path", () => {
    const arcs = [
      [0, 1],
      [0, 2],
      [1, 2],
      [2, 3],
      [3, 4],
    ] as const;
    const order = new DynamicOrder(5, ...ends(arcs), null);
    for (const arc of arcs.keys()) order.add(arc);
    expect(order.path(0, 4, () => true)).toEqual([1, 3, 4]);
  });

  test("only nodes that stand between the ends are looked at", () => {
    const arcs = [
      [0, 1],
      [1, 2],
      [0, 4],
      [4, 5],
      [5, 3],
    ] as const;
    const order = new DynamicOrder(6, ...ends(arcs), null);
    for (let arc = 0; arc < 4; arc++) order.add(arc);
    const spent = (question: () => unknown): number => {
      const before = order.work;
      question();
      return order.work - before;
    };
    expect(order.work).toBe(0);
    expect(spent(() => order.reaches(2, 0))).toBe(0);
    expect(spent(() => order.path(0, 2, () => true))).toBe([0, 1, 2].length);
    // 5 -> 3: what 3 leads to is 3 alone; of what leads to 5, 4 stands behind 3 and 0 does not.
    expect(spent(() => order.add(4))).toBe([3].length + [5, 4].length);
    expect([0, 4, 5, 3].map((u) => order.at[u])).toEqual([0, 3, 4, 5]);
  });
});
