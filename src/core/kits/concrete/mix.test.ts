import { describe, expect, test } from "vitest";
import { builtFrom } from "../../../../test/fixtures/kits/kit-check";
import { type Bars, massOfBars_kg } from "./mix";

const bar = (size: number): Bars => ({ name: "bar", size, number: 1, long_mm: 1000, cover_mm: 50, exposure: "weather or ground" });

// Nominal mass of a metre, kg: ASTM A615, table 1.
test.each([
  [3, 0.56],
  [4, 0.994],
  [5, 1.552],
  [8, 3.973],
])("a number %i bar weighs %f kg a metre", (size, mass_kg) => {
  expect(Math.abs(massOfBars_kg([bar(size)]) - mass_kg)).toBeLessThan(0.005);
});

// 80 lb bags give 0.60 ft3, so 45 make a cubic yard (sellers' sheets, from memory).
describe("bags", () => {
  test("are enough for the pour and not half as many again", () => {
    const document = builtFrom("us", [
      ["footing", "Footing", { placed: "bags", number: 1, long: "3 ft", wide: "3 ft", thick: "12 in" }],
    ]) as {
      deliveries: { id: string; brings?: { number: number }[] }[];
      pours: { sacks?: string; placed: string }[];
    };
    const bags = document.deliveries.find(({ id }) => id === "footing-concrete-comes")?.brings?.[0]?.number ?? 0;
    const needed = (9 / 27) * 45;
    expect(bags).toBeGreaterThanOrEqual(Math.ceil(needed * 1.1));
    expect(bags).toBeLessThan(needed * 1.3);
    expect(document.pours[0]).toMatchObject({ placed: "by hand", sacks: "footing-bags" });
  });
});
