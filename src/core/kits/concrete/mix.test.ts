import { describe, expect, test } from "vitest";
import { builtFrom, type Put } from "../../../../test/fixtures/kits/kit-check";
import { readDocument } from "../../build";
import { pourSheets } from "../../pour";
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

test("bars go by number in a build in feet and inches, and by diameter in a metric one, with a cover in whole tens", () => {
  const barsIn = (units: "us" | "metric") => {
    const { build, findings } = readDocument(
      builtFrom(units, [
        ["footing", "Pads"],
        ["column", "Columns"],
      ]),
    );
    expect(findings.filter(({ severity }) => severity === "stop")).toEqual([]);
    return (build?.pours ?? []).flatMap(({ elements }) => elements.flatMap(({ bars }) => bars));
  };
  expect([...new Set(barsIn("us").map(({ size }) => size))]).toEqual([4, 5, 3]);
  const metric = barsIn("metric");
  expect([...new Set(metric.map(({ size }) => size))]).toEqual(["12 mm", "16 mm", "10 mm"]);
  expect(metric.map(({ cover_mm }) => (cover_mm ?? 1) % 10)).toEqual(metric.map(() => 0));
});

describe.each(["us", "metric"] as const)("people on a pour in %s", (units) => {
  const put = (answers: Readonly<Record<string, string | number>>): readonly Put[] => [
    ["footing", "Pads", answers],
    ["column", "Columns", answers],
    ["deck-slab", "Slab", answers],
    ["footing", "Strip", { ...answers, sort: "strip", number: 1, right: "30 ft" }],
    ["wall", "Wall", answers],
    ["pier", "Piers", { ...answers, right: "60 ft" }],
    ["stair", "Steps", { ...answers, right: "90 ft" }],
    ["ground-slab", "Floor", { ...answers, right: "120 ft", long: "30 ft", wide: "30 ft" }],
  ];
  const shortIn = (answers: Readonly<Record<string, string | number>>) => {
    const { build } = readDocument(builtFrom(units, put(answers)));
    if (build === null) throw new Error("not read");
    const short = pourSheets(build).flatMap(({ findings }) => findings.filter(({ code }) => code === "pour.hands-short"));
    return { build, short };
  };

  test.each(["chute", "hose", "bags"])(
    "are as many as the sheet of its day asks for, by %s: helpers come for it, and no other step counts on them",
    (placed) => {
      const { build, short } = shortIn({ placed });
      expect(short).toEqual([]);
      const helped = build.pours.filter(({ helpers = 0 }) => helpers > 0);
      expect(helped.length).toBeGreaterThan(2);
      for (const { step } of build.pours) expect(build.steps.find(({ id }) => id === step)?.hands).toEqual([{ role: "hands", number: 2 }]);
      for (const { step, helpers } of helped) {
        const booking = build.bookings.find((one) => one.step === step && /helper/.test(one.name));
        expect(booking?.name).toMatch(helpers === 1 ? /^A helper for/ : new RegExp(`^${helpers} helpers for`));
        expect(booking?.lead?.text).toBe("7 d");
      }
    },
  );

  test("of a gang large enough nobody else is asked, and those who do it alone are told that they are few", () => {
    const gang = shortIn({ people: 12 });
    expect([gang.short.length, gang.build.pours.filter(({ helpers }) => helpers !== undefined).length]).toEqual([0, 0]);
    const alone = shortIn({ helped: "none" });
    expect(alone.short.length).toBeGreaterThan(5);
    expect(alone.build.bookings.some(({ name }) => /helper/.test(name))).toBe(false);
  });
});
