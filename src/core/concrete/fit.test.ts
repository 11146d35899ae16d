import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitHyperbola, fittedCurve, gainCurve, type Shown } from ".";

describe("a curve through shown results", () => {
  const at = (ultimate: number, k: number, age_days: number): Shown => ({
    age_days,
    share: (ultimate * k * age_days) / (1 + k * age_days),
  });

  test("finds the hyperbola the results lie on, whatever its figures", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1.5, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true }), (ultimate, k) => {
        const fit = fitHyperbola([1, 3, 7, 28].map((age) => at(ultimate, k, age)));
        expect(fit?.ultimate).toBeCloseTo(ultimate, 6);
        expect(fit?.k_per_day).toBeCloseTo(k, 6);
      }),
    );
  });

  test("least squares: ages over shares 2, 3.5, 4 at 1, 2, 3 days give a slope of 1 and a start of 7/6", () => {
    const fit = fitHyperbola([
      { age_days: 1, share: 1 / 2 },
      { age_days: 2, share: 2 / 3.5 },
      { age_days: 3, share: 3 / 4 },
    ]);
    expect(fit?.ultimate).toBeCloseTo(1, 9);
    expect(fit?.k_per_day).toBeCloseTo(6 / 7, 9);
  });

  test("none through one age or two an instant apart, through results that fall, grow straight on or ever faster; what shows nothing is left out", () => {
    expect(fitHyperbola([])).toBeNull();
    expect(fitHyperbola([at(1, 0.3, 7)])).toBeNull();
    expect(fitHyperbola([at(1, 0.3, 7), at(1.1, 0.3, 7)])).toBeNull();
    const falls = [
      { age_days: 3, share: 0.9 },
      { age_days: 28, share: 9 },
    ];
    expect(fitHyperbola(falls)).toBeNull();
    const faster = [
      { age_days: 2, share: 0.2 },
      { age_days: 4, share: 0.3999 },
      { age_days: 8, share: 0.85 },
    ];
    expect(fitHyperbola(faster)).toBeNull();
    const through = [
      { age_days: 1, share: 0.5 },
      { age_days: 2, share: 0.4 },
    ];
    expect(fitHyperbola(through)).toBeNull();
    const straight = [
      { age_days: 1, share: 0.1 },
      { age_days: 2, share: 0.2 },
    ];
    expect(fitHyperbola(straight)).toBeNull();
    expect(fitHyperbola([at(1, 0.3, 7), at(1, 0.3, 7.00001)])).toBeNull();
    const clean = [at(1, 0.3, 3), at(1, 0.3, 7)];
    const dirty = [{ age_days: 0, share: 0.2 }, { age_days: 5, share: 0 }, { age_days: -1, share: 0.3 }, ...clean];
    expect(fitHyperbola(dirty)).toEqual(fitHyperbola(clean));
    expect(fitHyperbola([{ age_days: 5, share: 0 }, at(1, 0.3, 7)])).toBeNull();
  });

  const published = gainCurve("I");
  const part = (ratio: number) => (age_days: number) => ({ age_days, share: ratio * published.share(age_days) });

  test("one low result lowers the whole published curve, ages too; a high one changes nothing", () => {
    const low = fittedCurve(published, [part(0.8)(7)]);
    for (const age of [1, 7, 28]) expect(low.share(age)).toBeCloseTo(0.8 * published.share(age), 12);
    expect(low.age_days(0.4)).toBeCloseTo(published.age_days(0.5) as number, 9);
    expect([low.age_days(0), low.age_days(-1)]).toEqual([0, 0]);
    expect(low.age_days(0.8 / 0.85 + 0.01)).toBeNull();
    const high = fittedCurve(published, [part(1.2)(7)]);
    for (const age of [0, 1, 7, 28]) expect(high.share(age)).toBe(published.share(age));
    expect(high.age_days(0.7)).toBe(published.age_days(0.7));
  });

  test("results no curve fits lower it by the lowest of them; none at all leave it", () => {
    const falling = [part(0.9)(7), { age_days: 7, share: 0.5 * published.share(7) }, { age_days: 3, share: 0 }];
    expect(fittedCurve(published, falling).share(14)).toBeCloseTo(0.5 * published.share(14), 12);
    expect(fittedCurve(published, []).share(14)).toBe(published.share(14));
  });

  test("two low results give their own curve, under the published one at any age", () => {
    const own = fittedCurve(published, [at(0.9, 0.2, 3), at(0.9, 0.2, 14)]);
    expect(own.share(7)).toBeCloseTo(at(0.9, 0.2, 7).share, 9);
    expect(own.age_days(at(0.9, 0.2, 7).share)).toBeCloseTo(7, 9);
    expect([own.share(0), own.share(-1), own.age_days(0), own.age_days(-1)]).toEqual([0, 0, 0, 0]);
    expect([own.age_days(0.9), own.age_days(0.95)]).toEqual([null, null]);
    expect(own.age_days(0.89)).toBeGreaterThan(100);
    // 1, 1/2 and 2, 2/3 lie on the curve that tends to 1, and reaches it never.
    const to1 = [
      { age_days: 1, share: 1 / 2 },
      { age_days: 2, share: 2 / 3 },
    ];
    expect(fittedCurve(published, to1).age_days(1)).toBeNull();
  });

  test("two high results count as far as the last of them, no farther", () => {
    const results = [at(1.3, 0.4, 3), at(1.3, 0.4, 7)];
    const own = fittedCurve(published, results);
    expect(own.share(5)).toBeCloseTo(at(1.3, 0.4, 5).share, 9);
    expect(own.share(28)).toBeCloseTo(published.share(28), 9);
    expect(own.share(10)).toBeCloseTo(results[1]?.share as number, 9);
    expect(own.age_days(results[0]?.share as number)).toBeCloseTo(3, 6);
    expect(own.age_days(1)).toBeCloseTo(published.age_days(1) as number, 9);
    expect(own.age_days(1.2)).toBeNull();
    expect(own.age_days(own.share(7))).toBeCloseTo(7, 6);
  });

  test("one high of two is not enough to count above the published curve", () => {
    const mixed = fittedCurve(published, [part(0.95)(3), part(1.1)(7)]);
    for (const age of [5, 7, 14, 28]) expect(mixed.share(age)).toBeLessThanOrEqual(published.share(age) + 1e-12);
    expect(mixed.age_days(0.7) as number).toBeGreaterThanOrEqual(published.age_days(0.7) as number);
    const high = part(1.1)(7);
    for (const other of [part(1)(3), part(1)(14)]) {
      const curve = fittedCurve(published, [high, other]);
      for (const age of [4, 7, 9, 14, 28]) expect(curve.share(age)).toBeLessThanOrEqual(published.share(age) + 1e-12);
    }
    const noAge = { age_days: 0, share: 0.5 };
    expect(fittedCurve(published, [part(0.95)(3), high, noAge]).share(5)).toBe(mixed.share(5));
  });

  test("a guess never raises it: only one that lies under what the others say lowers that, by its ratio", () => {
    const results = [at(1.3, 0.4, 3), at(1.3, 0.4, 7)];
    const shownOnly = fittedCurve(published, results);
    for (const age of [1, 3, 7, 14, 28]) {
      expect(fittedCurve(published, [], results).share(age)).toBe(published.share(age));
      expect(fittedCurve(published, results, [{ age_days: 5, share: 1.2 }]).share(age)).toBe(shownOnly.share(age));
      expect(fittedCurve(published, [], [part(0.8)(7)]).share(age)).toBeCloseTo(0.8 * published.share(age), 12);
      const under = fittedCurve(published, results, [{ age_days: 5, share: 0.9 * shownOnly.share(5) }]);
      expect(under.share(age)).toBeCloseTo(0.9 * shownOnly.share(age), 9);
    }
    const share = fc.double({ min: 0.1, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (first, second, guess) => {
        const shown = [
          { age_days: 3, share: first },
          { age_days: 14, share: second },
        ];
        const [without, withIt] = [fittedCurve(published, shown), fittedCurve(published, shown, [{ age_days: 7, share: guess }])];
        for (const age of [1, 5, 7, 20, 28]) expect(withIt.share(age)).toBeLessThanOrEqual(without.share(age) + 1e-12);
      }),
    );
  });

  test("what it says of an age and of a share agree, and more is never reached sooner", () => {
    const share = fc.double({ min: 0.1, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.05, max: 1.1, noNaN: true }), (early, late, wanted) => {
        const curve = fittedCurve(published, [
          { age_days: 3, share: early },
          { age_days: 14, share: late },
        ]);
        const age = curve.age_days(wanted);
        if (age === null) return;
        expect(curve.share(age * (1 + 1e-9) + 1e-9)).toBeGreaterThanOrEqual(wanted - 1e-6);
        const more = curve.age_days(wanted * 1.05);
        if (more !== null) expect(more).toBeGreaterThanOrEqual(age);
      }),
    );
  });
});
