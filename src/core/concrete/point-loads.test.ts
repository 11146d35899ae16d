import { describe, expect, test } from "vitest";
import { pointCoefficients, type Spans } from ".";

/** Sag times E I of a simple beam at x under a unit load at a: b x (L² - b² - x²) / 6 L left of the load. */
function simple(L: number, x: number, a: number): number {
  const [at, b] = x <= a ? [x, L - a] : [L - x, a];
  return (b * at * (L * L - b * b - at * at)) / (6 * L);
}

/**
 * The force method: all spans as one simple beam, the forces of the inner supports such that it does not sag there. Another way to the same figures than the
 * three moment equation.
 */
function forces(spans: Spans, loads: readonly number[]) {
  const inner = Array.from({ length: spans - 1 }, (_, i) => i + 1);
  const sagAt = (x: number, at: readonly number[]) => at.reduce((sum, a) => sum + simple(spans, x, a), 0);
  let held: number[] = [];
  if (spans === 2) held = [sagAt(1, loads) / simple(2, 1, 1)];
  if (spans === 3) {
    const [p, q] = [simple(3, 1, 1), simple(3, 1, 2)];
    const [one, two] = [sagAt(1, loads), sagAt(2, loads)];
    held = [(p * one - q * two) / (p * p - q * q), (p * two - q * one) / (p * p - q * q)];
  }
  const left =
    (loads.reduce((sum, a) => sum + spans - a, 0) - inner.reduce((sum, s, i) => sum + (held[i] as number) * (spans - s), 0)) / spans;
  const up = [[0, left] as const, ...inner.map((s, i) => [s, held[i] as number] as const)];
  const moment = (x: number) =>
    up.reduce((sum, [s, r]) => sum + r * Math.max(0, x - s), 0) - loads.reduce((sum, a) => sum + Math.max(0, x - a), 0);
  const shear = (x: number) => up.reduce((sum, [s, r]) => sum + (s < x ? r : 0), 0) - loads.filter((a) => a < x).length;
  const sag = (x: number) => sagAt(x, loads) - inner.reduce((sum, s, i) => sum + (held[i] as number) * simple(spans, x, s), 0);
  return { moment, shear, sag };
}

/** The worst over the places the first load may have, looked for in 96 places of a span; sag at the eighths of its middle half. */
function worst(spans: Spans, pitch: number) {
  const found = { bending: 0, shear: 0, sag: 0, anywhere: 0 };
  for (let phase = 0; phase < 24; phase += 1) {
    const loads: number[] = [];
    for (let a = (phase / 24) * pitch; a < spans - 1e-9; a += pitch) if (Math.abs(a - Math.round(a)) > 1e-9) loads.push(a);
    const { moment, shear, sag } = forces(spans, loads);
    const places = Array.from({ length: spans * 96 }, (_, i) => (i + 0.5) / 96);
    for (const x of [...loads, ...places, ...Array.from({ length: spans - 1 }, (_, i) => i + 1)])
      found.bending = Math.max(found.bending, Math.abs(moment(x)));
    for (const x of places) {
      found.shear = Math.max(found.shear, Math.abs(shear(x)));
      found.anywhere = Math.max(found.anywhere, Math.abs(sag(x)));
    }
    for (let eighth = 0; eighth < 8 * spans; eighth += 1)
      if (eighth % 8 >= 2 && eighth % 8 <= 6) found.sag = Math.max(found.sag, Math.abs(sag(eighth / 8)));
  }
  return found;
}

describe("equal point loads on continuous spans", () => {
  test.each([
    [1, 0.95],
    [1, 0.5],
    [1, 0.4],
    [2, 0.95],
    [2, 0.5],
    [2, 0.7],
    [2, 1.6],
    [3, 0.95],
    [3, 0.5],
    [3, 0.7],
    [3, 0.375],
    [3, 2.2],
  ] as const)("%d spans, loads %d of a span apart: as the force method gives", (spans, pitch) => {
    const found = pointCoefficients(spans, pitch);
    const by = worst(spans, pitch);
    expect(found.bending).toBeCloseTo(by.bending, 9);
    expect(Math.abs(found.shear - by.shear)).toBeLessThan(1e-9);
    expect(found.sag).toBeCloseTo(by.sag, 9);
    // The greatest sag may lie between two eighths, a little more than at either.
    expect(found.sag).toBeGreaterThan(0.97 * by.anywhere);
  });

  // Beam tables: P l / 4 in the middle of one span, 3 P l / 16 over the middle support of two, 5 P l / 12 of three loads at sixths, halves and five sixths.
  test("closed forms of the beam tables", () => {
    expect(pointCoefficients(1, 1).bending).toBeCloseTo(1 / 4, 9);
    expect(pointCoefficients(2, 1).bending).toBeCloseTo(3 / 16, 9);
    expect(pointCoefficients(1, 1 / 3).bending).toBeCloseTo(5 / 12, 9);
    expect(pointCoefficients(1, 1).sag).toBeCloseTo(1 / 48, 9);
  });

  test("asked again it says the same, and each case keeps its own", () => {
    expect(pointCoefficients(1, 0.501)).not.toEqual(pointCoefficients(2, 0.5));
    const first = pointCoefficients(2, 0.31);
    const other = pointCoefficients(3, 0.31);
    expect(other).not.toEqual(first);
    for (let i = 0; i < 600; i += 1) pointCoefficients(1, 0.9 + i * 1e-4);
    expect(pointCoefficients(2, 0.31)).toEqual(first);
    expect(pointCoefficients(3, 0.31)).toEqual(other);
  });

  test("a spacing a rounding error short of another is the same spacing, whichever was asked first", () => {
    const short = pointCoefficients(2, 1 - 2 ** -53);
    expect(pointCoefficients(2, 1)).toEqual(short);
    expect(pointCoefficients(2, 1 - 2 ** -53)).toEqual(short);
  });
});
