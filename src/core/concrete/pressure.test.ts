import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type AciPour_si,
  type AciPour_us,
  type Checked,
  type Consistency,
  type DinPour,
  formulaFor_si,
  formulaFor_us,
  pressureAci_si,
  pressureAci_us,
  pressureCiria,
  pressureDin,
} from ".";

function value<T>(found: Checked<T>): T {
  if ("value" in found) return found.value;
  throw new Error(`refused: ${JSON.stringify(found.refused)}`);
}

const us: AciPour_us = {
  shape: "wall",
  height_ft: 14,
  rise_ft_h: 5,
  concrete_F: 70,
  weight_pcf: 150,
  chemistry: 1,
  slump_in: 7,
  vibrated_ft: 4,
  external: false,
  fromBase: false,
};
const si: AciPour_si = {
  shape: "wall",
  height_m: 4.2,
  rise_m_h: 1.5,
  concrete_C: 20,
  density_kg_m3: 2400,
  chemistry: 1,
  slump_mm: 175,
  vibrated_m: 1.2,
  external: false,
  fromBase: false,
};
const g = 9.80665;

// ACI 347R-14, the table of section 4.2.2.1: each threshold on its last allowed value and past it.
describe("which ACI formula a pour is allowed", () => {
  test.each<[string, Partial<AciPour_us>, string, string]>([
    ["7 in of slump, vibrated 4 ft deep, 14 ft high, slow", {}, "(b)", ""],
    ["over 7 in of slump", { slump_in: 7.01 }, "full head", "slump"],
    ["vibrated deeper than 4 ft", { vibrated_ft: 4.01 }, "full head", "vibration"],
    ["vibrated from outside", { external: true }, "full head", "external"],
    ["pumped from the base, before all else", { fromBase: true, slump_in: 9, external: true }, "full head", "pumped from base"],
    ["over 14 ft high", { height_ft: 14.01 }, "(c)", ""],
    ["just under 7 ft/h", { rise_ft_h: 6.99 }, "(b)", ""],
    ["7 ft/h", { rise_ft_h: 7 }, "(c)", ""],
    ["15 ft/h", { rise_ft_h: 15 }, "(c)", ""],
    ["over 15 ft/h", { rise_ft_h: 15.01 }, "full head", "rise"],
    ["a column, however high and fast", { shape: "column", height_ft: 30, rise_ft_h: 40 }, "(b)", ""],
    ["a column of soft concrete", { shape: "column", slump_in: 8 }, "full head", "slump"],
  ])("US: %s", (_, change, formula, because) => {
    expect(formulaFor_us({ ...us, ...change })).toEqual({ formula, because });
  });

  test.each<[string, Partial<AciPour_si>, string, string]>([
    ["175 mm of slump, vibrated 1.2 m deep, 4.2 m high, slow", {}, "(b)", ""],
    ["over 175 mm of slump", { slump_mm: 175.1 }, "full head", "slump"],
    ["vibrated deeper than 1.2 m", { vibrated_m: 1.21 }, "full head", "vibration"],
    ["vibrated from outside", { external: true }, "full head", "external"],
    ["pumped from the base, before all else", { fromBase: true, slump_mm: 220, external: true }, "full head", "pumped from base"],
    ["over 4.2 m high", { height_m: 4.21 }, "(c)", ""],
    ["just under 2.1 m/h", { rise_m_h: 2.09 }, "(b)", ""],
    ["2.1 m/h", { rise_m_h: 2.1 }, "(c)", ""],
    ["4.5 m/h", { rise_m_h: 4.5 }, "(c)", ""],
    ["over 4.5 m/h", { rise_m_h: 4.51 }, "full head", "rise"],
    ["a column, however high and fast", { shape: "column", height_m: 9, rise_m_h: 12 }, "(b)", ""],
    ["a column of soft concrete", { shape: "column", slump_mm: 200 }, "full head", "slump"],
  ])("SI: %s", (_, change, formula, because) => {
    expect(formulaFor_si({ ...si, ...change })).toEqual({ formula, because });
  });
});

describe("ACI pressure in SI", () => {
  test("full head is density times gravity times height, and a quarter more where it is pumped from the base", () => {
    expect(value(pressureAci_si({ ...si, external: true }))).toEqual({
      most_kPa: expect.closeTo(2.4 * g * 4.2, 9),
      governs: "full head",
      hydrostatic_m: 4.2,
      because: "external",
    });
    expect(value(pressureAci_si({ ...si, fromBase: true })).most_kPa).toBeCloseTo(1.25 * 2.4 * g * 4.2, 9);
    expect(value(pressureAci_si({ ...si, fromBase: true })).because).toBe("pumped from base");
  });

  test("a low form is at full head before formula and floor count", () => {
    expect(value(pressureAci_si({ ...si, height_m: 1 }))).toEqual({
      most_kPa: expect.closeTo(2.4 * g, 9),
      governs: "full head",
      hydrostatic_m: 1,
      because: "",
    });
  });

  test("formula (b) and (c), by hand", () => {
    // 7.2 + 785 x 1.5 / 37.8; 7.2 + 1156 / 37.8 + 244 x 3 / 37.8.
    expect(value(pressureAci_si(si))).toMatchObject({ most_kPa: expect.closeTo(38.35, 2), governs: "(b)", because: "" });
    const fast = value(pressureAci_si({ ...si, rise_m_h: 3 }));
    expect(fast).toMatchObject({ most_kPa: expect.closeTo(57.15, 2), governs: "(c)" });
    expect(fast.hydrostatic_m).toBeCloseTo(57.147 / (2.4 * g), 3);
  });

  test("light concrete presses by its weight coefficient, floor too, and a slow set by the chemistry coefficient", () => {
    // Cw of 2000 kg/m3 is 0.5 (1 + 2000 / 2320).
    const light = { ...si, density_kg_m3: 2000 };
    expect(value(pressureAci_si(light)).most_kPa).toBeCloseTo(38.351 * 0.931, 2);
    expect(value(pressureAci_si({ ...light, rise_m_h: 0.3 })).most_kPa).toBeCloseTo(30 * 0.931, 2);
    expect(value(pressureAci_si({ ...si, chemistry: 1.4 })).most_kPa).toBeCloseTo(38.351 * 1.4, 2);
  });

  test("is hydrostatic down to the depth it says, never over full head, and no less for colder or faster concrete", () => {
    fc.assert(
      fc.property(
        fc.record({
          height_m: fc.double({ min: 0.3, max: 10, noNaN: true }),
          rise_m_h: fc.double({ min: 0.1, max: 6, noNaN: true }),
          concrete_C: fc.double({ min: 4, max: 33, noNaN: true }),
          density_kg_m3: fc.double({ min: 1500, max: 3000, noNaN: true }),
          shape: fc.constantFrom("column" as const, "wall" as const),
        }),
        (change) => {
          const found = value(pressureAci_si({ ...si, ...change }));
          const weight_kN_m3 = (change.density_kg_m3 * g) / 1000;
          expect(found.hydrostatic_m * weight_kN_m3).toBeCloseTo(found.most_kPa, 8);
          expect(found.hydrostatic_m).toBeLessThanOrEqual(change.height_m + 1e-9);
          const warmer = value(pressureAci_si({ ...si, ...change, concrete_C: change.concrete_C + 5 }));
          expect(warmer.most_kPa).toBeLessThanOrEqual(found.most_kPa + 1e-9);
          const slower = value(pressureAci_si({ ...si, ...change, rise_m_h: change.rise_m_h / 2 }));
          expect(slower.most_kPa).toBeLessThanOrEqual(found.most_kPa + 1e-9);
        },
      ),
    );
  });
});

describe("ACI pressure in US units", () => {
  test("the floor of 600 psf and both formulas go by the weight coefficient", () => {
    // Cw of 120 pcf is 0.9138 (ACI 347-04 Table 2.1).
    expect(value(pressureAci_us({ ...us, weight_pcf: 120, rise_ft_h: 1 })).most_psf).toBeCloseTo(600 * 0.9138, 1);
    expect(value(pressureAci_us({ ...us, weight_pcf: 120 })).most_psf).toBeCloseTo((150 + 45000 / 70) * 0.9138, 1);
  });

  test("says what governs and why", () => {
    expect(value(pressureAci_us(us))).toMatchObject({ governs: "(b)", because: "" });
    expect(value(pressureAci_us({ ...us, rise_ft_h: 8 }))).toMatchObject({ governs: "(c)", because: "" });
    // The floor of 600 psf is the head of 4 ft.
    expect(value(pressureAci_us({ ...us, rise_ft_h: 1, height_ft: 4 }))).toMatchObject({ most_psf: 600, governs: "full head" });
    expect(value(pressureAci_us({ ...us, height_ft: 3 }))).toEqual({ most_psf: 450, governs: "full head", hydrostatic_ft: 3, because: "" });
    expect(value(pressureAci_us({ ...us, slump_in: 8 }))).toMatchObject({ governs: "full head", hydrostatic_ft: 14 });
  });
});

describe("CIRIA 108", () => {
  const pour = { shape: "wall", form_m: 4, height_m: 4, rise_m_h: 4, concrete_C: 20, weight_kN_m3: 25, c2: 0.45 } as const;

  test("by hand: at 20 °C K is 1, a wall that rises 4 m/h feels 25 (2 + 0.45 √2)", () => {
    expect(value(pressureCiria(pour))).toEqual({
      most_kPa: expect.closeTo(25 * (2 + 0.45 * Math.SQRT2), 9),
      governs: "CIRIA 108",
      hydrostatic_m: expect.closeTo(2 + 0.45 * Math.SQRT2, 9),
    });
  });

  test("a form that fills as fast as it is high, a column sooner than a wall, and a low pour feel full head", () => {
    const full = { most_kPa: 100, governs: "full head", hydrostatic_m: 4 };
    expect(value(pressureCiria({ ...pour, rise_m_h: 16 }))).toEqual(full);
    expect(value(pressureCiria({ ...pour, shape: "column", rise_m_h: 7.2 }))).toEqual(full);
    expect(value(pressureCiria({ ...pour, shape: "wall", rise_m_h: 7.2 })).governs).toBe("CIRIA 108");
    expect(value(pressureCiria({ ...pour, height_m: 2 }))).toEqual({ most_kPa: 50, governs: "full head", hydrostatic_m: 2 });
  });
});

// From memory, as the whole of DIN 18218 here.
describe("DIN 18218", () => {
  const pour: DinPour = { consistency: "F3", height_m: 8, rise_m_h: 2, setting_h: 5, weight_kN_m3: 25, colder_K: 0 };
  const most = (change: Partial<DinPour>) => value(pressureDin({ ...pour, ...change })).most_kPa;

  test("the envelope is full head down to its depth, and all of a low form", () => {
    expect(value(pressureDin(pour))).toEqual({ most_kPa: 46, governs: "DIN 18218", hydrostatic_m: 46 / 25 });
    expect(value(pressureDin({ ...pour, height_m: 1.5 }))).toEqual({ most_kPa: 37.5, governs: "full head", hydrostatic_m: 1.5 });
    expect(value(pressureDin({ ...pour, height_m: 46 / 25 })).governs).toBe("full head");
  });

  test("never under its least value, 25 for the stiff classes and 30 for the soft", () => {
    expect(most({ consistency: "F1", rise_m_h: 0.1 })).toBe(25);
    expect(most({ consistency: "F5", rise_m_h: 0.1 })).toBe(30);
  });

  test("a slower set raises the whole of a stiff class, of a soft one what grows with the rise", () => {
    // Set at 8 h: F3 (14 x 2 + 18) x 1.231, F5 25 + 30 x 2 x 1.6.
    expect(most({ setting_h: 8 })).toBeCloseTo(46 * 1.231, 9);
    expect(most({ consistency: "F5", setting_h: 8 })).toBeCloseTo(121, 9);
  });

  test("goes by the weight and grows with the cold, softer classes more", () => {
    expect(most({ weight_kN_m3: 20 })).toBeCloseTo(46 * 0.8, 9);
    expect(most({ colder_K: 10 })).toBeCloseTo(46 * 1.3, 9);
    expect(most({ consistency: "F5", colder_K: 10 })).toBeCloseTo(85 * 1.5, 9);
  });

  test("softer, faster, slower to set: never less", () => {
    const classes: Consistency[] = ["F1", "F2", "F3", "F4", "F5", "F6"];
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4 }),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        fc.double({ min: 5, max: 10, noNaN: true }),
        (i, rise_m_h, setting_h) => {
          const at = { consistency: classes[i] as Consistency, rise_m_h, setting_h };
          expect(most({ ...at, rise_m_h: rise_m_h * 1.2 })).toBeGreaterThanOrEqual(most(at));
          expect(most({ ...at, setting_h: setting_h * 1.2 })).toBeGreaterThanOrEqual(most(at));
          expect(most({ ...at, setting_h: 5, consistency: classes[i + 1] as Consistency })).toBeGreaterThanOrEqual(
            most({ ...at, setting_h: 5 }),
          );
        },
      ),
    );
  });
});
