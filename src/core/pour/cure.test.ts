import { describe, expect, test } from "vitest";
import { built, cure, sheetOf, steps } from "../../../test/fixtures/lid";
import type { CureSheet } from "./result";

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
    for (const more of [{ saidBy: "own guess" }, {}]) {
      const [guessed] = cure(soffit(more)).removals;
      expect([guessed!.hold, guessed!.grounds[guessed!.governs]!.by]).toEqual([true, "28 days"]);
    }
  });

  test("days in the cold are told of whoever stands for them; a guess decides nothing, so nothing is told", () => {
    const cold = (saidBy: string) =>
      codes(cure({ removals: [{ sort: "soffit", step: "soffit", days: "20 d", saidBy }] }, { start: "2027-01-10" }));
    expect(cold("drawing")).toContain("cure.days-cold");
    expect(cold("own guess")).not.toContain("cure.days-cold");
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

  test("earth against a wall asks what holds its top, against a footing it does not", () => {
    const removals = [{ sort: "backfill", step: "backfill" }];
    const wall = { id: "w", shape: { kind: "wall", long: "10 ft", thick: "8 in", high: "5 ft" } };
    const footing = { id: "f", shape: { kind: "footing", long: "10 ft", wide: "2 ft", thick: "10 in" } };
    expect(cure({ removals, elements: [wall] }).findings.find(({ code }) => code === "cure.backfill")!.detail).toEqual({
      step: "backfill",
    });
    expect(codes(cure({ removals, elements: [footing] }))).not.toContain("cure.backfill");
  });

  test("earth over a vault is a load, by whichever name: a hold until shown, and told as what it is", () => {
    const vault = { id: "v", shape: { kind: "barrel", long: "10 ft", span: "8 ft", rise: "2 ft", thick: "6 in" } };
    const wall = { id: "w", shape: { kind: "wall", long: "10 ft", thick: "8 in", high: "5 ft" } };
    for (const sort of ["load", "backfill"]) {
      const sheet = cure({ removals: [{ sort, step: "backfill" }], elements: [vault] });
      const [removal] = sheet.removals;
      expect([removal!.hold, removal!.grounds.map(({ by }) => by)]).toEqual([true, ["curve", "28 days"]]);
      expect(sheet.findings.find(({ code }) => code === "cure.load")!.detail).toMatchObject({ step: "backfill", vault: true });
      expect(codes(sheet)).not.toContain("cure.backfill");
    }
    const beside = cure({ removals: [{ sort: "backfill", step: "backfill" }], elements: [vault, wall] });
    expect([beside.removals[0]!.hold, codes(beside).includes("cure.backfill")]).toEqual([false, true]);
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
    expect(loads(["7 d", "20 d"])!.detail).toEqual({ step: "backfill", shored: true, vault: false });
    expect(loads(["20 d", "7 d"])!.detail).toEqual({ step: "backfill", shored: false, vault: false });
  });
});
