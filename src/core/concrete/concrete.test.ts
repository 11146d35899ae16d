import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type AciPour_us,
  ageFactor,
  allowed,
  bands,
  columnFormula_us,
  grades,
  layout,
  lumberMember,
  pressureAci_us,
  pressureAt_psf,
  pressureCiria,
  sections,
  thrust_lb_ft,
  uplift_lb_ft,
  wallFormula_us,
} from ".";

const pours: fc.Arbitrary<AciPour_us> = fc.record({
  shape: fc.constantFrom("column" as const, "wall" as const),
  height_ft: fc.double({ min: 0.5, max: 30, noNaN: true }),
  rise_ft_h: fc.double({ min: 0.5, max: 30, noNaN: true }),
  concrete_F: fc.double({ min: 40, max: 100, noNaN: true }),
  weight_pcf: fc.double({ min: 100, max: 170, noNaN: true }),
  chemistry: fc.constantFrom(1, 1.2, 1.4),
  slump_in: fc.double({ min: 0, max: 10, noNaN: true }),
  vibrated_ft: fc.double({ min: 0, max: 8, noNaN: true }),
  external: fc.boolean(),
  fromBase: fc.constant(false),
});

describe("pressure", () => {
  test("the two ACI wall formulas meet at 7 ft/h at any temperature", () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 100, noNaN: true }), (F) => {
        expect(wallFormula_us(7, F)).toBeCloseTo(columnFormula_us(7, F), 8);
      }),
    );
  });

  test("never exceeds full head, and is hydrostatic down to the depth it says", () => {
    fc.assert(
      fc.property(pours, (pour) => {
        const found = pressureAci_us(pour);
        if (!("value" in found)) throw new Error("in range, yet refused");
        const { most_psf, hydrostatic_ft } = found.value;
        expect(most_psf).toBeLessThanOrEqual(pour.weight_pcf * pour.height_ft + 1e-9);
        expect(hydrostatic_ft * pour.weight_pcf).toBeCloseTo(most_psf, 6);
      }),
    );
  });

  test("a rate, a temperature or a slump outside the printed range is refused by name, never clamped", () => {
    const pour: AciPour_us = {
      shape: "wall",
      height_ft: 8,
      rise_ft_h: 4,
      concrete_F: 30,
      weight_pcf: 150,
      chemistry: 1,
      slump_in: 4,
      vibrated_ft: 3,
      external: false,
      fromBase: false,
    };
    const refused = pressureAci_us(pour);
    expect("refused" in refused && refused.refused.map((r) => [r.outOfRange.name, r.outOfRange.least, r.given])).toEqual([
      ["concrete temperature", 40, 30],
    ]);
    expect("refused" in pressureAci_us({ ...pour, concrete_F: 70, rise_ft_h: Number.NaN })).toBe(true);
  });

  test("over 7 in slump, external or deep vibration, and pumping from the base mean full head", () => {
    const pour: AciPour_us = {
      shape: "wall",
      height_ft: 10,
      rise_ft_h: 3,
      concrete_F: 70,
      weight_pcf: 150,
      chemistry: 1,
      slump_in: 4,
      vibrated_ft: 3,
      external: false,
      fromBase: false,
    };
    const of = (change: Partial<AciPour_us>) => {
      const found = pressureAci_us({ ...pour, ...change });
      return "value" in found ? [found.value.most_psf, found.value.because] : null;
    };
    expect(of({})).toEqual([600, ""]);
    expect(of({ slump_in: 7.5 })).toEqual([1500, "slump"]);
    expect(of({ external: true })).toEqual([1500, "external"]);
    expect(of({ vibrated_ft: 5 })).toEqual([1500, "vibration"]);
    expect(of({ fromBase: true })).toEqual([1875, "pumped from base"]);
    expect(of({ rise_ft_h: 16 })).toEqual([1500, "rise"]);
  });

  test("CIRIA gives no more than full head, and a colder concrete presses no less", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 10, noNaN: true }),
        fc.double({ min: 0.2, max: 10, noNaN: true }),
        fc.double({ min: 5, max: 30, noNaN: true }),
        (h, r, c) => {
          const at = (concrete_C: number) => {
            const found = pressureCiria({ shape: "wall", form_m: h, height_m: h, rise_m_h: r, concrete_C, weight_kN_m3: 25, c2: 0.3 });
            if (!("value" in found)) throw new Error("refused");
            return found.value.most_kPa;
          };
          expect(at(c)).toBeLessThanOrEqual(25 * h + 1e-9);
          expect(at(c + 5)).toBeLessThanOrEqual(at(c) + 1e-9);
        },
      ),
    );
  });
});

describe("forces from the diagram", () => {
  const diagrams = fc.record({
    height_ft: fc.double({ min: 0.5, max: 20, noNaN: true }),
    weight_pcf: fc.double({ min: 100, max: 170, noNaN: true }),
    most_psf: fc.double({ min: 300, max: 3000, noNaN: true }),
  });

  test("the thrust between two depths is the diagram's area", () => {
    fc.assert(
      fc.property(diagrams, fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (d, a, b) => {
        const [from, to] = [Math.min(a, b) * d.height_ft, Math.max(a, b) * d.height_ft];
        const slices = 4000;
        let area = 0;
        for (let i = 0; i < slices; i += 1) area += (pressureAt_psf(d, from + ((i + 0.5) * (to - from)) / slices) * (to - from)) / slices;
        expect(thrust_lb_ft(d, from, to)).toBeCloseTo(area, 1);
      }),
      { numRuns: 40 },
    );
  });

  test("uplift is zero on a vertical face and the weight of the missing wedge at full head", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 12, noNaN: true }), fc.double({ min: 0, max: 0.5, noNaN: true }), (h, batter) => {
        const d = { height_ft: h, weight_pcf: 150, most_psf: 150 * h };
        expect(uplift_lb_ft(d, 0)).toBe(0);
        expect(uplift_lb_ft(d, batter)).toBeCloseTo((150 * h * (h * batter)) / 2, 6);
      }),
    );
  });
});

describe("members and bands", () => {
  const fir = grades["DF-L No 2"] as NonNullable<(typeof grades)[string]>;
  const use = { duration: 1.25, wet: true, repetitive: false } as const;
  const two = sections["2x4"] as NonNullable<(typeof sections)[string]>;
  const stuff = { section: two, pieces: 2, allowed: allowed(fir, "2x4", use), span_in: 18, side_in: 12, bolt_lb: 2000 };

  test("what a member carries of what it may grows with the load, and the largest span carries exactly what it may", () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 3000, noNaN: true }), fc.double({ min: 8, max: 60, noNaN: true }), (load, span) => {
        const at = (plf: number, inches: number) => lumberMember(two, 2, stuff.allowed, 3, inches, plf, [{ kind: "ratio", of: 360 }]);
        expect(at(load * 1.1, span).governs.of100).toBeGreaterThanOrEqual(at(load, span).governs.of100);
        const longest = at(load, span).largestSpan_in as number;
        expect(at(load, longest).governs.of100).toBeCloseTo(100, 4);
      }),
    );
  });

  test("the loads of all bands add up to the diagram, and a corner bolt takes half a band's load", () => {
    const d = { height_ft: 6, weight_pcf: 150, most_psf: 900 };
    const placed = bands(d, [4, 12, 20, 29, 40, 51, 64], stuff);
    const total = placed.reduce((sum, band) => sum + band.load_lb, 0);
    expect(total).toBeCloseTo(thrust_lb_ft(d, 0, 6), 6);
    for (const band of placed) expect(band.bolt_lb).toBeCloseTo(band.load_lb / 2, 9);
  });

  test("a layout from the base up carries everything and never sets bands closer as the pressure falls", () => {
    const d = { height_ft: 8, weight_pcf: 150, most_psf: 1200 };
    const placed = layout(d, stuff, () => 18);
    if (placed === null) throw new Error("no layout");
    expect(bands(d, placed, stuff).every((band) => band.result.governs.of100 <= 100)).toBe(true);
    const gaps = placed.slice(1, -1).map((at, i) => at - (placed[i] as number));
    expect(gaps.every((gap, i) => i === 0 || gap >= (gaps[i - 1] as number))).toBe(true);
    expect(placed[0]).toBeLessThanOrEqual(6);
  });

  test("a form that no spacing makes strong enough has no layout", () => {
    expect(layout({ height_ft: 20, weight_pcf: 150, most_psf: 3000 }, { ...stuff, pieces: 1, bolt_lb: 100 }, () => 18)).toBeNull();
  });
});

test("warmer never counts for less", () => {
  fc.assert(
    fc.property(fc.double({ min: -20, max: 40, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }), (c, more) => {
      expect(ageFactor(c + more, 20)).toBeGreaterThanOrEqual(ageFactor(c, 20));
    }),
  );
});
