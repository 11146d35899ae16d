import fc from "fast-check";
import { expect, test } from "vitest";
import { plainest } from "./quorum";

const numbers = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), fc.integer({ min: 1, max: 4 })).map((by) => new Map(Object.entries(by)));

test("the plainest quorum is there exactly when the one it stands for is, whichever calendars are open", () => {
  fc.assert(
    fc.property(numbers, fc.integer({ min: 0, max: 9 }), (people, number) => {
      const plain = plainest({ number, people });
      for (let open = 0; open < 16; open += 1) {
        const there = (by: ReadonlyMap<string, number>) =>
          [...by].reduce((sum, [calendar, n]) => sum + ((open >> "abcd".indexOf(calendar)) & 1) * n, 0);
        expect(there(plain.people) >= plain.number).toBe(there(people) >= number);
      }
    }),
  );
});

test.each([
  [2, { a: 2 }, 1, { a: 1 }],
  [2, { a: 1, b: 2 }, 1, { b: 1 }],
  [4, { a: 2, b: 4 }, 1, { b: 1 }],
  [5, { a: 2, b: 4 }, 2, { a: 1, b: 1 }],
  [1, { a: 2, b: 4 }, 1, { a: 1, b: 1 }],
  [3, { a: 2, b: 1, c: 1 }, 3, { a: 2, b: 1, c: 1 }],
  [7, { a: 2, b: 4 }, 1, {}],
  [0, { a: 2 }, 0, {}],
] as [number, Record<string, number>, number, Record<string, number>][])("%i of %o is %i of %o", (number, people, plain, by) => {
  expect(plainest({ number, people: new Map(Object.entries(people)) })).toEqual({ number: plain, people: new Map(Object.entries(by)) });
});
