import { describe, expect, test } from "vitest";
import {
  across,
  bar,
  barSpanForSag_in,
  cement_lb_yd3,
  plyClasses,
  plywoodCarries_psf,
  pressureAci_us,
  pressureAt_psf,
  pumpedAggregate_in,
  sides_h,
  slabForm_psf,
  soffit_days,
  thrust_lb_ft,
  usualHose_in,
  withoutEvidence_days,
} from "../../src/core/concrete";
import { type Cut, quantities, trenchFor } from "../../src/core/pour";
import { buildWith, elementOf, pourOf } from "../fixtures/pour-model";

/** What every builder knows, each beside what is computed. All of it: common practice, no source. */
describe("facts of the trade (common practice, no source)", () => {
  test("a sack-mix number is sacks of cement in a cubic yard", () => {
    expect(cement_lb_yd3(6)).toBe(6 * 94);
    expect(cement_lb_yd3(5.5) / 94).toBe(5.5);
  });

  test("a pumped mix takes a smaller aggregate", () => {
    expect(pumpedAggregate_in(usualHose_in)).toBeLessThan(1.5);
    expect(pumpedAggregate_in(2)).toBeLessThan(pumpedAggregate_in(3));
  });

  test("3/4 in form plywood on joists at 12 in carries a suspended slab with stiffness to spare", () => {
    for (const thick of [4, 6, 8]) {
      const { sag_psf, carries_psf } = plywoodCarries_psf(across["3/4"]!, plyClasses.I, "across", 12, 1.5, 360);
      expect(carries_psf).toBeGreaterThan(slabForm_psf(thick, 5));
      expect(sag_psf).toBeGreaterThan(2 * slabForm_psf(thick, 5));
    }
  });

  const column = {
    shape: "column",
    height_ft: 8,
    rise_ft_h: 5,
    concrete_F: 70,
    weight_pcf: 150,
    chemistry: 1,
    slump_in: 5,
    vibrated_ft: 3,
    external: false,
    fromBase: false,
  } as const;
  const most = (change: object): number => {
    const found = pressureAci_us({ ...column, ...change });
    if (!("value" in found)) throw new Error("refused");
    return found.value.most_psf;
  };

  test("a column filled at once feels the whole head at its foot, and so does one vibrated deep", () => {
    expect(most({ rise_ft_h: 135 })).toBe(8 * 150);
    expect(most({})).toBeLessThan(8 * 150);
    expect(most({ vibrated_ft: 5 })).toBe(8 * 150);
  });

  test("the lowest bands of a column matter most: its lower half takes three quarters of the whole force", () => {
    const full = { height_ft: 8, weight_pcf: 150, most_psf: 1200 };
    expect(thrust_lb_ft(full, 4, 8) / thrust_lb_ft(full, 0, 8)).toBeCloseTo(0.75, 12);
    expect(pressureAt_psf(full, 8)).toBe(1200);
  });

  test("forms that carry stay 28 days without evidence, whatever table and curve say; sides that carry nothing come off early", () => {
    for (const kind of ["slab", "beam", "arch"] as const) {
      for (const span of [6, 15, 30]) {
        expect(withoutEvidence_days(soffit_days(kind, span, false).days, 5)).toBeGreaterThanOrEqual(28);
        expect(sides_h / 24).toBeLessThan(soffit_days(kind, span, true).days);
      }
    }
  });

  test("#5 spans farther than #4 over a soffit that must show no blocks, by about an eighth for the same sag", () => {
    for (const ends of ["simple", "held"] as const) {
      const more = barSpanForSag_in(bar(5)!, 0.375, ends) / barSpanForSag_in(bar(4)!, 0.375, ends) - 1;
      expect(Math.abs(more - 1 / 8)).toBeLessThan(0.01);
    }
  });

  const lumber = {
    flat: false,
    pieces: 1,
    grade: null,
    salvaged: false,
    measured_mm: null,
    wet: false,
    reused: false,
    from: null,
  } as const;
  const sheathing = { kind: "plywood", ply: "3/4", plyClass: "I", grain: "across", boards: null, reused: false, from: null } as const;
  const form = {
    kind: "column",
    sheathing,
    battens: null,
    bands: { stuff: { ...lumber, size: "2x4" }, at_mm: [100, 400], bolt: null },
    mass_kg: null,
    footSealed: true,
    holdDown: null,
    brace: null,
  } as const;

  test("cut plywood edges bond unless sealed: the cut list says how much edge there is", () => {
    const build = buildWith([pourOf({ elements: [elementOf({ form })] })]);
    const [ply] = quantities(build, 0).sheets;
    // Four strips 6 ft long: all their long edges but one are sawn, and one end of each.
    const strips = ply!.cut.sheets.flat();
    const ends = strips.reduce((sum, p) => sum + p.wide_mm, 0);
    const long = strips.filter((p) => p.y_mm === 0).length;
    expect(strips).toHaveLength(4);
    expect(ply!.cutEdge_mm).toBeCloseTo(ends + (2 * 4 - long) * 6 * 304.8, 6);
  });

  test("a ditch beside a form is as wide as form and bracing need", () => {
    const cut: Cut = { soil: "B", earth: "common earth", deep_mm: 900, disturbed: false };
    const wide = (braced: boolean): number => {
      const brace = {
        stuff: { ...lumber, size: "2x4" },
        spacing_mm: 1200,
        run_mm: 900,
        rise_mm: 1200,
        lands: "stake",
        foot: null,
      } as const;
      return trenchFor(pourOf(), elementOf({ form: { ...form, brace: braced ? brace : null } }), cut).trench!.wide_mm;
    };
    expect(wide(false)).toBeGreaterThan(304.8 + 2 * 609.6);
    expect(wide(true) - wide(false)).toBeCloseTo(2 * 900, 6);
  });
});
