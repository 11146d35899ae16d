import fc from "fast-check";
import { expect, test } from "vitest";
import { Usage } from "./usage";

const until = 40;
const span = fc.record({ from: fc.nat(until - 1), length: fc.nat(until), number: fc.integer({ min: 1, max: 5 }) });

/** What is taken at each instant, and that a step's end is where the next one begins. */
function taken(usage: Usage): number[] {
  return Array.from({ length: until }, (_, t) => {
    const k = usage.at(t);
    expect(usage.times[k]!).toBeLessThanOrEqual(t);
    if (k + 1 < usage.size) expect(usage.times[k + 1]!).toBeGreaterThan(t);
    return usage.used[k]!;
  });
}

test("in few steps or with one an instant, what is taken adds up, and what is taken out again leaves what there was", () => {
  fc.assert(
    fc.property(fc.array(span, { maxLength: 12 }), fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }), (spans, goes) => {
      const times = Int32Array.of(0, 9, 30);
      const missing = Int32Array.of(0, 2, 1);
      const wanted = Array.from({ length: until }, (_, t) => (t < 9 ? 0 : t < 30 ? 2 : 1));
      const before = [...wanted];
      const single = new Usage(times, missing, until);
      const steps = new Usage(times, missing, 1_000_000);
      const both = [single, steps];
      const enter = (s: (typeof spans)[number], sign: 1 | -1): void => {
        const to = Math.min(until, s.from + s.length);
        for (const u of both) u.add(s.from, to, sign * s.number);
        for (let t = s.from; t < to; t++) wanted[t]! += sign * s.number;
      };
      for (const s of spans) enter(s, 1);
      for (const u of both) expect(taken(u)).toEqual(wanted);
      spans.forEach((s, k) => {
        if (goes[k]) enter(s, -1);
      });
      for (const u of both) expect(taken(u)).toEqual(wanted);
      spans.forEach((s, k) => {
        if (!goes[k]) enter(s, -1);
      });
      expect(wanted).toEqual(before);
      for (const u of both) expect(taken(u)).toEqual(before);
      expect(steps.size).toBe(3);
      expect(single.size).toBe(until + 1);
    }),
  );
});

test("what is held for good goes on after the last instant", () => {
  for (const until of [40, 1_000_000]) {
    const usage = new Usage(Int32Array.of(0), Int32Array.of(0), until);
    usage.add(12, 2_000_000_000, 3);
    expect([0, 11, 12, 39, 40, 100].map((t) => usage.used[usage.at(t)])).toEqual([0, 0, 3, 3, 3, 3]);
  }
});
