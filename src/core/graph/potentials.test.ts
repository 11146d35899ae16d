import { expect, test } from "vitest";
import { randomFrom } from "../base";
import { Potentials } from "./potentials";

interface Delay {
  readonly from: number;
  readonly to: number;
  readonly delay: number;
}
const packed = (list: readonly Delay[]) =>
  [Int32Array.from(list, (d) => d.from), Int32Array.from(list, (d) => d.to), Float64Array.from(list, (d) => d.delay)] as const;

/** Plain Bellman-Ford from every node at 0: whether some ring gains time. */
function gains(nodes: number, list: readonly Delay[]): boolean {
  const at = new Array<number>(nodes).fill(0);
  for (let round = 0; round <= nodes; round++) {
    let moved = false;
    for (const { from, to, delay } of list) {
      if ((at[from] as number) + delay <= (at[to] as number)) continue;
      at[to] = (at[from] as number) + delay;
      moved = true;
    }
    if (!moved) return false;
  }
  return true;
}

test("delays come and go: the same refusals as plain Bellman-Ford, with a ring that gains time", () => {
  const random = randomFrom(4);
  let refused = 0;
  for (let round = 0; round < 100; round++) {
    const nodes = random.int(2, 7);
    const list = Array.from(
      { length: 30 },
      (): Delay => ({ from: random.int(0, nodes - 1), to: random.int(0, nodes - 1), delay: random.int(-6, 4) }),
    );
    const times = new Potentials(nodes, ...packed(list));
    const now: number[] = [];
    list.forEach((_, arc) => {
      if (random.int(0, 3) === 0 && now.length > 0) times.remove(now.pop() as number);
      const before = [...times.at];
      const ring = times.add(arc);
      const all = [...now, arc].map((a) => list[a] as Delay);
      expect(ring !== null).toBe(gains(nodes, all));
      if (ring === null) {
        now.push(arc);
        for (const { from, to, delay } of all) expect(times.at[to]).toBeGreaterThanOrEqual((times.at[from] as number) + delay);
        return;
      }
      refused++;
      expect([...times.at]).toEqual(before);
      expect(ring.at(-1)).toBe(arc);
      expect(ring.every((a) => a === arc || now.includes(a))).toBe(true);
      const sum = ring.reduce((total, a) => total + (list[a]?.delay ?? 0), 0);
      expect(sum).toBeGreaterThan(0);
      ring.forEach((a, k) => {
        expect(list[a]?.to).toBe(list[ring[(k + 1) % ring.length] as number]?.from);
      });
    });
  }
  expect(refused).toBeGreaterThan(150);
});

test("an arc from a node to itself is refused only when it gains time", () => {
  const times = new Potentials(
    1,
    ...packed([
      { from: 0, to: 0, delay: 1 },
      { from: 0, to: 0, delay: 0 },
    ]),
  );
  expect(times.add(0)).toEqual([0]);
  expect(times.add(1)).toBeNull();
  expect(times.work).toBe(0);
});

test("work is the nodes moved", () => {
  const chain = [
    { from: 1, to: 2, delay: 1 },
    { from: 2, to: 3, delay: 1 },
    { from: 0, to: 1, delay: 5 },
  ];
  const times = new Potentials(4, ...packed(chain));
  for (const arc of [0, 1, 2]) expect(times.add(arc)).toBeNull();
  expect([...times.at]).toEqual([0, 5, 6, 7]);
  expect(times.work).toBe(2 - 1 + 1 + 3);
});

test("a node that is owed more on the way is moved once, by all that it is owed", () => {
  const list = [
    { from: 1, to: 3, delay: 2 },
    { from: 1, to: 2, delay: 2 },
    { from: 2, to: 3, delay: 2 },
    { from: 0, to: 1, delay: 3 },
  ];
  const times = new Potentials(4, ...packed(list));
  for (const arc of [0, 1, 2]) times.add(arc);
  const before = times.work;
  expect(times.add(3)).toBeNull();
  expect([...times.at]).toEqual([0, 3, 5, 7]);
  expect(times.work - before).toBe(3);
});
