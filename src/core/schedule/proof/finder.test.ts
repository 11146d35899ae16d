import fc from "fast-check";
import { expect, test } from "vitest";
import { never, notEver } from "../../base";
import { lastAtMost } from "../last-at-most";
import { Finder } from "./finder";

test("finds what halving the whole list finds", () => {
  const rising = fc
    .array(fc.oneof(fc.nat(3), fc.nat(60), fc.nat(100_000)), { minLength: 1, maxLength: 60 })
    .map((steps) => Int32Array.from(steps, (_, k) => steps.slice(0, k + 1).reduce((a, b) => a + b, -50)));
  fc.assert(
    fc.property(rising, fc.array(fc.integer({ min: -200, max: 2_000_000 }), { maxLength: 50 }), (list, others) => {
      const finder = new Finder(list);
      for (const t of [...list, ...list.map((s) => s - 1), ...list.map((s) => s + 1), ...others, never, notEver])
        expect(finder.at(t)).toBe(lastAtMost(list, t));
    }),
    { numRuns: 300 },
  );
});
