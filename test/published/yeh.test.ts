// I-C. Yeh, concrete compressive strength data, UCI Machine Learning Repository, 1998 (Cement and Concrete Research 28, 1797-1808): kg/m3, days, MPa;
// no temperatures, so it can judge the shape of a curve and not the effect of warmth. concrete-strength-yeh.csv is that file.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { gainAci } from "../../src/core/concrete";

interface Sample {
  readonly mix: string;
  readonly slag: number;
  readonly ash: number;
  readonly plasticizer: number;
  readonly age_days: number;
  readonly strength_MPa: number;
}

const samples: Sample[] = readFileSync("test/published/concrete-strength-yeh.csv", "utf8")
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => {
    const n = line.split(";").map(Number);
    return {
      mix: n.slice(0, 7).join("/"),
      slag: n[1] as number,
      ash: n[2] as number,
      plasticizer: n[4] as number,
      age_days: n[7] as number,
      strength_MPa: n[8] as number,
    };
  });

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? (sorted[middle] as number) : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
}

const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;

/** Ratio to the 28 day strength of the same mix, plain Portland cement without plasticizer. */
function ratios(age_days: number): number[] {
  const plain = samples.filter((s) => s.slag === 0 && s.ash === 0 && s.plasticizer === 0);
  return [...new Set(plain.map((s) => s.mix))].flatMap((mix) => {
    const of = (age: number) => plain.filter((s) => s.mix === mix && s.age_days === age).map((s) => s.strength_MPa);
    const at28 = of(28);
    const early = of(age_days);
    return at28.length > 0 && early.length > 0 ? [mean(early) / mean(at28)] : [];
  });
}

describe("Yeh's measured strengths", () => {
  test("are all there", () => {
    expect(samples).toHaveLength(1030);
    expect(mean(samples.map((s) => s.strength_MPa))).toBeCloseTo(35.818, 2);
  });

  test("the ACI 209R curve for Type I fits plain mixes at 3 days within 0.05", () => {
    const found = ratios(3);
    expect(found.length).toBeGreaterThanOrEqual(20);
    expect(Math.abs(median(found) - gainAci("I", 3))).toBeLessThanOrEqual(0.05);
  });

  test("and is within 0.07 at 7 days, on the high side", () => {
    const found = ratios(7);
    expect(found.length).toBeGreaterThanOrEqual(40);
    expect(Math.abs(median(found) - gainAci("I", 7))).toBeLessThanOrEqual(0.07);
    expect(gainAci("I", 7)).toBeGreaterThan(median(found));
  });
});
