import { expect, test, vi } from "vitest";
import { each, lastOf, remembered } from "./remembered";

test("what is made of two things is made once for them, and anew for either other", () => {
  const make = vi.fn((a: { n: number }, b: { n: number }) => a.n * 10 + b.n);
  const of = remembered(make);
  const [a, b, c] = [{ n: 1 }, { n: 2 }, { n: 3 }];
  expect([of(a, b), of(a, b), of(a, c), of(c, b)]).toEqual([12, 12, 13, 32]);
  expect(make).toHaveBeenCalledTimes(3);
});

test("each key is asked for once, also where nothing is the answer", () => {
  const make = vi.fn((key: number) => (key > 1 ? null : undefined));
  const of = each(make);
  expect([of(1), of(1), of(2), of(2)]).toEqual([undefined, undefined, null, null]);
  expect(make).toHaveBeenCalledTimes(2);
});

test("what is made last is kept while it is asked for with the same, in new objects or the same ones", () => {
  const of = lastOf(({ list, word }: { list: readonly { n: number }[]; word: string | null }) => ({
    told: `${word} ${list.map(({ n }) => n)}`,
  }));
  const first = of({ list: [{ n: 1 }, { n: 2 }], word: null });
  expect(of({ list: [{ n: 1 }, { n: 2 }], word: null })).toBe(first);
  for (const other of [
    { list: [{ n: 1 }, { n: 3 }], word: null },
    { list: [{ n: 1 }], word: null },
    { list: [{ n: 1 }, { n: 2 }], word: "" },
  ]) {
    expect(of(other)).not.toBe(first);
    expect(of(other).told).toBe(`${other.word} ${other.list.map(({ n }) => n)}`);
  }
  expect(of({ list: [{ n: 1 }, { n: 2 }], word: null })).toEqual(first);
});
