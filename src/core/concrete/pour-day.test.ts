import { describe, expect, test } from "vitest";
import { finishersFor, floatAfter_h, type PourWritten, pauseOf, pourDayTimes, pourWork, wastePercent } from ".";

const day = { order_m3: 4, rate_m3_h: 4, finished_m2: 20, concrete_C: 10, pause_min: 60, finishers: 2 };
const of = (change: Partial<typeof day> & { readonly tops?: number }) => {
  const found = pourDayTimes({ ...day, ...change });
  if (!("value" in found)) throw new Error(JSON.stringify(found.refused));
  return found.value;
};
const slab: PourWritten["elements"][number] = {
  number: 1,
  shape: { kind: "deck slab", long_mm: 4000, wide_mm: 3000, thick_mm: 150 },
  faces: [],
  rebates: [],
};
const columns: PourWritten["elements"][number] = {
  number: 2,
  shape: { kind: "column", long_mm: 300, wide_mm: 300, high_mm: 2000, round: false },
  faces: [],
  rebates: [],
};
const pour: PourWritten = {
  elements: [columns, slab],
  rate_m3_h: 3.8,
  weather: { concrete_C: 20 },
  pause: null,
  waste_percent: null,
  hopper_m3: 0.1,
  prime_m3: 0.2,
};

describe("hours of a pour", () => {
  test("at 50 °F an hour of placing, an hour of pause, four and a quarter to the float, an hour of it", () => {
    expect(of({})).toEqual({
      placing_min: 60,
      pause_min: 60,
      floatAfter_min: 255,
      finishing_min: 60,
      clearing_min: 0,
      total_min: 435,
      coldJoint_min: 320,
    });
  });

  test("what is struck off while placing waits for no float", () => {
    expect(of({ finished_m2: 0 })).toMatchObject({ floatAfter_min: 0, finishing_min: 0, total_min: 120 });
  });

  test("tops are struck off and tools washed before anybody leaves; what is floated leaves time for both", () => {
    expect(of({ finished_m2: 0, tops: 2 })).toMatchObject({ clearing_min: 50, total_min: 170 });
    expect(of({ tops: 2 })).toMatchObject({ clearing_min: 0, total_min: 435 });
  });

  test("a large slab is floated by its area and hands", () => {
    expect(of({ finished_m2: 100 }).finishing_min).toBe(300);
    expect(of({ finished_m2: 100, finishers: 4 }).finishing_min).toBe(150);
  });

  test("colder concrete takes the float later and warmer sooner, beyond the survey too", () => {
    const hours = [35, 45, 50, 60, 70, 90, 98].map(floatAfter_h);
    expect([...hours].sort((a, b) => b - a)).toEqual(hours);
    expect(new Set(hours).size).toBe(hours.length);
    expect(floatAfter_h(40)).toBeCloseTo(4.25 * (44 / 32), 9);
  });

  test("a temperature, a rate or a volume outside its range is refused by name", () => {
    const refused = pourDayTimes({ ...day, concrete_C: 45, rate_m3_h: 0, order_m3: Number.NaN });
    expect("refused" in refused && refused.refused.map((r) => [r.outOfRange.name, r.outOfRange.most])).toEqual([
      ["volume of the pour", 2000],
      ["rate of placing", 150],
      ["concrete temperature", 37.78],
    ]);
  });
});

describe("a pour as written", () => {
  test("net, waste, what line and pump keep, and the hours that follow", () => {
    const found = pourWork(pour);
    if (!("value" in found)) throw new Error("refused");
    expect(found.value.net_m3).toBeCloseTo(0.36 + 1.8, 12);
    expect(found.value.order_m3).toBeCloseTo(2.16 * 1.1 + 0.3, 12);
    expect(found.value.finished_m2).toBeCloseTo(12, 12);
    expect(found.value.placing_min).toBe(Math.ceil((2.676 / 3.8) * 60));
    expect(found.value.pause_min).toBe(60);
  });

  test("columns alone and a slab alone need no pause, a written one stays", () => {
    expect(pauseOf({ elements: [columns], pause: null })).toBe(0);
    expect(pauseOf({ elements: [slab], pause: null })).toBe(0);
    expect(pauseOf({ elements: [columns, slab], pause: { least_min: 90, most_min: 120 } })).toBe(90);
  });

  test("a written pause counts where columns or a slab stand alone too, an hour stands in only where both are", () => {
    const written = { least_min: 25, most_min: 40 };
    expect(pauseOf({ elements: [slab], pause: written })).toBe(25);
    expect(pauseOf({ elements: [columns], pause: written })).toBe(25);
    expect(pauseOf({ elements: [], pause: null })).toBe(0);
    const barrel = { ...slab, shape: { kind: "barrel", long_mm: 3000, span_mm: 2000, rise_mm: 500, thick_mm: 150 } } as const;
    const wall = { ...slab, shape: { kind: "wall", long_mm: 3000, thick_mm: 200, high_mm: 2000, batter: { a: 0, b: 0 } } } as const;
    const pier = { ...slab, shape: { ...columns.shape, kind: "pier" } } as PourWritten["elements"][number];
    expect([wall, pier, columns].map((stands) => pauseOf({ elements: [barrel, stands], pause: null }))).toEqual([60, 60, 60]);
    const ground = { ...slab, shape: { kind: "slab", long_mm: 3000, wide_mm: 2000, thick_mm: 100 } } as const;
    expect(pauseOf({ elements: [ground, columns], pause: null })).toBe(0);
  });

  test("each element counts as often as it is poured, and every hour that follows", () => {
    const found = pourWork({ ...pour, elements: [{ ...slab, number: 3 }], waste_percent: 0, hopper_m3: 0, prime_m3: 0 });
    if (!("value" in found)) throw new Error("refused");
    expect(found.value).toEqual({
      net_m3: expect.closeTo(5.4, 9),
      order_m3: expect.closeTo(5.4, 9),
      over_m3_h: 3.8,
      waste_percent: 0,
      finished_m2: expect.closeTo(36, 9),
      finishers: 2,
      placing_min: 86,
      pause_min: expect.closeTo(0, 9),
      // 20 °C is 68 °F: 2.75 + 2/20 of 1.5 h.
      floatAfter_min: 174,
      finishing_min: 108,
      clearing_min: 0,
      total_min: 86 + 174 + 108,
      coldJoint_min: 192,
    });
  });

  test("a held rate of rise makes the pour longer by what it takes over the hose, and no pour shorter", () => {
    const times = (element: PourWritten["elements"][number]) => {
      const found = pourWork({ ...pour, elements: [element, slab] });
      if (!("value" in found)) throw new Error("refused");
      return found.value;
    };
    const free = times(columns);
    // 2 m in passes of 500 mm every hour are 4 h; the hose fills both columns, 0.36 m³, in 5.7 min.
    const slow = times({ ...columns, held: { pass_mm: 500, every_min: 60 } });
    expect(slow.placing_min).toBe(Math.ceil((2.676 / 3.8) * 60 + 240 - (0.36 / 3.8) * 60));
    expect(slow.total_min - free.total_min).toBe(slow.placing_min - free.placing_min);
    expect(slow.over_m3_h).toBeCloseTo(2.676 / (2.676 / 3.8 + 4 - 0.36 / 3.8), 9);
    for (const held of [null, { pass_mm: 500, every_min: 1 }, { pass_mm: 0, every_min: 60 }, { pass_mm: 500, every_min: 0 }]) {
      expect(times({ ...columns, held })).toEqual(free);
    }
    const laid = pourWork({ ...pour, elements: [{ ...slab, held: { pass_mm: 1, every_min: 60 } }] });
    expect(laid).toEqual(pourWork({ ...pour, elements: [slab] }));
  });

  test("a chute or buckets wait between lifts where they would fill a form faster than 4.5 m/h, a hose does not", () => {
    const times = (placed: PourWritten["placed"], rate_m3_h = 3.8, element = columns) => {
      const found = pourWork({ ...pour, placed, rate_m3_h, elements: [element] } as PourWritten);
      if (!("value" in found)) throw new Error("refused");
      return found.value;
    };
    // 3.8 m³/h on 0.09 m² are 42 m/h; 2 m in lifts of 400 mm, 6 min each, are 30 min instead of the 5.7 min that 0.36 m³ take.
    const free = times("hose");
    for (const placed of ["chute", "by hand"] as const) {
      expect(times(placed).placing_min).toBe(Math.ceil((free.order_m3 / 3.8) * 60 + 30 - (0.36 / 3.8) * 60));
      expect(times(placed).total_min - free.total_min).toBe(times(placed).placing_min - free.placing_min);
    }
    expect(times("from the base")).toEqual(free);
    // 0.4 m³/h rise 4.4 m/h; one lift high is one lift.
    expect(times("chute", 0.4)).toEqual(times("hose", 0.4));
    const low = { ...columns, shape: { ...columns.shape, high_mm: 400 } } as typeof columns;
    expect(times("chute", 3.8, low)).toEqual(times("hose", 3.8, low));
    // What is written as an act stands in place of the lifts.
    const held = { ...columns, held: { pass_mm: 500, every_min: 60 } };
    expect(times("chute", 3.8, held)).toEqual(times("hose", 3.8, held));
    expect(times("chute", 3.8, slab)).toEqual(times("hose", 3.8, slab));
  });

  test("ten per cent of waste up to 200 cubic yards, five above, or as written", () => {
    expect(wastePercent(152, null)).toBe(10);
    expect(wastePercent(154, null)).toBe(5);
    expect(wastePercent(154, 8)).toBe(8);
    expect(wastePercent(200 * 0.9144 ** 3, null)).toBe(10);
    expect(wastePercent(10, 0)).toBe(0);
  });

  test("two hands float 40 m², one more each 20", () => {
    expect([0, 40, 41, 60, 61].map(finishersFor)).toEqual([2, 2, 3, 3, 4]);
  });

  test("more left out than there is comes back refused, never as less than nothing", () => {
    const hollow = { ...slab, rebates: [{ long_mm: 4000, wide_mm: 3000, deep_mm: 150, number: 2 }] };
    const found = pourWork({ ...pour, elements: [hollow], hopper_m3: 0, prime_m3: 0 });
    expect("refused" in found && found.refused[0]?.outOfRange.name).toBe("volume of the pour");
  });
});
