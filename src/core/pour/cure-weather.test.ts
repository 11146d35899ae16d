import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { built, cure, everyDay, sheetOf, site } from "../../../test/fixtures/lid";
import type { PartialDocument } from "../../../test/fixtures/make";
import { cureSheet } from "./cure";
import type { CureSheet } from "./result";

const codes = (sheet: CureSheet) => sheet.findings.map(({ code }) => code);
const daysAfter = (sheet: CureSheet, t: number) => (t - sheet.placed) / 1440;

describe("wet and cold", () => {
  const wet = (change: object, more: PartialDocument = {}) => cure({ removals: [], ...change }, more).wet;
  const mix = (cement: string) => ({ mix: { strength: "3000 psi", cement } });

  test.each([
    // ACI 308R (from memory) beside UFGS 03 30 00 (read).
    ["I", 7, "ACI 308R", null],
    ["II", 10, "ACI 308R", { days: 14, document: "UFGS 03 30 00" }],
    ["III", 3, "ACI 308R", null],
    ["blend", 14, "UFGS 03 30 00", null],
    ["slow blend", 21, "UFGS 03 30 00", null],
  ])("cement %s: %i days by %s", (cement, days, document, beside) => {
    const told = wet(mix(cement));
    expect(told).toMatchObject({ days, document, beside, least: { days, document } });
    // In June no hour is under 50 °F.
    const sheet = cure({ removals: [], ...mix(cement) });
    expect(daysAfter(sheet, sheet.wet.until)).toBe(days);
    expect(sheet.wet.visits).toBe(days - 1);
  });

  test("days under 50 °F do not count, written days run by the calendar, and fewer than asked are told", () => {
    const march = cure({ removals: [] }, { start: "2027-03-01" });
    expect(daysAfter(march, march.wet.until)).toBeGreaterThan(7);
    expect(daysAfter(march, march.wet.until)).toBeLessThanOrEqual(28);
    const short = cure({ removals: [], cure: { how: "covered", days: 5 } });
    expect(daysAfter(short, short.wet.until)).toBe(5);
    expect(short.wet.visits).toBe(1);
    expect(codes(short)).toContain("cure.wet-short");
    expect(codes(short)).not.toContain("cure.how-unknown");
    expect(codes(cure({ removals: [], cure: { how: "compound" } }))).not.toContain("cure.how-unknown");
    expect(wet({ cure: { how: "compound" } }).visits).toBe(0);
  });

  test("ends with a result of 70 % that somebody stands for, never with a guess", () => {
    const at = (by: string) => {
      const sheet = cure({ removals: [], breaks: [{ at: "2027-06-05T09:00", strength: "2200 psi", by }] });
      return daysAfter(sheet, sheet.wet.until);
    };
    expect(at("lab")).toBeLessThan(5);
    expect(at("own guess")).toBe(7);
  });

  test("an 8 in slab, exposed, no load, nights of 35 °F: at 55 °F for three days (ACI 306R, from memory)", () => {
    const cool = { site: { ...site, usualTemperatures: new Array(12).fill({ low: "35 °F", high: "60 °F" }) } };
    const bare = cure({ removals: [] }, cool);
    expect(bare.cold.called).toBe(true);
    expect(bare.cold.hold_C).toBeCloseTo((55 - 32) / 1.8, 9);
    expect(bare.cold.for_min).toBe(3 * 1440);
    expect(bare.cold.drop_K).toBeCloseTo(50 / 1.8, 9);
    const held = (heldFor: string, heldAt = "55 °F") =>
      cure({ removals: [], cure: { how: "covered", held: heldAt, heldFor } }, cool).cold.given;
    expect([held("3 d"), held("2 d"), held("3 d", "50 °F")]).toEqual([true, false, false]);
    expect(cure({ removals: [], cure: { how: "wet", exposed: false } }, cool).cold.for_min).toBe(2 * 1440);
    expect(cure({ removals: [], mix: { strength: "3000 psi", cement: "III" } }, cool).cold.for_min).toBe(2 * 1440);
    expect(cure({ removals: [{ sort: "backfill", step: "backfill" }] }, cool).cold.for_min).toBe(6 * 1440);
    expect(cure({}, cool).cold.for_min).toBeNull();
  });

  test("a thin and a thick part: the thin one says how warm, the thick one how slowly it cools", () => {
    const elements = [
      { id: "wall", shape: { kind: "wall", long: "8 ft", thick: "8 in", high: "6 ft" } },
      { id: "block", shape: { kind: "footing", long: "8 ft", wide: "8 ft", thick: "40 in" } },
    ];
    const { cold } = cure({ removals: [], elements });
    expect(cold.hold_C).toBeCloseTo((55 - 32) / 1.8, 9);
    expect(cold.drop_K).toBeCloseTo(30 / 1.8, 9);
  });

  test("blankets taken off into hard frost cool it too fast, cold concrete is refused, frost on what is young is told", () => {
    const hard = { site: { ...site, usualTemperatures: new Array(12).fill({ low: "-4 °F", high: "14 °F" }) } };
    const kept = cure({ removals: [], cure: { how: "covered", held: "60 °F", heldFor: "3 d" } }, hard);
    expect(kept.findings.find(({ code }) => code === "cure.cools-fast")!.detail.most_K).toBeCloseTo(50 / 1.8, 9);
    expect(codes(kept)).not.toContain("cure.frost");
    const bare = cure({ removals: [], weather: { concrete: "50 °F" } }, hard);
    expect(codes(bare)).toEqual(expect.arrayContaining(["cure.frost", "cure.placed-cold", "cure.cools-fast"]));
    const frost = bare.findings.find(({ code }) => code === "cure.frost")!;
    expect(frost.detail).toMatchObject({ share: 167, has: 0 });
    expect(frost.detail.at).toBe(bare.placed);
  });

  test("a site without temperatures says so, and knows no cold", () => {
    const unknown = cure({}, { site: { ...site, usualTemperatures: undefined } });
    expect(codes(unknown)).toContain("cure.air-unknown");
    expect(unknown.cold.called).toBe(false);
    expect(unknown.expected).toEqual(unknown.at20);
    expect(new Set(unknown.days.map(({ low_C, high_C }) => `${low_C} ${high_C}`))).toEqual(new Set(["20 20"]));
  });
});

describe("the day on its date", () => {
  test("is floated by the temperature of the concrete, before sunset or said otherwise", () => {
    const june = cure({ weather: { concrete: "70 °F" } });
    expect(june.floating!.inDaylight).toBe(true);
    expect(june.floating!.to).toBeLessThan(june.floating!.sunset!);
    const cold = cure({ weather: { concrete: "50 °F" } });
    // ASCC position statement 15 (read): 4.25 h at 50 °F, 2.75 h at 70 °F.
    expect(cold.floating!.from - june.floating!.from).toBe(90);
    const late = [{ ...everyDay, week: Object.fromEntries(Object.keys(everyDay.week).map((day) => [day, ["15:00-23:30"]])) }];
    const evening = cure({ weather: { concrete: "50 °F" } }, { start: "2027-10-01", calendars: late });
    expect(evening.floating!.inDaylight).toBe(false);
    expect(
      cure({ elements: [{ id: "column", shape: { kind: "column", long: "12 in", wide: "12 in", high: "6 ft" } }] }).floating,
    ).toBeNull();
    expect(
      cure({ removals: [], elements: [{ id: "slab", shape: { kind: "slab", long: "80 ft", wide: "60 ft", thick: "5 in" } }] }).findings,
    ).toContainEqual(expect.objectContaining({ code: "cure.step-short" }));
  });

  test("dries faster in the air of the date than was entered, and the air entered may be another season's", () => {
    const weather = { concrete: "80 °F", air: "80 °F", humidity: 60, wind: "12 mph" };
    const april = cure({ removals: [], weather }, { start: "2027-04-01" });
    expect(codes(april)).toEqual(expect.arrayContaining(["cure.dries-fast", "cure.air-differs"]));
    const june = cure({ removals: [], weather }, { start: "2027-06-20" });
    expect(codes(june)).not.toContain("cure.air-differs");
    const metric = built({ removals: [], weather }, { start: "2027-04-01", pressure: "aci-si" });
    expect(sheetOf(metric).findings.find(({ code }) => code === "cure.dries-fast")!.detail.unit).toBe("kg/m2/h");
  });

  test("no figure of any sheet is none, whatever the site's air", () => {
    const low = fc.integer({ min: -50, max: 40 });
    const year = fc.array(fc.tuple(low, fc.integer({ min: 0, max: 20 })), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(year, fc.constantFrom("2027-01-05", "2027-04-20", "2027-07-01", "2027-11-02"), fc.boolean(), (months, start, held) => {
        const air = months.map(([from, by]) => ({ low: `${from} °C`, high: `${from + by} °C` }));
        const build = built(held ? { cure: { how: "wet", held: "55 °F", heldFor: "4 d" } } : {}, {
          site: { ...site, usualTemperatures: air },
          start,
        });
        const dates = { start: [0, 1, 2, 3].map((t) => t * 10_000) as never[], finish: [480, 10_100, 20_100, 30_100] as never[] };
        figures(cureSheet(build, 0, dates));
      }),
      { numRuns: 40 },
    );
  });
});

/** Every number in it is one. */
function figures(value: unknown): void {
  if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  else if (typeof value === "object" && value !== null) for (const part of Object.values(value)) figures(part);
}
