import fc from "fast-check";
import { expect, test } from "vitest";
import { Pairs } from "./pairs";

test("tells the number that a pair was given last, as a map of maps would", () => {
  const number = fc.oneof(fc.nat(40), fc.nat(2 ** 31 - 1));
  fc.assert(
    fc.property(fc.array(fc.tuple(number, number, fc.nat()), { maxLength: 400 }), (all) => {
      const pairs = new Pairs();
      const known = new Map<string, number>();
      for (const [a, b, value] of all) {
        expect(pairs.get(a, b)).toBe(known.get(`${a} ${b}`) ?? -1);
        pairs.set(a, b, value);
        known.set(`${a} ${b}`, value);
      }
      for (const [a, b] of all) {
        expect(pairs.get(a, b)).toBe(known.get(`${a} ${b}`));
        expect(pairs.get(b, a)).toBe(known.get(`${b} ${a}`) ?? -1);
      }
    }),
  );
});

test("keeps every one of some thousand pairs, those too with the number 0, however often it grows, and the last number given", () => {
  const pairs = new Pairs();
  const all = Array.from({ length: 3000 }, (_, i) => [i % 60, Math.floor(i / 60)] as const);
  all.forEach(([a, b], i) => {
    pairs.set(a, b, i);
    expect(pairs.get(0, 0)).toBe(0);
  });
  expect(all.map(([a, b]) => pairs.get(a, b))).toEqual(all.map((_, i) => i));
  expect([pairs.get(60, 0), pairs.get(0, 50)]).toEqual([-1, -1]);
  all.forEach(([a, b], i) => {
    pairs.set(a, b, 2 * i);
  });
  expect(all.map(([a, b]) => pairs.get(a, b))).toEqual(all.map((_, i) => 2 * i));
});
