import { describe, expect, test } from "vitest";
import { buildOf, documentOf } from "../../../test/fixtures/make";
import { column, plywood, slabPour } from "../../../test/fixtures/pours";
import { type Pour, read, readDocument, write } from ".";

const steps = [{ id: "a" }, { id: "b" }];
const build = (pour: object, more: object = {}) => buildOf({ steps, pours: [slabPour(pour)], ...more });
const read_ = (pour: object, more: object = {}): Pour => build(pour, more).pours[0]!;
const metric = { site: { zone: "Europe/Berlin", latitude: 50, longitude: 10, units: "metric" } };

/** Every key a pour can have. */
const full = slabPour({
  name: "Porch columns and slab",
  mix: {
    ...{ strength: "4000 psi", cement: "III", retarder: true, weight: "145 lb/ft3", slump: "6 in", cementContent: "564 lb/yd3" },
    ...{ aggregate: "3/8 in", lowBleed: true, consistency: "F3", setting: "5 h", from: "supplier" },
  },
  weather: { concrete: "65 °F", air: "55 °F", humidity: 60, wind: "8 mph" },
  placed: "hose",
  rate: "5 yd³/h",
  vibrated: "6 ft",
  externalVibration: true,
  elements: [
    column({
      name: "Columns",
      faces: [{ face: "sides", visible: true }, { face: "top" }],
      rebates: [{ long: "12 in", wide: "4 in", deep: "2 in" }],
      held: { pass: "9 in", every: "9 min", who: "me" },
      form: {
        kind: "column",
        sheathing: { ...plywood, reused: false, from: "measured" },
        battens: { stuff: { size: "2x4", flat: true, grade: "DF-L No 2" }, spacing: "8 in" },
        bands: {
          stuff: {
            size: "2 x 4",
            pieces: 2,
            grade: "DF-L No 2",
            salvaged: true,
            wet: true,
            reused: false,
            measured: { wide: "1.5 in", deep: "3.5 in" },
          },
          at: ["4 in", "12 in"],
          bolt: { name: "1/2 in rod", carries: "2000 lb", from: "product sheet" },
        },
        weight: "180 lb",
        footSealed: true,
        holdDown: { by: { name: "anchor", carries: "1 kip" }, number: 4 },
        brace: { stuff: "2x4", spacing: "4 ft", run: "4 ft", rise: "5 ft", lands: "stake", foot: { carries: "500 lb" } },
      },
      bars: [
        {
          ...{ name: "verticals", size: 5, number: 4, long: "7 ft", spacing: "9 in", yield: "60 ksi", cover: "1.5 in" },
          ...{ exposure: "inside beam or column", sort: "bar", supported: "36 in", from: "drawing" },
        },
      ],
      pieces: ["form"],
    }),
    {
      id: "wall",
      shape: { kind: "wall", long: "8 ft", thick: "8 in", high: "6 ft", batter: { a: "1:8" } },
      form: {
        kind: "wall",
        sheathing: plywood,
        studs: { stuff: "2x4", spacing: "12 in" },
        wales: { stuff: { size: "2x4", pieces: 2 }, at: ["8 in", "28 in"] },
        ties: { by: { carries: "2250 lb" }, spacing: "2 ft" },
        strongbacks: { stuff: "4x4", spacing: "4 ft", top: { carries: "5 kN" }, foot: { carries: "5 kN" } },
        weight: "40 lb/ft",
      },
    },
    {
      id: "deck",
      shape: { kind: "deck slab", long: "10 ft", wide: "8 ft", thick: "5 in" },
      form: {
        kind: "deck",
        sheathing: plywood,
        joists: { stuff: "2x6", spacing: "16 in" },
        stringers: { stuff: "4x6", spacing: "4 ft" },
        shores: { stuff: "4x4", spacing: "4 ft", high: "7 ft", unbraced: "3 ft 6 in" },
        mudsills: { long: "24 in", wide: "10 in", soil: { is: "1500 psf", from: "own guess" }, level: true, ground: "firm" },
        buggies: true,
      },
    },
    {
      id: "footing",
      shape: { kind: "footing", long: "10 ft", wide: "2 ft", thick: "10 in" },
      form: { kind: "edge", boards: "2x10", stakes: { spacing: "3 ft" } },
    },
    { id: "vault", shape: { kind: "barrel", long: "12 ft", span: "8 ft", rise: "3 ft", thick: "8 in" } },
    { id: "stair", shape: { kind: "stair", wide: "3 ft", steps: 5, riser: "7 in", tread: "11 in", thick: "6 in" } },
    { id: "pier", shape: { kind: "pier", long: "10 in", wide: "10 in", high: "3 ft", round: true } },
  ],
  pause: { least: "1 h", most: "2 h" },
  truck: "9 yd3",
  waste: 10,
  hopper: "0.1 yd3",
  prime: "0.25 yd3",
  cure: { how: "wet", days: 7, held: "55 °F", heldFor: "3 d", exposed: false },
  breaks: [{ at: "2027-07-03T08:00", strength: "2400 psi", by: "lab" }],
  removals: [
    { sort: "sides", step: "b" },
    {
      sort: "soffit",
      step: "b",
      soffit: "beam",
      span: "9 ft",
      liveExceedsDead: true,
      shoresStay: true,
      share: 75.5,
      days: "28 d",
      saidBy: "drawing",
    },
  ],
  ground: {
    truckWeight: "66000 lb",
    slope: 8,
    wiresAbove: "14 ft",
    hoseReach: "100 ft",
    hoseNeeded: "80 ft",
    washout: "lined pit by the gate",
  },
  sacks: "bags",
  from: "drawing",
});
const fullDocument = documentOf({
  site: {
    zone: "America/New_York",
    latitude: 42.4,
    longitude: -76.5,
    units: "us",
    days: [{ date: "2027-04-03", low: "31 °F", high: "48 °F", source: "forecast" }],
  },
  pressure: "ciria",
  pieces: [{ id: "form", fromStart: true }],
  stock: [{ id: "bags" }],
  steps: [{ id: "a", fixed: "2027-06-26T07:30" }, { id: "b" }],
  pours: [full],
});

describe("a pour with everything written", () => {
  const { build: made, findings } = readDocument(fullDocument);
  const pour = made!.pours[0]!;

  test("is read without a finding, and nothing is assumed", () => {
    expect(findings).toEqual([]);
    expect(pour.assumed).toEqual([]);
    expect([made!.pressure, made!.at.pour.get("slab")]).toEqual(["ciria", 0]);
    expect(made!.site.days_C).toEqual([
      { date: "2027-04-03", low: expect.closeTo(-5 / 9, 9), high: expect.closeTo(80 / 9, 9), source: "forecast" },
    ]);
  });

  test("has its figures in the units of the model", () => {
    expect(pour.mix).toMatchObject({
      cement: "III",
      retarder: true,
      slump_mm: 152.4,
      aggregate_mm: 9.525,
      setting_min: 300,
      from: "supplier",
    });
    expect(pour.mix.strength_MPa).toBeCloseTo(27.579029, 5);
    expect(pour.mix.weight_kg_m3).toBeCloseTo(2322.677, 2);
    expect(pour.mix.cement_kg_m3).toBeCloseTo(334.608, 2);
    expect(pour.weather.concrete_C).toBeCloseTo(18.333, 3);
    expect(pour).toMatchObject({
      placed: "hose",
      vibrated_mm: 1828.8,
      externalVibration: true,
      waste_percent: 10,
      sacks: "bags",
      from: "drawing",
    });
    expect(pour.rate_m3_h).toBeCloseTo(3.822774, 5);
    expect(pour.truck_m3).toBeCloseTo(6.880994, 5);
    expect(pour.pause).toEqual({ least_min: 60, most_min: 120 });
    expect(pour.cure).toMatchObject({ how: "wet", days: 7, heldFor_min: 4320, exposed: false });
    expect(pour.ground).toMatchObject({ slope_percent: 8, hoseReach_mm: 30480, washout: "lined pit by the gate" });
    expect(pour.removals[1]).toMatchObject({
      span_mm: 2743.2,
      share: 755,
      shoresStay: true,
      saidBy: "drawing",
      entry: 2,
      days: { amount: 40320 },
    });
    expect(pour.breaks[0]).toMatchObject({ at: "2027-07-03T08:00", by: "lab" });
  });

  test("has its elements with their forms", () => {
    const [columns, wall, deck, footing, vault, stair, pier] = pour.elements;
    expect(columns).toMatchObject({ number: 2, held: { pass_mm: 228.6, every_min: 9, who: "me" }, pieces: ["form"] });
    expect(columns!.faces).toEqual([
      { face: "sides", against: "form", visible: true },
      { face: "top", against: "free", visible: false },
    ]);
    expect(columns!.bars[0]).toMatchObject({ size: 5, yield_MPa: expect.closeTo(413.685, 3), cover_mm: 38.1, supported_mm: 914.4 });
    const form = columns!.form!;
    if (form.kind !== "column") throw new Error("a column's form");
    expect(form.bands.stuff).toEqual({
      ...{ size: "2x4", flat: false, pieces: 2, grade: "DF-L No 2", salvaged: true, wet: true, reused: false, from: null },
      measured_mm: { wide: 38.1, deep: 88.9 },
    });
    expect(form.bands.at_mm).toEqual([101.6, 304.8]);
    expect(form.bands.bolt!.carries_kN).toBeCloseTo(8.896443, 5);
    expect(form.holdDown).toMatchObject({ number: 4, spacing_mm: null });
    expect(form.sheathing).toEqual({
      kind: "plywood",
      ply: "3/4",
      plyClass: "I",
      grain: "across",
      boards: null,
      reused: false,
      from: "measured",
    });
    expect(form.mass_kg).toBeCloseTo(81.646627, 5);
    expect(wall!.shape).toMatchObject({ batter: { a: 0.125, b: 0 } });
    expect(wall!.form).toMatchObject({ kind: "wall", mass_kg_m: expect.closeTo(59.5266, 3), ties: { spacing_mm: 609.6 } });
    expect(deck!.form).toMatchObject({
      kind: "deck",
      buggies: true,
      mudsills: { soil_kPa: expect.closeTo(71.82, 2), soilFrom: "own guess", ground: "firm" },
    });
    expect(footing!.form).toMatchObject({ kind: "edge", stakes: { by: null } });
    expect([vault!.shape.kind, stair!.shape.kind, pier!.shape]).toMatchObject(["barrel", "stair", { round: true, high_mm: 914.4 }]);
  });

  test("is written as it was read", () => {
    const text = write(fullDocument);
    expect(write(read(text).document)).toBe(text);
    expect(Object.keys((JSON.parse(text) as { pours: object[] }).pours[0]!).slice(0, 5)).toEqual(["id", "name", "step", "mix", "weather"]);
  });
});

describe("what is not written", () => {
  test("is usual by the site's units, and named", () => {
    const us = read_({});
    expect(us.weather.concrete_C).toBeCloseTo(21.111, 3);
    expect([us.mix.slump_mm, us.placed, us.hopper_m3]).toEqual([127, "chute", 0]);
    expect(us.mix.weight_kg_m3).toBeCloseTo(2402.77, 2);
    expect(us.assumed).toEqual(["placed", "mix.cement", "mix.retarder", "mix.weight", "mix.slump", "weather.concrete", "rate"]);
    const si = read_({ placed: "hose" }, metric);
    expect([si.weather.concrete_C, si.mix.weight_kg_m3, si.mix.slump_mm, si.rate_m3_h]).toEqual([20, 2400, 125, 4]);
    expect(si.prime_m3).toBeCloseTo(0.191, 3);
    expect(si.assumed).not.toContain("placed");
  });

  test("changes with the site's units, though the pour is the same object", () => {
    const document = documentOf({ steps, pours: [slabPour()] });
    expect(readDocument(document).build!.pours[0]!.mix.slump_mm).toBe(127);
    expect(readDocument({ ...document, ...metric }).build!.pours[0]!.mix.slump_mm).toBe(125);
  });

  test("of a form is on the careful side, and named where it carries", () => {
    const pour = read_({
      elements: [column({ form: { kind: "column", sheathing: { ply: "3/4" }, bands: { stuff: "2x4", at: ["4 in"] } } })],
    });
    expect(pour.assumed).toEqual(
      expect.arrayContaining(["elements.columns.form.sheathing.class", "elements.columns.form.sheathing.grain"]),
    );
    expect(pour.elements[0]!.form).toMatchObject({
      sheathing: { plyClass: "II", reused: true },
      bands: { stuff: { grade: null, reused: true }, bolt: null },
    });
  });
});

test("a truck that brings nothing, or more than any does, is told with the range, and trucks are never counted without end", () => {
  const of = (truck: string) => readDocument(documentOf({ steps, pours: [slabPour({ truck })] }));
  for (const truck of ["0 yd3", "0.0001 m3", "300 yd3"]) {
    const { build: none, findings } = of(truck);
    expect([none, findings.map(({ code, detail }) => [code, detail.name])]).toEqual([null, [["build.outside", "load of a truck"]]]);
  }
  expect(of("9 yd3").findings).toEqual([]);
});
