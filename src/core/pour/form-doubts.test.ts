import { describe, expect, test } from "vitest";
import { columnOf, wallOf } from "../../../test/fixtures/form-documents";
import { detail, lb, part, plf, sheetOf } from "../../../test/fixtures/judged-forms";

describe("what a rod or tie pulls against", () => {
  const bolted = (washer: object) =>
    sheetOf(
      columnOf(
        {},
        {
          bands: {
            stuff: { size: "2x4", pieces: 2, grade: "DF-L No 2", reused: false },
            at: ["4 in", "12 in", "20 in", "29 in", "40 in", "51 in", "64 in"],
            bolt: { carries: "2000 lb", from: "code", ...washer },
          },
        },
      ),
    );

  // NDS 3.10.2: 625 psi across the grain of dry Douglas fir-larch, whatever the duration.
  test("the area of wood it needs is said where its washer is not written", () => {
    const sheet = bolted({});
    const load = lb(part(sheet, "corner bolts").load.value);
    expect(detail(sheet, "form.washer-unknown")).toMatchObject({ part: "corner bolts", on: "bands" });
    expect((detail(sheet, "form.washer-unknown") as { area_mm2: number }).area_mm2).toBeCloseTo((load / 625) * 645.16, 6);
    expect(sheet.ready).toBe(true);
    expect(detail(sheetOf(wallOf()), "form.washer-unknown")).toMatchObject({ part: "ties", on: "wales" });
  });

  test("a washer that is written is judged, and one that is too small stops", () => {
    const bearing = (sheet: ReturnType<typeof sheetOf>) =>
      part(sheet, "corner bolts").result.checks.find(({ kind }) => kind === "bearing")!.of100;
    const large = bolted({ washer: "2 in" });
    expect(bearing(large)).toBeCloseTo((100 * lb(part(large, "corner bolts").load.value)) / 4 / 625, 6);
    expect([large.ready, large.codes.includes("form.washer-unknown")]).toEqual([true, false]);
    const small = bolted({ washer: "5/8 in" });
    expect(detail(small, "form.over")).toMatchObject({ part: "corner bolts", governs: "bearing" });
  });
});

describe("what is not known", () => {
  test("a member of unknown grade is judged as the weakest likely one, and looked at", () => {
    const bands = (stuff: object) =>
      sheetOf(
        columnOf({}, { bands: { stuff, at: ["4 in", "14 in", "28 in", "46 in", "66 in"], bolt: { carries: "2000 lb", from: "code" } } }),
      );
    const unknown = bands({ size: "2x4", reused: false });
    const salvaged = bands({ size: "2x4", reused: false, salvaged: true });
    const measured = bands({ size: "2x4", reused: false, salvaged: true, measured: { wide: "1 3/8 in", deep: "3 3/8 in" } });
    const known = bands({ size: "2x4", reused: false, grade: "DF-L No 2" });
    const at = (sheet: ReturnType<typeof sheetOf>) => part(sheet, "bands").of100;
    expect(at(unknown)).toBeGreaterThan(at(known));
    expect(at(salvaged)).toBeGreaterThan(at(unknown));
    expect(at(measured)).toBeGreaterThan(at(salvaged));
    expect([part(unknown, "bands").guessed, part(known, "bands").guessed]).toEqual([true, false]);
    const guesses = (sheet: ReturnType<typeof sheetOf>) =>
      sheet.found.filter(({ code }) => code === "form.guess").map((one) => [one.severity, one.detail.what]);
    expect(guesses(unknown)).toEqual([["look", "grade"]]);
    expect(guesses(salvaged)).toEqual([
      ["look", "grade"],
      ["look", "section"],
    ]);
    expect(guesses(measured)).toEqual([["look", "grade"]]);
  });

  test("a bolt without a figure stops, one that nobody stands for is looked at", () => {
    const bolted = (bolt: object | undefined) =>
      sheetOf(
        columnOf({}, { bands: { stuff: { size: "2x4", pieces: 2, grade: "DF-L No 2" }, at: ["4 in", "20 in", "40 in", "64 in"], bolt } }),
      );
    expect(bolted(undefined)).toMatchObject({ ready: false });
    expect(detail(bolted(undefined), "form.carries-unknown")).toMatchObject({ part: "corner bolts" });
    expect(detail(bolted({ carries: "2000 lb" }), "form.guess")).toMatchObject({ part: "corner bolts", what: "figure" });
  });

  test("no form, an open foot, no brace", () => {
    expect(sheetOf({ id: "c", shape: columnOf().shape as object }).codes).toEqual(["form.none"]);
    expect(sheetOf(columnOf({}, { footSealed: false, brace: undefined })).codes).toEqual(
      expect.arrayContaining(["form.foot-open", "form.no-brace"]),
    );
  });
});

describe("what leans out or is left open", () => {
  test("a side that nothing closes stops it", () => {
    const sheet = sheetOf(wallOf({}, {}, { faces: [{ face: "b", against: "free" }] }));
    expect([sheet.ready, detail(sheet, "form.open-side")]).toEqual([false, { element: "wall", face: "b" }]);
    expect(sheetOf(wallOf()).codes).not.toContain("form.open-side");
  });

  test("a face that leans out is lain on: 2,700 lb a foot at 1:4 brings 675 down", () => {
    const sheet = sheetOf(wallOf({ thick: "36 in", batter: { a: "-1:4" } }));
    expect(plf((detail(sheet, "form.leans-out") as { down_kN_m: number }).down_kN_m)).toBeCloseTo(675, 0);
    expect(sheetOf(wallOf({ batter: "1:8" })).codes).not.toContain("form.leans-out");
  });
});
