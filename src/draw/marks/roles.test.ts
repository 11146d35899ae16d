import { expect, test } from "vitest";
import { dark, faded, type Ink, light } from "./roles";

/** Relative luminance and contrast as defined in WCAG 2.2, "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const s = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

test("black on white is 21 to 1", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
});

const inks: readonly Ink[] = ["ink", "ink-soft", "chalk", "warn"];

test.each(inks)("%s on paper and on tint is 7 to 1, in light and dark", (ink) => {
  for (const palette of [light, dark]) {
    expect(contrast(palette[ink], palette.paper)).toBeGreaterThanOrEqual(7);
    expect(contrast(palette[ink], palette.tint)).toBeGreaterThanOrEqual(7);
  }
});

/** One colour over another, as a screen lays them. */
function over(ink: string, paper: string, opacity: number): string {
  const parts = [1, 3, 5].map((at) => {
    const [top, under] = [ink, paper].map((hex) => Number.parseInt(hex.slice(at, at + 2), 16)) as [number, number];
    return Math.round(under + opacity * (top - under))
      .toString(16)
      .padStart(2, "0");
  });
  return `#${parts.join("")}`;
}

test.each(inks)("faded words in %s are 4.5 to 1", (ink) => {
  for (const palette of [light, dark])
    for (const ground of [palette.paper, palette.tint]) {
      const opacity = ink === "ink" ? faded.ink : faded.words;
      expect(contrast(over(palette[ink], ground, opacity), ground)).toBeGreaterThanOrEqual(4.5);
    }
});
