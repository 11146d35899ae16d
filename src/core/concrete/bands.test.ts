import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  allowed,
  type BandStuff,
  bands,
  bandUnder,
  between_lb_ft,
  type Diagram,
  grades,
  type LayoutRules,
  layout,
  layoutBy,
  type Section,
  sections,
  stretches,
} from ".";

/** 600 psf all over: each inch of height is 50 lb on a foot of width. */
const even = (high_in: number): Diagram => ({ height_ft: high_in / 12, weight_pcf: 6e6, most_psf: 600 });
/** Carries so many inches of that, and a hair more. */
const rules = (inches: number, change: Partial<LayoutRules> = {}): LayoutRules => ({
  of100: (line_lb_ft) => (100 * line_lb_ft) / (50 * inches + 0.5),
  gap_in: () => 100,
  first_in: 4,
  widest_in: 24,
  step_in: 1,
  ...change,
});

describe("which stretch of form each band carries", () => {
  const head: Diagram = { height_ft: 4, weight_pcf: 150, most_psf: 600 };

  test("to half way to its neighbours, to the foot and to the top, in whatever order they are given", () => {
    const found = stretches(head, [40, 4, 12]);
    expect(found.map((s) => [s.at_in, s.from_in, s.to_in])).toEqual([
      [4, 0, 8],
      [12, 8, 26],
      [40, 26, 48],
    ]);
    // Full head of 150 pcf: 75 (a² - b²) between the depths a and b in ft.
    expect(found[0]?.line_lb_ft).toBeCloseTo(75 * (16 - (40 / 12) ** 2), 9);
    expect(found[2]?.line_lb_ft).toBeCloseTo(75 * (22 / 12) ** 2, 9);
    expect(between_lb_ft(head, 0, 48)).toBeCloseTo(1200, 9);
    const whole = expect.closeTo(1200, 9);
    expect(stretches(head, [20])).toEqual([{ at_in: 20, from_in: 0, to_in: 48, line_lb_ft: whole, most_lb_ft: whole }]);
  });

  // Beam tables: 0.4, 1.1, 1.1, 0.4 w l over three equal spans; with the lowest hanging over, 2, 1/2 and 1/2 w l by the three moment equation.
  test("what runs through leaves more on some, and on others where the foot is held too", () => {
    const most = (footHeld?: boolean) => stretches(even(60), [20, 40, 60], footHeld).map((s) => Math.round(s.most_lb_ft / 10) * 10);
    expect(stretches(even(60), [20, 40, 60]).map((s) => Math.round(s.line_lb_ft))).toEqual([1500, 1000, 500]);
    expect(most()).toEqual([2000, 1000, 500]);
    expect(most(false)).toEqual([2000, 1000, 500]);
    expect(most(true)).toEqual([2000, 1100, 500]);
  });

  test("two at one height and none at all: shares to half way, and nothing", () => {
    for (const s of stretches(head, [12, 30, 30], true)) expect(s.most_lb_ft).toBe(s.line_lb_ft);
    expect([stretches(head, []), stretches(head, [], true)]).toEqual([[], []]);
  });
});

describe("a layout from the foot up", () => {
  test("the same pressure all over: gaps of what a band carries, the last as high as there is room", () => {
    expect(layoutBy(even(120), rules(12))).toEqual([4, 16, 28, 40, 52, 64, 76, 88, 100, 112, 119]);
    expect(layoutBy(even(32), rules(12))).toEqual([4, 16, 28]);
  });

  test("the lowest band carries the foot too, so the gap over it may be the smaller", () => {
    expect(layoutBy(even(34), rules(6))).toEqual([4, 8, 14, 20, 26, 32]);
  });

  test("no layout where the lowest cannot carry the foot, or the highest the top", () => {
    expect(layoutBy(even(34), rules(5))).toBeNull();
    expect(layoutBy(even(36), rules(6))).toBeNull();
  });

  test("a band may be used up exactly", () => {
    expect(layoutBy(even(24), rules(1, { of100: () => 100 }))).toEqual([4, 23]);
    expect(layoutBy(even(24), rules(1, { of100: () => 100.001 }))).toBeNull();
  });

  test("a gap is no wider than what lies behind spans at the pressure over the lower band", () => {
    const head: Diagram = { height_ft: 4, weight_pcf: 150, most_psf: 600 };
    const behind = rules(1e6, { gap_in: (psf) => (psf > 300 ? 6 : 10) });
    expect(layoutBy(head, behind)).toEqual([4, 10, 16, 22, 28, 38, 47]);
    expect(layoutBy(even(60), rules(1e6, { gap_in: () => 7.9, step_in: 0.5 }))).toEqual([4, 11.5, 19, 26.5, 34, 41.5, 49, 56.5]);
  });

  test("nor wider than the widest, and bands stand no closer than 4 in but for the last", () => {
    expect(layoutBy(even(54), rules(1e6))).toEqual([4, 28, 52]);
    expect(layoutBy(even(40), rules(1e6, { widest_in: 12 }))).toEqual([4, 16, 28, 39]);
    expect(layoutBy(even(20), rules(1e6, { gap_in: () => 4 }))).toEqual([4, 8, 12, 16]);
    expect(layoutBy(even(20), rules(1e6, { gap_in: () => 3 }))).toBeNull();
    expect(layoutBy(even(20), rules(1e6, { gap_in: () => 3.9, step_in: 0.5 }))).toBeNull();
    expect(layoutBy(even(29.5), rules(1e6, { gap_in: () => 7 }))).toEqual([4, 11, 18, 25, 28]);
  });

  test("a form lower than two first heights has one band at half its height", () => {
    expect(layoutBy(even(6), rules(12))).toEqual([3]);
    expect(layoutBy(even(8), rules(12))).toEqual([4]);
  });

  test("every layout carries everything, starts and ends as it must, and no gap but the last could be a step wider", () => {
    const diagrams = fc.record({
      height_ft: fc.double({ min: 1, max: 12, noNaN: true }),
      weight_pcf: fc.constant(150),
      most_psf: fc.double({ min: 300, max: 1800, noNaN: true }),
    });
    fc.assert(
      fc.property(diagrams, fc.double({ min: 600, max: 3000, noNaN: true }), (d, may) => {
        const by = rules(1, { of100: (line) => (100 * line) / may, gap_in: () => 18, step_in: 0.5 });
        const placed = layoutBy(d, by);
        if (placed === null) return;
        const high_in = d.height_ft * 12;
        const top = placed[placed.length - 1] as number;
        expect(placed[0]).toBeCloseTo(Math.min(4, high_in / 2), 9);
        expect(high_in - top).toBeLessThanOrEqual(4);
        expect(top).toBeLessThan(high_in);
        for (const s of stretches(d, placed)) expect(s.line_lb_ft).toBeLessThanOrEqual(may);
        for (let i = 1; i < placed.length - 1; i += 1) {
          const [below, at, wider] = [placed[i - 2], placed[i - 1] as number, (placed[i] as number) + 0.5];
          const low = below === undefined ? 0 : (below + at) / 2;
          const half = (at + wider) / 2;
          const own = between_lb_ft(d, low, half);
          const next = between_lb_ft(d, half, Math.min(high_in, wider + (wider - at) / 2));
          expect(wider - at > 18 || wider > high_in - 1 || Math.max(own, next) > may).toBe(true);
        }
      }),
    );
  });
});

describe("bands of a column", () => {
  const fir = grades["DF-L No 2"] as NonNullable<(typeof grades)[string]>;
  const stuff = (): BandStuff => ({
    section: sections["2x4"] as Section,
    pieces: 2,
    allowed: allowed(fir, "2x4", { duration: 1.25, wet: true, repetitive: false }),
    span_in: 18,
    side_in: 12,
    bolt_lb: 2000,
  });

  test("a corner bolt takes half a band's load and is judged only where its strength is known", () => {
    const known = bandUnder(stuff(), 900).checks;
    expect(known[known.length - 1]).toEqual({ kind: "tension", of100: expect.closeTo(22.5, 9), span_in: null });
    const unknown = bandUnder({ ...stuff(), bolt_lb: null }, 900);
    expect(unknown.checks.map((check) => check.kind)).toEqual(["bending", "shear", "sag"]);
    expect(bandUnder({ ...stuff(), bolt_lb: 100 }, 900).governs).toMatchObject({ kind: "tension", of100: 450 });
  });

  test("sag is judged by l/360 where nothing else is said", () => {
    const sag = (sags?: BandStuff["sags"]) =>
      bandUnder({ ...stuff(), ...(sags ? { sags } : {}) }, 900).checks.find((c) => c.kind === "sag")?.of100;
    expect(sag()).toBe(sag([{ kind: "ratio", of: 360 }]));
    expect((sag([{ kind: "ratio", of: 270 }]) as number) / (sag() as number)).toBeCloseTo(0.75, 9);
  });

  test("a side of 18 in loads its bands half as much again as one of 12", () => {
    const d: Diagram = { height_ft: 4, weight_pcf: 150, most_psf: 600 };
    const loads = (side_in: number) => bands(d, [4, 20, 40], { ...stuff(), side_in }).map((band) => band.load_lb);
    expect(loads(12).map((load, i) => (loads(18)[i] as number) / load)).toEqual([1.5, 1.5, 1.5].map((r) => expect.closeTo(r, 9)));
    expect(bands(d, [20], stuff())[0]).toMatchObject({ load_lb: expect.closeTo(1200, 9), bolt_lb: expect.closeTo(600, 9) });
  });

  test("are laid out in half inches from 4 in, at most 24 in apart, or as is said", () => {
    const light: Diagram = { height_ft: 4.5, weight_pcf: 1, most_psf: 5 };
    expect(layout(light, stuff(), () => 100)).toEqual([4, 28, 52]);
    expect(layout(light, stuff(), () => 12.9, 6, 10)).toEqual([6, 16, 26, 36, 46, 53]);
    expect(layout(light, stuff(), () => 12.9)).toEqual([4, 16.5, 29, 41.5, 53]);
  });
});
