import { describe, expect, test } from "vitest";
import { across, along, plyClasses, plywoodCarries_psf } from ".";

// APA V345: formulas as printed, the figures by hand.
describe("form plywood", () => {
  const three = () => across["3/4"] as NonNullable<(typeof across)[string]>;

  test("4 in framing: a shorter clear span, 5/8 in added to it for sag", () => {
    const wide = plywoodCarries_psf(three(), plyClasses.I, "across", 16, 3.5, 360);
    expect(wide.bending_psf).toBeCloseTo(411.63, 1);
    expect(wide.rolling_psf).toBeCloseTo(827.94, 1);
    expect(wide.sag_psf).toBeCloseTo(557.84, 2);
    expect(wide.governs).toBe("bending");
    expect(wide.carries_psf).toBe(wide.bending_psf);
  });

  test("what governs changes with the spacing: rolling shear close, bending between, sag far apart", () => {
    const governs = (spacing: number) => plywoodCarries_psf(three(), plyClasses.I, "across", spacing, 1.5, 360).governs;
    expect([8, 12, 16, 24].map(governs)).toEqual(["rolling shear", "bending", "sag", "sag"]);
  });

  test("three spans across the supports up to 32 in and along them up to 16, two beyond", () => {
    // Bending over two spans is 96 for 120.
    const bending = (grain: "across" | "along", spacing: number) => {
      const plies = (grain === "across" ? across : along)["1-1/8"] as NonNullable<(typeof across)[string]>;
      return (plywoodCarries_psf(plies, plyClasses.I, grain, spacing, 1.5, 360).bending_psf * spacing ** 2) / (1930 * plies.modulus_in3);
    };
    expect([32, 32.1, 48].map((at) => Math.round(bending("across", at)))).toEqual([120, 96, 96]);
    expect([16, 16.1, 24].map((at) => Math.round(bending("along", at)))).toEqual([120, 96, 96]);
  });
});
