import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import type { Build } from "../build";
import { plan } from "../plan";
import { cureSheet } from "./cure";
import type { CureSheet } from "./result";

const hours = ["8:00-12:00", "12:30-17:00"];
const everyDay = {
  id: "daily",
  name: "Every day",
  week: Object.fromEntries(["mon", "tue", "wed", "thu", "fri", "sat", "sun"].map((day) => [day, hours])),
};
/** A valley where it freezes in March and November, degrees Fahrenheit. */
const usualTemperatures = [
  [22, 38],
  [24, 41],
  [31, 50],
  [41, 62],
  [51, 72],
  [60, 80],
  [65, 85],
  [63, 83],
  [55, 75],
  [43, 63],
  [35, 51],
  [26, 41],
].map(([low, high]) => ({ low: `${low} °F`, high: `${high} °F` }));
const site = { zone: "America/New_York", latitude: 41.4, longitude: -73.9, units: "us", usualTemperatures };

const slab = (change: object = {}): Record<string, unknown> => ({
  id: "slab",
  step: "pour",
  mix: { strength: "3000 psi" },
  placed: "chute",
  elements: [{ id: "slab", shape: { kind: "deck slab", long: "12 ft", wide: "10 ft", thick: "8 in" } }],
  removals: [
    { sort: "sides", step: "sides" },
    { sort: "soffit", step: "soffit", soffit: "slab", span: "9 ft" },
    { sort: "backfill", step: "backfill" },
  ],
  ...change,
});
const steps = [
  { id: "pour", name: "Pour the lid", sort: "pour", work: "8 h", hands: 1 },
  { id: "sides", name: "Strip the sides", work: "1 h", after: ["pour"] },
  { id: "soffit", name: "Strip the soffit", work: "2 h", after: ["pour"] },
  { id: "backfill", name: "Backfill", work: "2 h", after: ["pour"] },
];

function built(change: object = {}, more: PartialDocument = {}): Build {
  return buildOf({ site, start: "2027-06-01", usual: "daily", calendars: [everyDay], steps, pours: [slab(change)], ...more });
}

function sheetOf(build: Build): CureSheet {
  const made = plan(build);
  expect(made.status).toBe("planned");
  return cureSheet(build, 0, { start: made.steps.map((s) => s.start), finish: made.steps.map((s) => s.finish) });
}

const cure = (change: object = {}, more: PartialDocument = {}) => sheetOf(built(change, more));
const codes = (sheet: CureSheet) => sheet.findings.map(({ code }) => code);
const daysAfter = (sheet: CureSheet, t: number) => (t - sheet.placed) / 1440;
const ground = (sheet: CureSheet, sort: string, by: string) =>
  sheet.removals.find((one) => one.removal.sort === sort)!.grounds.find((one) => one.by === by)!;

describe("one small lid started in March, in June and in October", () => {
  const sheets = ["2027-03-01", "2027-06-01", "2027-10-01"].map((start) => cure({}, { start }));
  const [march, june, october] = sheets as [CureSheet, CureSheet, CureSheet];
  const wait = (sheet: CureSheet, sort: string) => daysAfter(sheet, sheet.removals.find((one) => one.removal.sort === sort)!.planned);

  test.each(["sides", "backfill"])("%s: three different waits, the longest in March, the shortest in June", (sort) => {
    const [cold, warm, mild] = [wait(march, sort), wait(june, sort), wait(october, sort)];
    expect(warm).toBeLessThan(mild);
    expect(mild).toBeLessThan(cold);
  });

  test("soffit: without evidence its 28 days at 50 °F are four weeks in June, longer in March, and from October on they run into spring", () => {
    const [cold, warm, mild] = [wait(march, "soffit"), wait(june, "soffit"), wait(october, "soffit")];
    expect(warm).toBeGreaterThanOrEqual(28);
    expect(warm).toBeLessThan(30);
    expect(cold).toBeGreaterThan(warm + 14);
    expect(mild).toBeGreaterThan(cold);
    for (const sheet of sheets) {
      const soffit = sheet.removals.find(({ removal }) => removal.sort === "soffit")!;
      expect(soffit.grounds[soffit.governs]!.by).toBe("28 days");
    }
  });

  test("each date is that of the ground that comes last, and the step never before it", () => {
    for (const sheet of sheets)
      for (const { grounds, governs, planned } of sheet.removals) {
        const last = Math.max(...grounds.map(({ at }) => at));
        expect(grounds[governs]!.at).toBe(last);
        expect(planned).toBeGreaterThanOrEqual(last);
        // Planned for the first hours of work after it, by hands that may be busy with the others.
        expect(planned - last).toBeLessThan(2 * 1440);
      }
  });

  test("cold protection is called for where the air falls under 40 °F while it is young: in March, not in June", () => {
    expect(march.cold.called).toBe(true);
    expect(march.cold.lowest_C).toBeLessThan(0);
    expect(june.cold.called).toBe(false);
    expect(codes(march)).toContain("cure.frost");
    expect(codes(june)).not.toContain("cure.frost");
    expect(sheets.map(({ cold }) => cold.given)).toEqual([false, false, false]);
  });

  test("the curve at the site lies under that at 20 °C in March, and over it at first in the heat of June", () => {
    const share = (sheet: CureSheet, which: "expected" | "at20", days: number) =>
      sheet[which].find(({ at }) => at === sheet.placed + days * 1440)!.share;
    expect(share(march, "at20", 7)).toBe(share(june, "at20", 7));
    expect(share(march, "expected", 7)).toBeLessThan(share(march, "at20", 7));
    expect(share(june, "expected", 7)).toBeGreaterThan(share(march, "expected", 7));
    for (const sheet of sheets) {
      expect(sheet.expected[0]).toEqual({ at: sheet.placed, share: 0 });
      expect(sheet.expected.at(-1)!.at).toBe(sheet.until);
      sheet.expected.forEach((point, i) => {
        expect(point.share).toBeGreaterThanOrEqual(sheet.expected[i - 1]?.share ?? 0);
      });
      expect(sheet.days[0]!.from).toBeLessThanOrEqual(sheet.placed);
      expect(sheet.days.at(-1)!.from + 25 * 60).toBeGreaterThan(sheet.until);
    }
  });
});

describe("what comes off", () => {
  test("a soffit is a hold until shown, the sides are not", () => {
    const sheet = cure();
    expect(sheet.removals.map(({ removal, hold }) => [removal.sort, hold])).toEqual([
      ["sides", false],
      ["soffit", true],
      ["backfill", false],
    ]);
    // ACI 347: a slab of under 10 ft whose live load is under its dead load, 4 days; all of June is warm.
    expect(daysAfter(sheet, ground(sheet, "soffit", "table").at)).toBe(4);
    expect(ground(sheet, "soffit", "table").detail).toEqual({ days: 4, span_mm: 2743.2 });
    expect(daysAfter(sheet, ground(sheet, "soffit", "28 days").at)).toBe(28);
    expect(ground(sheet, "soffit", "curve").detail).toEqual({ share: 700 });
    expect(daysAfter(sheet, ground(sheet, "sides", "12 h").at)).toBe(0.5);
    expect(ground(sheet, "sides", "curve").detail).toEqual({ share: 167 });
    expect(ground(sheet, "backfill", "days").detail).toEqual({ days: 7 });
  });

  test("the drawing's days are the only ground and no hold, one's own guess stays one", () => {
    const soffit = (more: object) => ({ removals: [{ sort: "soffit", step: "soffit", days: "10 d", ...more }] });
    const said = cure(soffit({ saidBy: "drawing" }));
    expect(said.removals.map(({ grounds, hold, saidBy }) => [grounds.map(({ by }) => by), hold, saidBy])).toEqual([
      [["days"], false, "drawing"],
    ]);
    expect(cure(soffit({ saidBy: "own guess" })).removals[0]!.hold).toBe(true);
    expect(cure(soffit({})).removals[0]!.hold).toBe(true);
  });

  test("a result that shows the share takes the place of the grounds", () => {
    const breaks = [
      { at: "2027-06-08T09:00", strength: "1500 psi", by: "lab" },
      { at: "2027-06-11T09:00", strength: "2400 psi", by: "lab" },
    ];
    const fixed = { steps: steps.map((step) => (step.id === "pour" ? { ...step, fixed: "2027-06-01T08:00" } : step)) };
    const sheet = cure({ breaks, removals: [{ sort: "soffit", step: "soffit" }] }, fixed);
    const [soffit] = sheet.removals;
    expect(soffit!.grounds.map(({ by, detail }) => [by, detail])).toEqual([["shown", { share: 700 }]]);
    expect(soffit!.hold).toBe(false);
    expect(soffit!.grounds[0]!.at).toBe(sheet.shown[1]!.at);
    expect(soffit!.planned).toBeGreaterThanOrEqual(sheet.shown[1]!.at);
    expect(sheet.shown.map(({ share }) => share)).toEqual([500, 800]);
  });

  test("results under what is expected, and from before the pour, are told", () => {
    const breaks = [{ at: "2027-06-15T09:00", strength: "1200 psi", by: "lab" }];
    const told = cure({ breaks }).findings.find(({ code }) => code === "cure.below-expected")!;
    expect(told.detail.share).toBe(400);
    expect(told.detail.expected).toBeGreaterThan(850);
    const moved = built({ breaks }, { steps: steps.map((step) => (step.id === "pour" ? { ...step, notBefore: "2027-07-01" } : step)) });
    expect(codes(sheetOf(moved))).toContain("cure.result-before");
  });

  test("before it is loaded it is asked what stands under it", () => {
    const removals = [
      { sort: "load", step: "backfill" },
      { sort: "shores", step: "soffit" },
    ];
    const loads = (days: [string, string]) =>
      cure({ removals: removals.map((one, i) => ({ ...one, days: days[i], saidBy: "drawing" })) }).findings.find(
        ({ code }) => code === "cure.load",
      );
    expect(loads(["7 d", "20 d"])!.detail).toEqual({ step: "backfill", shored: true });
    expect(loads(["20 d", "7 d"])!.detail).toEqual({ step: "backfill", shored: false });
  });
});

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
