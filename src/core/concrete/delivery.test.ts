import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loads, stands_min } from ".";

describe("loads", () => {
  test("two equal ones where one truck is a little too small, the second wanted when the first is empty", () => {
    expect(loads(10, 9, 20, null)).toEqual([
      { load_m3: 5, after_min: 0, stands_min: 15 },
      { load_m3: 5, after_min: 15, stands_min: 15 },
    ]);
    expect(loads(9, 9, 20, null)).toHaveLength(1);
  });

  test("a short pause is waited out by the truck that is there", () => {
    expect(loads(6, 7, 20, { after_m3: 1, lasts_min: 30 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 48 }]);
  });

  test("a pause that would keep it too long parts the order", () => {
    expect(loads(6, 7, 20, { after_m3: 1, lasts_min: 60 })).toEqual([
      { load_m3: 1, after_min: 0, stands_min: 3 },
      { load_m3: 5, after_min: 63, stands_min: 15 },
    ]);
  });

  // Six cubic metres at 4 an hour keep a truck 90 minutes without any pause.
  test("a pause that parts nothing leaves even a load that stands too long in one piece", () => {
    const one = (pause: { after_m3: number; lasts_min: number } | null) => loads(6, 7, 4, pause);
    expect(one(null)).toEqual([{ load_m3: 6, after_min: 0, stands_min: 90 }]);
    expect(one({ after_m3: 3, lasts_min: 0 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 90 }]);
    expect(one({ after_m3: 0, lasts_min: 30 })).toEqual([{ load_m3: 6, after_min: 30, stands_min: 90 }]);
    expect(one({ after_m3: -1, lasts_min: 30 })).toEqual([{ load_m3: 6, after_min: 30, stands_min: 90 }]);
    expect(one({ after_m3: 6, lasts_min: 30 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 90 }]);
    expect(one({ after_m3: 8, lasts_min: 30 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 90 }]);
  });

  test("one truck kept too long parts the order, exactly as long as it may does not", () => {
    expect(loads(6, 7, 20, { after_m3: 1, lasts_min: 42 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 60 }]);
    expect(loads(6, 7, 20, { after_m3: 1, lasts_min: 43 })).toHaveLength(2);
    // The first of two would not wait, the second would.
    expect(loads(12, 7, 20, { after_m3: 8, lasts_min: 60 }).map((load) => load.load_m3)).toEqual([4, 4, 4]);
  });

  test("a pause between two loads is spent with no truck there", () => {
    expect(loads(12, 6, 20, { after_m3: 6, lasts_min: 90 })).toEqual([
      { load_m3: 6, after_min: 0, stands_min: 18 },
      { load_m3: 6, after_min: 108, stands_min: 18 },
    ]);
  });

  test("a pause before or after everything parts nothing", () => {
    expect(loads(6, 7, 20, { after_m3: 0, lasts_min: 90 })).toHaveLength(1);
    expect(loads(6, 7, 20, { after_m3: 6, lasts_min: 90 })).toEqual([{ load_m3: 6, after_min: 0, stands_min: 18 }]);
  });

  test("they bring what was ordered, none more than a truck holds, in rising order", () => {
    const some = fc.double({ min: 0.5, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        some,
        fc.double({ min: 3, max: 9, noNaN: true }),
        some,
        some,
        fc.integer({ min: 0, max: 120 }),
        (order, truck, rate, at, lasts) => {
          const all = loads(order, truck, rate, { after_m3: at, lasts_min: lasts });
          expect(all.reduce((sum, load) => sum + load.load_m3, 0)).toBeCloseTo(order, 9);
          for (const load of all) expect(load.load_m3).toBeLessThanOrEqual(truck + 1e-8);
          expect(all.map((load) => load.after_min)).toEqual([...all.map((load) => load.after_min)].sort((a, b) => a - b));
        },
      ),
    );
    expect(stands_min).toBe(60);
  });
});
