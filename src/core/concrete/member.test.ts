import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Allowed,
  across,
  allowed,
  area_in2,
  bearing,
  forcedMember,
  grades,
  judged,
  lumberMember,
  type MemberCheck,
  modulus_in3,
  patchMember,
  plyClasses,
  plywoodMember,
  pointMember,
  type Section,
  type Spans,
  sections,
  shoreMember,
  tension,
} from ".";

const fir = grades["DF-L No 2"] as NonNullable<(typeof grades)[string]>;
const two = sections["2x4"] as Section;
const wet = { duration: 1.25, wet: true, repetitive: true } as const;
const stud = allowed(fir, "2x4", wet);
const wale = allowed(fir, "2x4", { ...wet, repetitive: false });
const l360 = { kind: "ratio", of: 360 } as const;
const sixteenth = { kind: "fixed", inches: 1 / 16 } as const;
const of = (checks: readonly MemberCheck[], i: number) => checks[i] as MemberCheck;

// University form design lecture, week 7: the spans it prints are those at which a check is just met.
describe("the wall form of the lecture", () => {
  test.each([
    [0, "bending", 34.09],
    [1, "shear", 36.3],
    [2, "sag", 41.5],
    [3, "sag", 35.63],
  ] as const)("stud: check %d, %s, is met at %d in", (i, kind, span) => {
    const check = of(lumberMember(two, 1, stud, 3, span, 521.25, [l360, sixteenth]).checks, i);
    expect(check.kind).toBe(kind);
    expect(Math.abs(check.of100 - 100)).toBeLessThan(0.3);
    expect(Math.abs((check.span_in as number) - span)).toBeLessThan(0.03);
  });

  test.each([
    [0, "bending", 22.48],
    [1, "shear", 21.65],
    [2, "sag", 32.94],
    [3, "sag", 29.96],
  ] as const)("doubled wale: check %d, %s, is met at %d in", (i, kind, span) => {
    const check = of(lumberMember(two, 2, wale, 3, span, 2085, [l360, sixteenth]).checks, i);
    expect(check.kind).toBe(kind);
    expect(Math.abs(check.of100 - 100)).toBeLessThan(0.35);
  });

  test.each([
    [0, "bending", 9.2],
    [1, "rolling shear", 7.13 + 1.5],
    [2, "sag", 11.1],
    [3, "sag", 13.25],
  ] as const)("plywood: check %d, %s, is met at %d in, rolling shear counted between the studs", (i, kind, span) => {
    const plies = { thick_in: 0.75, inertia_in4: 0.197, modulus_in3: 0.412, rolling_in2: 6.762 };
    const ply = { elasticity: 1.5e6, elasticityShear: 1.5e6, bending: 1787.5, rolling: 55 };
    const check = of(plywoodMember(plies, ply, 3, span, 1.5, 1042.5, [l360, sixteenth]).checks, i);
    expect(check.kind).toBe(kind);
    expect(Math.abs(check.of100 - 100)).toBeLessThan(0.3);
    expect(Math.abs((check.span_in as number) - span)).toBeLessThan(0.03);
  });

  test("bearing of stud on wale, and a tie of 4000 lb under 3336", () => {
    expect(bearing(1042.5, 4.5, stud.bearing)).toEqual({
      kind: "bearing",
      of100: expect.closeTo((100 * 231.667) / 418.75, 2),
      span_in: null,
    });
    expect(tension(3336, 4000)).toEqual({ kind: "tension", of100: expect.closeTo(83.4, 9), span_in: null });
  });
});

describe("any member", () => {
  const load = fc.double({ min: 50, max: 3000, noNaN: true });
  const spans = fc.constantFrom<Spans>(1, 2, 3);
  const met = (at: (span: number) => readonly MemberCheck[], from: number) => {
    at(from).forEach((check, i) => {
      if (check.span_in === null) return;
      // Within its own depth of a support a load makes no shear: a span that short is carried whatever lies on it.
      expect(of(at(check.span_in), i).of100).toBeCloseTo(100, 5);
    });
  };

  test("each check of lumber and plywood is met exactly at the span it allows", () => {
    const ply = across["3/4"] as NonNullable<(typeof across)[string]>;
    fc.assert(
      fc.property(load, spans, (lb, n) => {
        met((span) => lumberMember(two, 2, stud, n, span, lb, [l360, sixteenth]).checks, 24);
        met((span) => plywoodMember(ply, plyClasses.I, n, span, 1.5, lb, [l360, sixteenth]).checks, 12);
        met((span) => pointMember(two, 2, stud, span, lb, { bending: 0.25, shear: 0.5, sag: 1 / 48 }, [l360, sixteenth]).checks, 24);
      }),
    );
  });

  test("two pieces side by side are half as used as one", () => {
    const half = (one: readonly MemberCheck[], both: readonly MemberCheck[]) =>
      one.forEach((check, i) => {
        expect(check.of100).toBeGreaterThan(0);
        expect(of(both, i).of100).toBeCloseTo(check.of100 / 2, 9);
      });
    const by = { bending: 0.25, shear: 0.5, sag: 1 / 48 };
    half(lumberMember(two, 1, stud, 3, 30, 400, [l360]).checks, lumberMember(two, 2, stud, 3, 30, 400, [l360]).checks);
    half(pointMember(two, 1, stud, 30, 400, by, [l360]).checks, pointMember(two, 2, stud, 30, 400, by, [l360]).checks);
    half(patchMember(two, 1, stud, 30, 12, 400, [l360]).checks, patchMember(two, 2, stud, 30, 12, 400, [l360]).checks);
    half(forcedMember(two, 1, stud, 900, 90), forcedMember(two, 2, stud, 900, 90));
    half(shoreMember(900, two, 1, stud, 40, 60).checks.slice(0, 1), shoreMember(900, two, 2, stud, 40, 60).checks.slice(0, 1));
  });

  test("a span shorter than two depths feels no shear, one that lies on its supports no rolling shear", () => {
    expect(of(lumberMember(two, 1, stud, 3, 6, 5000, [l360]).checks, 1).of100).toBe(0);
    const ply = across["1/2"] as NonNullable<(typeof across)[string]>;
    expect(of(plywoodMember(ply, plyClasses.I, 3, 1, 1.5, 500, [l360]).checks, 1).of100).toBe(0);
  });

  test("nothing on it: nothing used, and no span that limits it", () => {
    const idle = lumberMember(two, 1, stud, 3, 30, 0, [l360]);
    expect(idle.checks.map((check) => [check.of100, check.span_in])).toEqual([
      [0, null],
      [0, null],
      [0, null],
    ]);
    expect(idle.largestSpan_in).toBeNull();
  });

  test("the most used check governs, the first of equals; the smallest span is the largest it may have", () => {
    const check = (kind: MemberCheck["kind"], of100: number, span_in: number | null): MemberCheck => ({ kind, of100, span_in });
    const all = [check("bending", 60, 30), check("shear", 80, 26), check("sag", 80, 28), check("tension", 10, null)];
    expect(judged(all)).toEqual({ checks: all, governs: all[1], largestSpan_in: 26 });
    expect(judged([check("tension", 10, null)]).largestSpan_in).toBeNull();
    const partly = judged([check("bending", 5, Number.POSITIVE_INFINITY), check("sag", 4, 50)]);
    expect(partly.checks.map((one) => one.span_in)).toEqual([null, 50]);
    expect(partly.largestSpan_in).toBe(50);
  });
});

describe("point, middle and given loads, from statics", () => {
  const f: Allowed = { bending: 1000, shear: 100, bearing: 400, elasticity: 1.5e6, elasticityMin: 5e5, compression: 1000 };
  const by = { bending: 0.25, shear: 0.5, sag: 1 / 48 };

  test("P l / 4, P / 2 and P l³ / 48 E I of one load in the middle", () => {
    const checks = pointMember(two, 1, f, 40, 100, by, [l360, sixteenth]).checks;
    expect(of(checks, 0).of100).toBeCloseTo((100 * 1000) / 3.0625 / 1000, 9);
    expect(of(checks, 1)).toEqual({ kind: "shear", of100: expect.closeTo((100 * 1.5 * 50) / 5.25 / 100, 9), span_in: null });
    const sag = (100 * 40 ** 3) / (48 * 1.5e6 * 5.359375);
    expect(of(checks, 2).of100).toBeCloseTo((100 * sag) / (40 / 360), 9);
    expect(of(checks, 3).of100).toBeCloseTo((100 * sag) / (1 / 16), 9);
    expect(checks.map((check) => check.kind)).toEqual(["bending", "shear", "sag", "sag"]);
    // 4 F S / P, √(48 E I / 360 P) and ∛(48 E I / 16 P).
    const stiff = (48 * 1.5e6 * 5.359375) / 100;
    expect(checks.map((check) => check.span_in)).toEqual(
      [122.5, null, Math.sqrt(stiff / 360), Math.cbrt(stiff / 16)].map((span) => (span === null ? null : expect.closeTo(span, 9))),
    );
  });

  test("a band: half its load at either bolt, its sag against a share of the span or a fixed amount", () => {
    const checks = patchMember(two, 1, f, 20, 20, 300, [l360, sixteenth]).checks;
    expect(of(checks, 1)).toEqual({ kind: "shear", of100: expect.closeTo((100 * 1.5 * 150) / 5.25 / 100, 9), span_in: null });
    const sag = (5 * 300 * 20 ** 3) / (384 * 1.5e6 * 5.359375);
    expect(of(checks, 2)).toEqual({ kind: "sag", of100: expect.closeTo((100 * sag) / (20 / 360), 9), span_in: null });
    expect(of(checks, 3).of100).toBeCloseTo((100 * sag) / (1 / 16), 9);
  });

  test("a load narrower than nothing is one in the middle, a wider than the span lies on all of it", () => {
    const bend = (loaded: number) => of(patchMember(two, 1, f, 20, loaded, 300, [l360]).checks, 0).of100;
    expect(bend(0)).toBeCloseTo((100 * 300 * 20) / 4 / 3.0625 / 1000, 9);
    expect(bend(30)).toBe(bend(20));
    expect(of(patchMember(two, 1, f, 20, 0, 300, [l360]).checks, 2).of100).toBeCloseTo(
      (100 * ((300 * 20 ** 3) / (48 * 1.5e6 * 5.359375))) / (20 / 360),
      9,
    );
  });

  test("a moment of S F and a shear of two thirds of A F use a member up", () => {
    const checks = forcedMember(two, 2, f, 2 * modulus_in3(two) * 1000, (2 * 2 * area_in2(two) * 100) / 3);
    expect(checks.map((one) => [one.kind, one.span_in])).toEqual([
      ["bending", null],
      ["shear", null],
    ]);
    for (const one of checks) expect(one.of100).toBeCloseTo(100, 9);
  });
});
