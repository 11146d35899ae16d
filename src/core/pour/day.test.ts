import { describe, expect, test } from "vitest";
import { buildWith, columnShape, deckOf, elementOf, pourOf } from "../../../test/fixtures/pour-model";
import type { Build, Pour } from "../build";
import { pourDay } from "./day";

const yd3 = 0.9144 ** 3;
const C = (at_F: number): number => (at_F - 32) / 1.8;
const of = (change: Partial<Pour> = {}, build: Build = buildWith([pourOf(change)])) => pourDay(build, 0);
const finds = (change: Partial<Pour>, code: string, build?: Build) => of(change, build).findings.filter((f) => f.code === code);
const detail = (change: Partial<Pour>, code: string, build?: Build) => finds(change, code, build)[0]?.detail;
const mix = (change: Partial<Pour["mix"]>) => ({ mix: { ...pourOf().mix, ...change } });
const weather = (change: Partial<Pour["weather"]>) => ({ weather: { ...pourOf().weather, ...change } });
const ground = (change: Partial<Pour["ground"]>) => ({ ground: { ...pourOf().ground, ...change } });

describe("volumes and hours", () => {
  test("two columns and the deck on them: net, a tenth of waste, an hour of pause, the deck floated after it", () => {
    const day = of().day!;
    expect(day.net_m3 / yd3).toBeCloseTo((2 * 6 + 54) / 27, 9);
    expect(day.order_m3).toBeCloseTo(day.net_m3 * 1.1, 12);
    expect(day.placing_min).toBe(Math.ceil((day.order_m3 / (5 * yd3)) * 60));
    expect([day.pause_min, day.floatAfter_min, day.finishing_min]).toEqual([60, 165, 60]);
    expect(day.total_min).toBe(day.placing_min + 60 + 165 + 60);
    expect(day.coldJoint_min).toBe(180);
    expect(day.finishers).toBe(2);
  });

  test("a held rate of rise makes the day as long as it takes, and spaces the trucks by it", () => {
    const held = { pass_mm: 304.8, every_min: 20, who: "me" as never };
    const columns = elementOf({ number: 2, shape: columnShape, held });
    const plain = of({ elements: [elementOf({ number: 2, shape: columnShape })] }).day!;
    const slow = of({ elements: [columns] }).day!;
    // 6 ft in passes of a foot every 20 min: two hours, however soon the hose would have done it.
    expect(plain.placing_min).toBeLessThan(10);
    const alone_min = ((plain.order_m3 - plain.net_m3) / (5 * yd3)) * 60;
    expect(slow.placing_min).toBe(Math.ceil(120 + alone_min - 1e-6));
    expect(slow.total_min - slow.placing_min).toBe(plain.total_min - plain.placing_min);
    // One truck then stands for those two hours, and that is said.
    expect(detail({ elements: [columns] }, "pour.truck-waits")!.stands_min).toBe(slow.placing_min);
    expect(finds({ elements: [elementOf({ number: 2, shape: columnShape })] }, "pour.truck-waits")).toEqual([]);
  });

  test("what hopper and line keep is ordered too, and no waste is added to it", () => {
    const day = of({ hopper_m3: 0.1, prime_m3: 0.2, waste_percent: 0 }).day!;
    expect(day.order_m3).toBeCloseTo(day.net_m3 + 0.3, 12);
  });

  test("an element with more left out than there is stops, a temperature outside its range withholds the day", () => {
    const rebates = [{ long_mm: 400, wide_mm: 400, deep_mm: 2000, number: 1 }];
    const hollow = of({ elements: [elementOf({ rebates })] });
    expect(hollow.day).toBeNull();
    expect(hollow.findings.map((f) => [f.code, f.severity, f.detail.element])).toEqual([["pour.nothing-left", "stop", "column"]]);
    const hot = of(weather({ concrete_C: 60 }));
    expect(hot.day).toBeNull();
    expect(hot.findings[0]?.detail).toMatchObject({ what: "concrete temperature", given: 60, most: 37.78, unit: "°C" });
    expect(of({ rate_m3_h: Number.NaN }).findings[0]?.detail).toMatchObject({ what: "rate of placing", given: "" });
  });

  // A sack-mix number is sacks of cement in a cubic yard (common practice, no source).
  test("a six-sack mix takes six sacks for each cubic yard ordered", () => {
    const day = of({ ...mix({ cement_kg_m3: (6 * 94 * 0.45359237) / yd3 }), waste_percent: 0 }).day!;
    expect(day.sacks).toBe(Math.ceil(6 * (66 / 27)));
    expect(of().day!.sacks).toBeNull();
    expect(finds({ sacks: "sacks" as Pour["sacks"] }, "pour.cement-unknown")).toHaveLength(1);
    expect(finds({ sacks: "sacks" as Pour["sacks"], ...mix({ cement_kg_m3: 300 }) }, "pour.cement-unknown")).toHaveLength(0);
  });
});

describe("trucks", () => {
  test("columns and deck are ordered apart where the pause would keep one truck too long", () => {
    const { trucks, order_m3 } = of().day!;
    expect(trucks.map((t) => t.after_min)).toEqual([0, Math.round((13.2 / 27 / 5) * 60) + 60]);
    expect(trucks.reduce((sum, t) => sum + t.load_m3, 0)).toBeCloseTo(order_m3, 9);
    expect(detail({}, "pour.short-load")).toMatchObject({ short_m3: 4 * yd3 });
    expect(detail({}, "pour.short-load")?.load_m3).toBeCloseTo((13.2 / 27) * yd3, 9);
  });

  test("a full truck into a slow hose stands longer than its concrete is good for", () => {
    const slab = [deckOf({ shape: { kind: "slab", long_mm: 9144, wide_mm: 9144, thick_mm: 152.4 } })];
    const found = detail({ elements: slab }, "pour.truck-waits");
    expect(found).toMatchObject({ most_min: 60 });
    expect(found?.fits_m3).toBeCloseTo(5 * yd3, 9);
    expect(finds({ elements: slab, rate_m3_h: 12 * yd3 }, "pour.truck-waits")).toHaveLength(0);
    expect(finds({ elements: slab }, "pour.ticket-time")).toHaveLength(1);
  });

  test("what is mixed on site from sacks needs no truck, no washout, no wires looked for", () => {
    const found = of({ sacks: "sacks" as Pour["sacks"], placed: "by hand" });
    expect(found.day?.trucks).toEqual([]);
    expect(found.findings.map((f) => f.code).filter((c) => /truck|washout|wires|ticket|late/.test(c))).toEqual([]);
  });
});

describe("joints", () => {
  test("columns come first, and an hour of pause is counted where none is written", () => {
    expect(detail({}, "pour.pause-usual")).toEqual({ least_min: 60, most_min: 120 });
    expect(finds({ pause: { least_min: 60, most_min: 90 } }, "pour.pause-usual")).toHaveLength(0);
    expect(detail({ pause: { least_min: 20, most_min: 90 } }, "pour.pause-short")).toEqual({ least_min: 20, usual_min: 60 });
    expect(detail({ elements: [deckOf(), elementOf()] }, "pour.columns-after")).toEqual({ element: "column", before: "deck" });
    expect(finds({}, "pour.columns-after")).toHaveLength(0);
  });

  test("in the heat a long pause leaves a cold joint", () => {
    const pause = { least_min: 60, most_min: 100 };
    expect(detail({ pause, ...weather({ concrete_C: C(90) }) }, "pour.pause-cold")).toEqual({ most_min: 100, coldJoint_min: 80 });
    expect(finds({ pause }, "pour.pause-cold")).toHaveLength(0);
  });

  test("a long wall from a slow hose, and passes held too far apart, do not knit", () => {
    const shape = { kind: "wall", long_mm: 20000, thick_mm: 300, high_mm: 2000, batter: { a: 0, b: 0 } } as const;
    const wall = { elements: [elementOf({ id: "wall", shape })], rate_m3_h: 1 };
    expect(detail(wall, "pour.layer-cold")).toEqual({ element: "wall", layer_min: 183, coldJoint_min: 180 });
    expect(finds(wall, "pour.truck-late")).toHaveLength(0);
    const held = { elements: [elementOf({ held: { pass_mm: 200, every_min: 200, who: null } })] };
    expect(detail(held, "pour.pass-cold")).toEqual({ element: "column", every_min: 200, coldJoint_min: 180 });
  });

  test("says by how much a truck may be late", () => {
    expect(detail({ elements: [elementOf()] }, "pour.truck-late")).toEqual({ late_min: 179 });
  });
});

describe("hands", () => {
  test("five for a small pumped deck; the step with fewer is told", () => {
    expect(of().day!.hands.reduce((sum, one) => sum + one.number, 0)).toBe(5);
    const short = buildWith([pourOf()], { hands: [{ role: "hands", number: 2 }] });
    expect(detail({}, "pour.hands-short", short)).toEqual({ step: "pour-porch", wanted: 5, have: 2 });
    expect(finds({}, "pour.hands-short")).toHaveLength(0);
    expect(detail({}, "pour.hands-short", buildWith([pourOf({ helpers: 2 })], { hands: [{ role: "hands", number: 2 }] }))).toEqual({
      step: "pour-porch",
      wanted: 5,
      have: 4,
    });
    expect(of({ helpers: 3 }).day!.helpers).toBe(3);
  });

  test("columns alone take three, and nobody floats", () => {
    const day = of({ elements: [elementOf()] }).day!;
    expect(day.hands.map((one) => one.role)).toEqual(["hose", "vibrator", "watch"]);
    expect(day.finishers).toBe(0);
  });
});

describe("weather", () => {
  const dry = { concrete_C: C(87), air_C: C(80), humidity_percent: 50, wind_km_h: 12 * 1.609344 };

  test("by the US formula for a US document, by the metric one for the others, protected over the limit", () => {
    const us = of(weather(dry)).day!.evaporation!;
    expect(us.unit).toBe("lb/ft2/h");
    expect(us.rate).toBeCloseTo(0.2435, 3);
    expect(us).toMatchObject({ act: 0.2, protect: true });
    const si = pourDay({ ...buildWith([pourOf(weather(dry))]), pressure: "aci-si" }, 0).day!.evaporation!;
    expect(si).toMatchObject({ unit: "kg/m2/h", act: 1, protect: true });
    expect(si.rate).toBeCloseTo(1.15, 1);
    expect(finds(weather(dry), "pour.dries-fast")).toHaveLength(1);
  });

  test("half the rate is too much where it bleeds little", () => {
    const mild = weather({ ...dry, wind_km_h: 7 });
    expect(of(mild).day!.evaporation).toMatchObject({ protect: false });
    expect(of({ ...mild, ...mix({ lowBleed: true }) }).day!.evaporation).toMatchObject({ act: 0.1, protect: true });
  });

  test("what is missing is named, what is out of range withheld, and columns alone are not asked", () => {
    expect(detail(weather({ air_C: 20 }), "pour.drying-unknown")).toEqual({ lacks: ["humidity", "wind"] });
    const storm = of(weather({ ...dry, wind_km_h: 100 }));
    expect(storm.day!.evaporation).toBeNull();
    expect(storm.findings.find((f) => f.code === "pour.out-of-range")?.detail).toMatchObject({ unit: "mph", most: 40 });
    expect(finds({ elements: [elementOf()] }, "pour.drying-unknown")).toHaveLength(0);
  });

  test("over 95 °F is too hot; at 40 °F of air nothing is cold yet, a degree below it is", () => {
    expect(detail(weather({ concrete_C: C(96) }), "pour.hot")?.most_C).toBeCloseTo(35, 9);
    expect(finds(weather({ concrete_C: 35 }), "pour.hot")).toHaveLength(0);
    expect(finds(weather({ air_C: C(40), concrete_C: C(50) }), "pour.cold-weather")).toHaveLength(0);
    expect(detail(weather({ air_C: C(39), concrete_C: C(50) }), "pour.cold-weather")?.mixed_C).toBeCloseTo(C(60), 9);
  });

  test("in the cold each element asks for its own least temperature, thin ones for the warmest", () => {
    const found = finds(weather({ air_C: C(35), concrete_C: C(52) }), "pour.cold-concrete");
    expect(found.map((f) => f.detail.element)).toEqual(["deck"]);
    expect(found[0]?.detail.least_C).toBeCloseTo(C(55), 9);
  });
});

describe("aggregate", () => {
  test("a third of the slab, a fifth of the form, three quarters of the gap between bars", () => {
    const given = mix({ aggregate_mm: 25.4 });
    expect(of({ ...given, elements: [deckOf()] }).day!.aggregate).toMatchObject({ because: "slab" });
    expect(of({ ...given, elements: [deckOf()] }).day!.aggregate?.most_mm).toBeCloseTo(50.8, 9);
    expect(of({ ...given, elements: [elementOf()] }).day!.aggregate?.most_mm).toBeCloseTo(60.96, 9);
    const bars = [{ ...barred(), spacing_mm: 1.625 * 25.4 }];
    expect(detail({ ...given, elements: [deckOf({ bars })] }, "pour.aggregate-large")).toMatchObject({ element: "deck", because: "bars" });
    expect(finds({ ...mix({ aggregate_mm: 19.05 }), elements: [deckOf({ bars })] }, "pour.aggregate-large")).toHaveLength(0);
  });

  test("not known: the largest that would do is told", () => {
    expect(detail({ elements: [deckOf()] }, "pour.aggregate-unknown")).toMatchObject({ element: "deck", because: "slab" });
    expect(of({}).day!.aggregate).toBeNull();
  });

  // Common practice, no source.
  test("a pumped mix takes a smaller aggregate", () => {
    const stone = mix({ aggregate_mm: 38.1 });
    expect(detail({ ...stone, elements: [elementOf()] }, "pour.aggregate-pumped")?.most_mm).toBeCloseTo(25.4, 9);
    expect(finds({ ...stone, placed: "chute" }, "pour.aggregate-pumped")).toHaveLength(0);
    expect(finds(mix({ cement_kg_m3: 300 }), "pour.cement-low-for-pump")).toHaveLength(1);
    expect(finds(mix({ cement_kg_m3: 330 }), "pour.cement-low-for-pump")).toHaveLength(0);
  });
});

describe("ground", () => {
  test("a hose too short stops, one not measured is asked for", () => {
    expect(finds(ground({ hoseReach_mm: 20000, hoseNeeded_mm: 25000 }), "pour.hose-short").map((f) => f.severity)).toEqual(["stop"]);
    expect(finds(ground({ hoseReach_mm: 25000, hoseNeeded_mm: 25000 }), "pour.hose-short")).toHaveLength(0);
    expect(finds({}, "pour.hose-unknown")).toHaveLength(1);
    expect(finds({ placed: "chute" }, "pour.hose-unknown")).toHaveLength(0);
  });

  test("no truck passes 10 ft from wires that hang at 20, and under wires at 30 nothing rises over 20", () => {
    expect(finds(ground({ wiresAbove_mm: 20 * 304.8 }), "pour.wires-near").map((f) => f.severity)).toEqual(["stop"]);
    expect(detail(ground({ wiresAbove_mm: 30 * 304.8 }), "pour.wires")?.highest_mm).toBeCloseTo(20 * 304.8, 9);
    expect(finds({}, "pour.wires-unknown")).toHaveLength(1);
    expect(finds(ground({ wiresAbove_mm: "none" }), "pour.wires-unknown")).toEqual([]);
  });

  test("a steep drive, a heavy truck and nowhere to wash out are told", () => {
    expect(detail(ground({ slope_percent: 12 }), "pour.truck-slope")).toEqual({ slope_percent: 12, most_percent: 10 });
    expect(finds(ground({ slope_percent: 8 }), "pour.truck-slope")).toHaveLength(0);
    expect(detail(ground({ truck_kg: 30000 }), "pour.truck-weight")).toEqual({ truck_kg: 30000 });
    expect(finds(ground({ washout: "lined pit" }), "pour.washout-unknown")).toHaveLength(0);
    expect(finds({}, "pour.washout-unknown")).toHaveLength(1);
  });
});

test("the supplier's cut-off is the last hour to call it off", () => {
  const partial = {
    calendars: [{ id: "plant", name: "Plant", week: { fri: ["7:00-16:00"] }, cutOff: "14:00" }],
    deliveries: [{ id: "concrete", name: "Concrete", calendar: "plant", lead: "3 days of plant", ordered: false }],
    steps: [{ id: "pour-porch", name: "Pour the porch", sort: "pour", work: "6 h", hands: 6, needs: ["concrete"] }],
  };
  const build = buildWith([pourOf()], {}, partial);
  expect(detail({}, "pour.call-off", build)).toEqual({ step: "pour-porch", delivery: "concrete", calendar: "plant", cutOff_min: 840 });
  const open = buildWith([pourOf()], {}, { ...partial, calendars: [{ id: "plant", name: "Plant", week: { fri: ["7:00-16:00"] } }] });
  expect(finds({}, "pour.call-off-unknown", open)).toHaveLength(1);
  expect(finds({}, "pour.call-off")).toHaveLength(0);
});

function barred() {
  return {
    name: "mat",
    size: 5,
    number: 10,
    long_mm: 3000,
    spacing_mm: 300,
    yield_MPa: 413.7,
    cover_mm: null,
    exposure: "inside slab or wall" as const,
    sort: "mat" as const,
    supported_mm: null,
    from: null,
  };
}

test("the height of a column changes its volume and nothing of the deck", () => {
  const high = of({ elements: [elementOf({ shape: { ...columnShape, high_mm: 2 * columnShape.high_mm } }), deckOf()], waste_percent: 0 })
    .day!;
  expect(high.net_m3 / yd3).toBeCloseTo((12 + 54) / 27, 9);
  expect(high.finishing_min).toBe(60);
});
