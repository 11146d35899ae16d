import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  formatDensity,
  formatElapsed,
  formatFigure,
  formatForce,
  formatLength,
  formatLineLoad,
  formatMass,
  formatMassPerLength,
  formatPressure,
  formatRise,
  formatSoilPressure,
  formatSpeed,
  formatTemperature,
  formatVolume,
  formatVolumeRate,
  formatWork,
  fromModel,
  type Kind,
  parseQuantity,
  parseSigned,
  partsOfQuantity,
  quantityPattern,
  toModel,
  unitsOf,
} from ".";

describe("reading", () => {
  test.each<[Kind, string, number]>([
    ["length", "12 in", 304.8],
    ["length", '12"', 304.8],
    ["length", "3 ft 6 1/2 in", 1079.5],
    ["length", "3'-6 1/2\"", 1079.5],
    ["length", "6 ft 8 in", 2032],
    ["length", "5-1/2 in", 139.7],
    ["length", "3/4 in", 19.05],
    ["length", "90 mm", 90],
    ["length", "2.4 m", 2400],
    ["length", "30cm", 300],
    ["length", " 1 yd ", 914.4],
    ["mass", "5,400 lb", 2449.398798],
    ["mass", "30 kg", 30],
    ["mass", "1.5 t", 1500],
    ["temperature", "50 °F", 10],
    ["temperature", "-40 F", -40],
    ["temperature", "32F", 0],
    ["temperature", "-5 C", -5],
    ["speed", "20 mph", 32.18688],
    ["speed", "10 m/s", 36],
    // 1 psi = 6.894757 kPa: NIST SP 811 (2008), appendix B.8, from memory.
    ["pressure", "3000 psi", 20.6842718795],
    ["pressure", "600 psf", 0.0287281553],
    ["pressure", "20 MPa", 20],
    ["time", "90 min", 90],
    ["time", "1 h 30 min", 90],
    ["time", "2 wk", 20160],
    ["time", "1 day", 1440],
    // 1 yd3 = 0.7645549 m3, 1 lb/ft3 = 16.01846 kg/m3, 1 lb/ft = 1.488164 kg/m, 1 lbf = 4.448222 N: NIST SP 811 (2008), appendix B.8, from memory.
    ["volume", "9 yd3", 6.880993721856],
    ["volume", "9 yd³", 6.880993721856],
    ["volume", "2 cu ft", 0.056633693],
    ["volume", "40 L", 0.04],
    ["volumeRate", "5 yd3/h", 3.82277428992],
    ["volumeRate", "3 m³/h", 3],
    ["volumeRate", "50 L/min", 3],
    ["density", "150 lb/ft3", 2402.76950609],
    ["density", "150 pcf", 2402.76950609],
    ["density", "564 lb/yd3", 334.6078],
    ["density", "25 kN/m³", 2549.290532],
    ["density", "2,400 kg/m3", 2400],
    ["massPerLength", "40 lb/ft", 59.5265575],
    ["force", "2000 lb", 8.896443230521],
    ["force", "2 kip", 8.896443230521],
    ["force", "500 N", 0.5],
  ])("%s %j", (kind, text, value) => {
    const read = parseQuantity(kind, text) ?? Number.NaN;
    expect(Math.abs(read - value)).toBeLessThan(1e-6 * Math.max(1, Math.abs(value)));
  });

  test.each<[Kind, string]>([
    ["length", "12"],
    ["length", "in"],
    ["length", "12 lb"],
    ["length", "6 in 3 ft"],
    ["length", "3 ft 2 ft"],
    ["length", "-3 ft"],
    ["length", "1/0 in"],
    ["length", "1.2.3 in"],
    ["length", "1,50 m"],
    ["length", "12 in or so"],
    ["length", `${"1 ".repeat(50)}in`],
    ["temperature", "50"],
    ["temperature", "50 F 3 F"],
    ["time", "soon"],
    ["time", "6 hm"],
    ["time", ""],
    ["volume", "9 yd2"],
    ["volumeRate", "5 yd3"],
    ["density", "150 lb"],
    ["force", "2 tons"],
    ["massPerLength", "40 lb"],
  ])("%s %j is none", (kind, text) => {
    expect(parseQuantity(kind, text)).toBe(null);
  });

  test("a minus is understood only where it is asked for", () => {
    expect(parseSigned("length", "-3 ft")).toBeCloseTo(-914.4, 9);
    expect(parseSigned("length", "3 ft")).toBeCloseTo(914.4, 9);
    expect(parseSigned("temperature", "-5 C")).toBe(-5);
    expect(parseSigned("length", "-x")).toBe(null);
  });

  test("parts keep the unit that was written, by its one name", () => {
    expect(partsOfQuantity("time", "2 weeks 1 day")).toEqual([
      { figure: 2, unit: "wk" },
      { figure: 1, unit: "d" },
    ]);
  });

  test("long texts of every shape are read or refused", () => {
    for (const kind of Object.keys(quantityPattern) as Kind[]) {
      for (const text of ["1".repeat(5000), "1 ft ".repeat(5000), "1,000".repeat(5000), `${"1 1/1 in".repeat(8)}x`])
        expect(parseSigned(kind, text)).toSatisfy((read: number | null) => read === null || Number.isFinite(read));
    }
  });
});

describe("converting", () => {
  const pairs = Object.entries(unitsOf).flatMap(([kind, units]) => Object.keys(units).map((unit) => [kind as Kind, unit] as const));
  test.each(pairs)("%s in %s and back", (kind, unit) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const back = fromModel(kind, toModel(kind, value, unit as never), unit as never);
        expect(Math.abs(back - value)).toBeLessThan(1e-6);
      }),
    );
  });

  test("what a figure with a unit reads as is what converting it gives", () => {
    for (const [kind, unit] of pairs) expect(parseQuantity(kind, `7.25 ${unit}`)).toBeCloseTo(toModel(kind, 7.25, unit as never), 9);
  });

  test("freezing and boiling water", () => {
    expect(toModel("temperature", 212, "F")).toBeCloseTo(100, 12);
    expect(fromModel("temperature", 0, "F")).toBeCloseTo(32, 12);
  });
});

describe("writing", () => {
  test.each([
    [660.4, "26 in", "660 mm"],
    [1473.2, "58 in", "1.473 m"],
    [19.05, "3/4 in", "19 mm"],
    [139.7, "5 1/2 in", "140 mm"],
    [1828.8, "72 in", "1.829 m"],
    [2032, "6 ft 8 in", "2.032 m"],
    [2438.4, "8 ft", "2.438 m"],
    [2440, "8 ft 1/16 in", "2.44 m"],
    [-304.8, "-12 in", "-305 mm"],
    [0, "0 in", "0 mm"],
  ])("%d mm", (length_mm, us, metric) => {
    expect([formatLength(length_mm, "us"), formatLength(length_mm, "metric")]).toEqual([us, metric]);
  });

  test("other kinds", () => {
    expect([formatMass(27.2155422, "us"), formatMass(27.2155422, "metric"), formatMass(2, "us")]).toEqual(["60 lb", "27 kg", "4.4 lb"]);
    expect([formatTemperature(10, "us"), formatTemperature(-0.2, "metric")]).toEqual(["50 °F", "0 °C"]);
    expect([formatSpeed(32.18688, "us"), formatSpeed(32.18688, "metric")]).toEqual(["20 mph", "32 km/h"]);
    expect([formatPressure(20.68427, "us"), formatPressure(20.68427, "metric")]).toEqual(["3000 psi", "20.7 MPa"]);
    expect([formatSoilPressure(71.82, "us"), formatSoilPressure(71.82, "metric"), formatSoilPressure(150.2, "metric")]).toEqual([
      "1500 psf",
      "71.8 kPa",
      "150 kPa",
    ]);
    expect([formatVolume(2.4, "us"), formatVolume(2.4, "metric")]).toEqual(["3.1 yd³", "2.4 m³"]);
    // Mixed by hand: 0.15 m3/h is not 0.1.
    expect(formatVolumeRate(0.15, "metric")).toBe("0.15 m³/h");
    expect([formatVolumeRate(3.82277, "us"), formatVolumeRate(3.82277, "metric")]).toEqual(["5 yd³/h", "3.8 m³/h"]);
    expect([formatRise(1.2192, "us"), formatRise(41.15, "us"), formatRise(1.2192, "metric")]).toEqual(["4 ft/h", "135 ft/h", "1.2 m/h"]);
    expect([formatDensity(2402.77, "us"), formatDensity(334.608, "us"), formatDensity(2402.77, "metric")]).toEqual([
      "150 lb/ft³",
      "564 lb/yd³",
      "2403 kg/m³",
    ]);
    expect([formatMassPerLength(59.5266, "us"), formatMassPerLength(59.5266, "metric")]).toEqual(["40 lb/ft", "60 kg/m"]);
    expect([formatForce(24.02, "us"), formatForce(2.5, "us"), formatForce(24.02, "metric"), formatForce(0.523, "metric")]).toEqual([
      "5400 lb",
      "562 lb",
      "24 kN",
      "0.52 kN",
    ]);
    expect([formatLineLoad(39.4, "us"), formatLineLoad(39.4, "metric")]).toEqual(["2700 lb/ft", "39.4 kN/m"]);
    expect([formatWork(90), formatWork(120), formatWork(45), formatWork(4320)]).toEqual(["1 h 30 min", "2 h", "45 min", "72 h"]);
    expect([formatElapsed(90), formatElapsed(40320), formatElapsed(4350)]).toEqual(["1 h 30 min", "28 d", "3 d 30 min"]);
    expect([formatFigure(2.5, 3), formatFigure(100, 2), formatFigure(1.04, 1)]).toEqual(["2.5", "100", "1"]);
  });

  test("a length that was written is read back to within a thirty-second of an inch or half a millimetre", () => {
    fc.assert(
      fc.property(fc.double({ min: -50_000, max: 50_000, noNaN: true }), (length_mm) => {
        expect(Math.abs((parseSigned("length", formatLength(length_mm, "us")) ?? Number.NaN) - length_mm)).toBeLessThanOrEqual(
          25.4 / 32 + 1e-6,
        );
        expect(Math.abs((parseSigned("length", formatLength(length_mm, "metric")) ?? Number.NaN) - length_mm)).toBeLessThanOrEqual(
          0.5 + 1e-6,
        );
      }),
    );
  });

  test("minutes that were written are read back exactly", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), (minutes) => {
        expect(parseQuantity("time", formatWork(minutes))).toBe(minutes);
        expect(parseQuantity("time", formatElapsed(minutes))).toBe(minutes);
      }),
    );
  });
});
