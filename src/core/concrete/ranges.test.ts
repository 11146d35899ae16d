import { describe, expect, test } from "vitest";
import {
  type AciPour_si,
  type AciPour_us,
  aciRanges_si,
  aciRanges_us,
  type Checked,
  type CiriaPour,
  checked,
  ciriaRanges,
  type DinPour,
  dinRanges,
  evaporation_si,
  evaporation_us,
  evaporationRanges_si,
  evaporationRanges_us,
  outside,
  pourDayRanges,
  pourDayTimes,
  pressureAci_si,
  pressureAci_us,
  pressureCiria,
  pressureDin,
  type Range,
  shore,
} from ".";

const us: AciPour_us = {
  shape: "wall",
  height_ft: 8,
  rise_ft_h: 4,
  concrete_F: 70,
  weight_pcf: 150,
  chemistry: 1,
  slump_in: 4,
  vibrated_ft: 3,
  external: false,
  fromBase: false,
};
const si: AciPour_si = {
  shape: "wall",
  height_m: 3,
  rise_m_h: 1.5,
  concrete_C: 20,
  density_kg_m3: 2400,
  chemistry: 1,
  slump_mm: 100,
  vibrated_m: 1,
  external: false,
  fromBase: false,
};
const ciria: CiriaPour = { shape: "wall", form_m: 4, height_m: 3, rise_m_h: 2, concrete_C: 15, weight_kN_m3: 25, c2: 0.3 };
const din: DinPour = { consistency: "F3", height_m: 4, rise_m_h: 2, setting_h: 5, weight_kN_m3: 25, colder_K: 0 };
const day = { order_m3: 4, rate_m3_h: 4, finished_m2: 20, concrete_C: 20, pause_min: 60, finishers: 2 };

type Case = readonly [name: string, range: Range, run: (value: number) => Checked<unknown>];

/** Every input of a published formula, with the range printed beside it. */
const cases: readonly Case[] = [
  ["ACI US height", aciRanges_us.height, (height_ft) => pressureAci_us({ ...us, height_ft })],
  ["ACI US rise", aciRanges_us.rise, (rise_ft_h) => pressureAci_us({ ...us, rise_ft_h })],
  ["ACI US temperature", aciRanges_us.temperature, (concrete_F) => pressureAci_us({ ...us, concrete_F })],
  ["ACI US weight", aciRanges_us.weight, (weight_pcf) => pressureAci_us({ ...us, weight_pcf })],
  ["ACI US chemistry", aciRanges_us.chemistry, (chemistry) => pressureAci_us({ ...us, chemistry })],
  ["ACI US slump", aciRanges_us.slump, (slump_in) => pressureAci_us({ ...us, slump_in })],
  ["ACI US vibration", aciRanges_us.vibrated, (vibrated_ft) => pressureAci_us({ ...us, vibrated_ft })],
  ["ACI SI height", aciRanges_si.height, (height_m) => pressureAci_si({ ...si, height_m })],
  ["ACI SI rise", aciRanges_si.rise, (rise_m_h) => pressureAci_si({ ...si, rise_m_h })],
  ["ACI SI temperature", aciRanges_si.temperature, (concrete_C) => pressureAci_si({ ...si, concrete_C })],
  ["ACI SI density", aciRanges_si.density, (density_kg_m3) => pressureAci_si({ ...si, density_kg_m3 })],
  ["ACI SI chemistry", aciRanges_si.chemistry, (chemistry) => pressureAci_si({ ...si, chemistry })],
  ["ACI SI slump", aciRanges_si.slump, (slump_mm) => pressureAci_si({ ...si, slump_mm })],
  ["ACI SI vibration", aciRanges_si.vibrated, (vibrated_m) => pressureAci_si({ ...si, vibrated_m })],
  ["CIRIA form", ciriaRanges.form, (form_m) => pressureCiria({ ...ciria, form_m })],
  ["CIRIA height", ciriaRanges.height, (height_m) => pressureCiria({ ...ciria, height_m })],
  ["CIRIA rise", ciriaRanges.rise, (rise_m_h) => pressureCiria({ ...ciria, rise_m_h })],
  ["CIRIA temperature", ciriaRanges.temperature, (concrete_C) => pressureCiria({ ...ciria, concrete_C })],
  ["CIRIA weight", ciriaRanges.weight, (weight_kN_m3) => pressureCiria({ ...ciria, weight_kN_m3 })],
  ["CIRIA C2", ciriaRanges.c2, (c2) => pressureCiria({ ...ciria, c2 })],
  ["DIN height", dinRanges.height, (height_m) => pressureDin({ ...din, height_m })],
  ["DIN rise", dinRanges.rise, (rise_m_h) => pressureDin({ ...din, rise_m_h })],
  ["DIN setting", dinRanges.setting, (setting_h) => pressureDin({ ...din, setting_h })],
  ["DIN weight", dinRanges.weight, (weight_kN_m3) => pressureDin({ ...din, weight_kN_m3 })],
  ["DIN colder", dinRanges.colder, (colder_K) => pressureDin({ ...din, colder_K })],
  ["evaporation US concrete", evaporationRanges_us.concrete, (v) => evaporation_us(v, 70, 50, 10)],
  ["evaporation US air", evaporationRanges_us.air, (v) => evaporation_us(70, v, 50, 10)],
  ["evaporation US humidity", evaporationRanges_us.humidity, (v) => evaporation_us(70, 70, v, 10)],
  ["evaporation US wind", evaporationRanges_us.wind, (v) => evaporation_us(70, 70, 50, v)],
  ["evaporation SI concrete", evaporationRanges_si.concrete, (v) => evaporation_si(v, 20, 50, 10)],
  ["evaporation SI air", evaporationRanges_si.air, (v) => evaporation_si(20, v, 50, 10)],
  ["evaporation SI humidity", evaporationRanges_si.humidity, (v) => evaporation_si(20, 20, v, 10)],
  ["evaporation SI wind", evaporationRanges_si.wind, (v) => evaporation_si(20, 20, 50, v)],
  ["pour day volume", pourDayRanges.volume, (order_m3) => pourDayTimes({ ...day, order_m3 })],
  ["pour day rate", pourDayRanges.rate, (rate_m3_h) => pourDayTimes({ ...day, rate_m3_h })],
  ["pour day floated", pourDayRanges.finished, (finished_m2) => pourDayTimes({ ...day, finished_m2 })],
  ["pour day temperature", pourDayRanges.temperature, (concrete_C) => pourDayTimes({ ...day, concrete_C })],
  ["pour day pause", pourDayRanges.pause, (pause_min) => pourDayTimes({ ...day, pause_min })],
  ["pour day hands", pourDayRanges.finishers, (finishers) => pourDayTimes({ ...day, finishers })],
];

describe("an input and its published range", () => {
  test.each(cases)("%s: both ends count, what lies past them or is no number comes back with the range", (_, range, run) => {
    expect(range.least).toBeLessThan(range.most);
    for (const given of [range.least, range.most]) expect(run(given)).toHaveProperty("value");
    const past = (range.most - range.least) * 1e-6;
    for (const given of [range.least - past, range.most + past, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(run(given)).toEqual({ refused: [{ outOfRange: range, given }] });
    }
  });

  test("several that leave their range come back together, in the order of the ranges, and nothing is computed", () => {
    const range = (name: string): Range => ({ name, least: 1, most: 2, unit: "m", source: "this test" });
    const ranges = { first: range("first"), second: range("second"), third: range("third") };
    const given = { third: 3, second: 2, first: 0 };
    expect(outside(ranges, given).map((one) => [one.outOfRange.name, one.given])).toEqual([
      ["first", 0],
      ["third", 3],
    ]);
    const never = () => {
      throw new Error("computed all the same");
    };
    expect(checked(ranges, given, never)).toEqual({ refused: outside(ranges, given) });
    expect(checked(ranges, { first: 1, second: 1.5, third: 2 }, () => 42)).toEqual({ value: 42 });
  });

  // NDS 3.7.1.4: a column in use is no more slender than 50.
  test("a shore more slender than 50, or no shore at all, gets no figure", () => {
    const run = (length_in: number) => shore(length_in, 3.5, 12.25, 1687.5, 580e3);
    expect(run(175)).toHaveProperty("value");
    const slender = run(175.1);
    expect("refused" in slender && slender.refused.map((one) => [one.outOfRange.name, one.outOfRange.most])).toEqual([
      ["length over thickness", 50],
    ]);
    const none = run(5);
    expect("refused" in none && none.refused.map((one) => one.outOfRange.name)).toEqual(["unbraced length of the shore"]);
  });
});
