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
