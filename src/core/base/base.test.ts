import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { copyOf, distance, Heap, InvariantError, idPattern, invariant, isWithin, limits, nearest, present, randomFrom, writtenId } from ".";

describe("heap", () => {
  test("gives back what went in, smallest key first, equal keys by the smaller item, whatever the order of going in", () => {
    const entries = fc.array(fc.tuple(fc.nat(20), fc.integer({ min: -5, max: 5 })), { maxLength: 60 });
    fc.assert(
      fc.property(entries, (list) => {
        const heap = new Heap();
        for (const [item, key] of list) heap.push(item, key);
        const sorted = list.toSorted((a, b) => a[1] - b[1] || a[0] - b[0]);
        expect(heap.size).toBe(list.length);
        for (const [item, key] of sorted) {
          expect(heap.peekKey()).toBe(key);
          expect(heap.pop()).toBe(item);
        }
        expect([heap.size, heap.pop(), heap.peekKey()]).toEqual([0, undefined, undefined]);
      }),
    );
  });

  test("pushes and pops in turn", () => {
    const commands = fc.array(fc.option(fc.nat(50)), { maxLength: 80 });
    fc.assert(
      fc.property(commands, (list) => {
        const heap = new Heap();
        const plain: number[] = [];
        for (const item of list) {
          if (item === null) expect(heap.pop()).toBe(plain.sort((a, b) => a - b).shift());
          else {
            heap.push(item, item);
            plain.push(item);
          }
        }
      }),
    );
  });
});

describe("chance", () => {
  test("the same number gives the same sequence, another one another", () => {
    const draw = (start: number) => {
      const random = randomFrom(start);
      return [random.int(1, 1000), random.fraction(), random.pick(["a", "b", "c", "d"]), random.shuffled([1, 2, 3, 4, 5, 6, 7])];
    };
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  test("stays in its range, reaches both ends, and shuffles without loss", () => {
    const random = randomFrom(1);
    const drawn = new Set(Array.from({ length: 400 }, () => random.int(-2, 3)));
    expect([...drawn].sort((a, b) => a - b)).toEqual([-2, -1, 0, 1, 2, 3]);
    const list = [1, 2, 3, 4, 5];
    const orders = new Set(Array.from({ length: 2000 }, () => random.shuffled(list).join("")));
    expect(orders.size).toBe(120);
    expect(list).toEqual([1, 2, 3, 4, 5]);
    const fractions = Array.from({ length: 1000 }, () => random.fraction());
    expect(fractions.every((value) => value >= 0 && value < 1)).toBe(true);
    expect(fractions.reduce((sum, value) => sum + value, 0) / 1000).toBeCloseTo(0.5, 1);
  });
});

describe("nearest", () => {
  test.each([
    ["cgae", "cage", 1],
    ["tie-bar", "tie-bars", 1],
    ["", "ab", 2],
    ["kitten", "sitting", 3],
    ["ca", "abc", 3],
    ["same", "same", 0],
  ])("%s and %s are %d apart", (a, b, far) => {
    expect(distance(a, b, 5)).toBe(far);
    expect(distance(b, a, 5)).toBe(far);
    if (far > 0) expect(distance(a, b, far - 1)).toBe(Number.POSITIVE_INFINITY);
  });

  test("the first of the closest, and none when nothing is close", () => {
    expect(nearest("pour-slap", ["pour-wall", "pour-slab", "pour-slag"])).toBe("pour-slab");
    expect(nearest("x", ["abc", "weekends"])).toBe(null);
    expect(nearest("ab", ["ba"])).toBe("ba");
    expect(nearest("anything", [])).toBe(null);
  });
});

describe("small things", () => {
  test("ids", () => {
    expect([writtenId("post#12"), writtenId("post"), copyOf("post#12"), copyOf("post")]).toEqual(["post", "post", 12, 0]);
    expect(["a", "tie-bars", "post#2"].every((id) => idPattern.test(id))).toBe(true);
    expect(["", "A", "2a", "a#0", "a b", "a#", "-a"].some((id) => idPattern.test(id))).toBe(false);
  });

  test("limits hold both ends, and whole where they say so", () => {
    expect([isWithin(limits.rounds, 1), isWithin(limits.rounds, 20), isWithin(limits.rounds, 21), isWithin(limits.rounds, 1.5)]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(isWithin(limits.wind, Number.NaN)).toBe(false);
    for (const range of Object.values(limits)) expect(range.least).toBeLessThan(range.most);
  });

  test("an invariant throws our own error only when it does not hold", () => {
    expect(() => invariant("yes", "never")).not.toThrow();
    expect(() => invariant(false, "a thing")).toThrow(new InvariantError("a thing"));
    expect(() => present(null, "gone")).toThrow(InvariantError);
    expect(present(0, "gone")).toBe(0);
  });
});
