import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

/** Units whose figures may stand in core under a name that says so, SI and time. */
const suffixes = ["mm", "m", "kg", "C", "MPa", "kPa", "min", "h", "days", "km_h", "deg"];
const quantityNames = /\b(width|height|depth|weight|mass|temperature|pressure|duration|thickness|speed)\b(?!_)\s*\??:\s*number\b/g;

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return path.endsWith(".ts") && !path.endsWith(".test.ts") ? [path] : [];
  });
}

const unnamed = (text: string) => [...text.matchAll(quantityNames)].map((found) => found[0]);
const imperial = (text: string) => [...text.matchAll(/\b\w+_(?:psi|psf|ft|in|lb|F)\b\s*\??:\s*number/g)].map((found) => found[0]);

test("a quantity in the core carries its unit in its name", () => {
  const found = sources("src/core").flatMap((path) => unnamed(readFileSync(path, "utf8")).map((what) => `${path}: ${what}`));
  expect(found).toEqual([]);
});

/** A pressure is told both ways at once, by whichever document it was found. */
const toldBothWays = ["src/core/pour/result.ts: most_psf: number"];

test("outside the formulas defined in them, no US unit is a type in the core", () => {
  const found = sources("src/core")
    .filter((path) => !path.includes("concrete"))
    .flatMap((path) => imperial(readFileSync(path, "utf8")).map((what) => `${path}: ${what}`));
  expect(found.filter((one) => !toldBothWays.includes(one))).toEqual([]);
});

test("the rules see what they forbid", () => {
  expect(unnamed("depth: number")).toHaveLength(1);
  expect(unnamed(`depth_${suffixes[0]}: number`)).toHaveLength(0);
  expect(imperial("depth_in: number")).toHaveLength(1);
});
