import { describe, expect, test } from "vitest";
import { deckOf, wallOf } from "../../../test/fixtures/form-documents";
import { detail, lb, outInAWeek, part, sheetOf, twoSteps } from "../../../test/fixtures/judged-forms";
import type { MemberPart } from "./result";

describe("how long a deck is loaded", () => {
  const under = (...removals: object[]) => sheetOf(deckOf(), { removals: removals.map((one) => ({ step: "strip", ...one })) }, twoSteps);
  const week = { sort: "soffit", days: "7 d", saidBy: "engineer" };
  const bending = (sheet: ReturnType<typeof sheetOf>, name: MemberPart) =>
    part(sheet, name).result.checks.find(({ kind }) => kind === "bending")!.of100;

  // NDS Table 2.3.2, from memory: 1.25 seven days, 1.15 two months, 1.0 ten years.
  test.each([
    ["nothing is written", [], 1.25 / 1.15],
    ["seven days stand", [week], 1],
    ["eight days stand", [{ ...week, days: "8 d" }], 1.25 / 1.15],
    ["they are a guess", [{ ...week, saidBy: "own guess" }], 1.25 / 1.15],
    ["nobody says them", [{ ...week, saidBy: undefined }], 1.25 / 1.15],
    ["a share has to be expected too", [{ ...week, share: 75 }], 1.25 / 1.15],
    ["the days only count while it is warm", [{ ...week, days: "7 warm days of fill" }], 1.25 / 1.15],
    ["its shores stay", [{ ...week, shoresStay: true }], 1.25 / 1.15],
    [
      "its shores follow in the week",
      [
        { ...week, shoresStay: true },
        { ...week, sort: "shores" },
      ],
      1,
    ],
    ["its shores follow later", [week, { ...week, sort: "shores", days: "21 d" }], 1.25 / 1.15],
    ["ten weeks stand", [{ ...week, days: "70 d" }], 1.25],
  ])("%s", (_, removals, times) => {
    const short = under(week);
    const found = under(...(removals as object[]));
    for (const name of ["joists", "sheathing"] as const) expect(bending(found, name) / bending(short, name)).toBeCloseTo(times, 9);
  });

  test("what is reused has no more to lose, and sides are pressed for hours only", () => {
    const again = { joists: { stuff: { size: "2x6", grade: "DF-L No 2", reused: true }, spacing: "12 in" } };
    const [long, short] = [sheetOf(deckOf(again)), sheetOf(deckOf(again), outInAWeek, twoSteps)];
    expect(bending(long, "joists")).toBeCloseTo(bending(short, "joists"), 9);
    expect(bending(sheetOf(wallOf()), "studs")).toBeCloseTo(bending(sheetOf(wallOf(), outInAWeek, twoSteps), "studs"), 9);
  });
});

describe("joists and stringers that run through", () => {
  // An even load on equal spans: 10/8 over the middle of two, 11/10 next to the ends of three.
  const square = (side: string) =>
    sheetOf(
      deckOf(
        { stringers: { stuff: { size: "4x6", grade: "DF-L No 2" }, spacing: "48 in" } },
        { shape: { kind: "deck slab", long: side, wide: side, thick: "6 in" } },
      ),
    );
  const share = (sheet: ReturnType<typeof sheetOf>) => part(sheet, "stringers").load.value / (part(sheet, "sheathing").load.value * 1.2192);
  const ofShore = (sheet: ReturnType<typeof sheetOf>) =>
    part(sheet, "shores").load.value / (part(sheet, "sheathing").load.value * 1.2192 * 0.9144);

  test.each([
    ["4 ft", 1],
    ["8 ft", 1.25],
    ["12 ft", 1.1],
    ["40 ft", 1.1],
  ])("over %s at 4 ft", (side, times) => {
    expect(share(square(side))).toBeCloseTo(times, 9);
    expect(ofShore(square(side))).toBeCloseTo(times * times, 9);
  });
});

describe("mudsills", () => {
  const plank = { stuff: { size: "2x12", grade: "DF-L No 2", reused: false } };
  const check = (sheet: ReturnType<typeof sheetOf>, kind: string) =>
    part(sheet, "mudsills").result.checks.find((one) => one.kind === kind)?.of100;
  const sill = (change: object) =>
    sheetOf(
      deckOf({
        mudsills: { long: "24 in", wide: "11 1/4 in", soil: { is: "1500 psf", from: "code" }, level: true, ground: "firm", ...change },
      }),
    );

  test.each(["fresh fill", "frozen"])("on %s ground it stops", (ground) => {
    const sheet = sill({ ground });
    expect(detail(sheet, "form.mudsill-ground")).toMatchObject({ ground });
    expect(sheet.ready).toBe(false);
  });

  test("level, known ground and a soil figure are asked for; a figure nobody stands for is a guess", () => {
    expect(sill(plank).codes).toEqual(["form.memory"]);
    expect(sill({}).found.find(({ code }) => code === "form.guess")?.detail).toMatchObject({ part: "mudsills", what: "plank" });
    expect(sill({ level: false }).codes).toContain("form.mudsill-level");
    expect(sill({ ground: undefined }).codes).toContain("form.mudsill-ground-unknown");
    expect(sill({ soil: undefined }).codes).toContain("form.soil-unknown");
    expect(sill({ soil: undefined, ground: "rock" }).codes).not.toContain("form.soil-unknown");
    expect(sill({ ...plank, soil: "1500 psf" }).found.find(({ code }) => code === "form.guess")?.detail).toMatchObject({
      part: "mudsills",
      what: "soil",
    });
    const bare = sheetOf(deckOf({ mudsills: undefined }));
    expect([bare.ready, bare.codes.includes("form.no-mudsill")]).toEqual([false, true]);
    const slab = { long: "24 in", wide: "10 in", level: true, ground: "slab" };
    expect(sheetOf(deckOf({ mudsills: slab })).codes).toContain("form.slab-below");
  });

  test("load over area against the soil", () => {
    const sheet = sill({});
    const area_ft2 = 2 * (11.25 / 12);
    expect(check(sheet, "ground")).toBeCloseTo((100 * lb(part(sheet, "shores").load.value)) / area_ft2 / 1500, 6);
  });

  // By hand: 24 in of 2x12 under a 4x4, so 10 1/4 in free on each side of it; S 4.219 in3, 900 psi x 1.2 flat x 1.15; 180 psi x 1.15 x 0.97 wet; 625 psi x 0.67 wet.
  test("the plank bends over the soil, and the shore's foot bears on it", () => {
    const sheet = sill(plank);
    const load = lb(part(sheet, "shores").load.value);
    expect(check(sheet, "bending")).toBeCloseTo((100 * ((load / 24) * 10.25 ** 2)) / 2 / 4.21875 / (900 * 1.2 * 1.15), 6);
    expect(check(sheet, "shear")).toBeCloseTo((100 * 1.5 * (load / 24) * 8.75) / 16.875 / (180 * 1.15 * 0.97), 6);
    expect(check(sheet, "bearing")).toBeCloseTo((100 * load) / 12.25 / (625 * 0.67), 6);
    expect(part(sheet, "mudsills").stuff).toBe("2x12");
  });

  test("a longer plank spares the ground and bends more; a thicker one bends less; on a slab it does not bend", () => {
    const [short, long, thick] = [
      sill(plank),
      sill({ ...plank, long: "36 in" }),
      sill({ stuff: { size: "4x12", grade: "DF-L No 2", reused: false } }),
    ];
    expect(check(long, "ground")).toBeLessThan(check(short, "ground")!);
    expect(check(long, "bending")).toBeGreaterThan(check(short, "bending")!);
    expect(check(thick, "bending")).toBeLessThan(check(short, "bending")! / 3);
    expect(long.ready).toBe(false);
    expect(detail(long, "form.over")).toMatchObject({ part: "mudsills", governs: "bending" });
    const slab = sill({ ...plank, ground: "slab", soil: undefined });
    expect(part(slab, "mudsills").result.checks.map(({ kind }) => kind)).toEqual(["bearing"]);
  });
});

describe("vaults and stairs", () => {
  const vault = (rise: string) => sheetOf(deckOf({}, { shape: { kind: "barrel", long: "10 ft", span: "8 ft", rise, thick: "6 in" } }));

  test("a flat vault is a slab; a high one is deeper where it springs, for its sheathing more than for its shores", () => {
    const flat = vault("10 mm");
    const slab = sheetOf(deckOf({}, { shape: { kind: "deck slab", long: "10 ft", wide: "8 ft", thick: "6 in" } }));
    expect(part(flat, "shores").load.value / part(slab, "shores").load.value).toBeCloseTo(1, 2);
    const high = vault("3 ft");
    const [skin, row] = [
      part(high, "sheathing").load.value / part(slab, "sheathing").load.value,
      part(high, "shores").load.value / part(slab, "shores").load.value,
    ];
    expect(skin).toBeGreaterThan(row);
    expect(row).toBeGreaterThan(1);
    expect(high.codes).toContain("form.barrel-sideways");
  });

  test("a stair lies heavier than its waist", () => {
    const stair = sheetOf(deckOf({}, { shape: { kind: "stair", wide: "4 ft", steps: 8, riser: "7 in", tread: "11 in", thick: "6 in" } }));
    const slab = sheetOf(deckOf({}, { shape: { kind: "deck slab", long: "8 ft", wide: "4 ft", thick: "6 in" } }));
    expect(part(stair, "shores").load.value).toBeGreaterThan(part(slab, "shores").load.value);
  });
});

test("a brace that reaches the shores of a deck lower down is asked for more", () => {
  const brace = (rise: string) => ({
    stuff: { size: "4x4", grade: "DF-L No 2" },
    spacing: "4 ft",
    run: "4 ft",
    rise,
    lands: "stake",
    foot: { carries: "5000 lb", from: "code" },
  });
  const level = (rise: string, high: number) =>
    lb(part(sheetOf(deckOf({ brace: brace(rise) })), "braces").load.value) / Math.hypot(1, high / 4);
  // 100 lb/ft every 4 ft at the deck 8 ft up; at 4 ft twice as much.
  expect(level("8 ft", 8)).toBeCloseTo(400, 0);
  expect(level("4 ft", 4)).toBeCloseTo(800, 0);
});

test("an outer form is not judged, and that is said: over a steep haunch, or on a top", () => {
  const barrel = (rise: string) => deckOf({}, { shape: { kind: "barrel", long: "10 ft", span: "8 ft", rise, thick: "8 in" } });
  // Half a circle springs plumb; a rise of a quarter of the span turns through twice the arc tangent of a half, 53.13°.
  expect(detail(sheetOf(barrel("2 ft")), "form.outer-unjudged")!.slope_deg).toBeCloseTo(53.13, 2);
  expect(sheetOf(barrel("18 in")).codes).not.toContain("form.outer-unjudged");
  expect(sheetOf(deckOf({}, { faces: [{ face: "top", against: "form" }] })).codes).toContain("form.outer-unjudged");
});
