import { describe, expect, test } from "vitest";
import { columnOf, formDocument, readForms, wallOf } from "../../../test/fixtures/form-documents";
import { pourSheet } from "../../core/pour";
import { findingSentence, firstSentence, fixSentence, fullHeadReasons, liftSentences, of100, pressureSentences } from "../index";
import { ofWhatMay } from "./members";

type Written = Parameters<typeof formDocument>[0][number];
const of = (element: Written, pour: Parameters<typeof formDocument>[1] = {}, whole: Parameters<typeof formDocument>[2] = {}) => {
  const build = readForms(formDocument([element], pour, whole));
  const sheet = pourSheet(build, 0);
  return { build, sheet, one: sheet.elements[0]! };
};
const lifts = (element: Written, display: "us" | "metric" = "us"): string =>
  liftSentences(of(element).one, display)
    .map(({ says }) => says)
    .join(" ");

describe("what lifts a form", () => {
  test("of a wall is told for each foot or metre, as its finding tells it", () => {
    // 6 ft of full head on two faces of 1:8: 2 x 2,700 / 8 = 675 lb a foot, against 120 of the form.
    const leaning = wallOf({ batter: "1:8" });
    expect(lifts(leaning)).toContain("lifts the form with 675 lb for each foot: it weighs 120 lb for each foot");
    expect(lifts(leaning)).toContain("hold-downs for 555 lb for each foot are asked for, and there are none");
    expect(lifts(leaning, "metric")).toContain("9.9 kN for each metre");
    const { build, sheet } = of(leaning);
    expect(sheet.findings.map((finding) => findingSentence(finding, build)).join(" ")).toContain("with 675 lb for each foot");
  });

  test("of a column is told whole", () => {
    const lid = columnOf({ faces: [{ face: "top", against: "form" }] });
    const says = liftSentences(of(lid, { placed: "from the base" }).one, "us").map((one) => one.says);
    // A quarter of 900 lb/ft2 on one square foot.
    expect(says.join(" ")).toMatch(/lifts the form with 225 lb: it weighs 120 lb, /);
  });
});

describe("full head in words", () => {
  test("names how it is placed, and the surge where it is pumped from the base", () => {
    const { pressure } = of(columnOf(), { placed: "from the base" }).one;
    expect(pressureSentences(pressure!, "us", "from the base")[0]).toBe(
      "Pumped from the base it feels 1125 lb/ft² at its foot: full head, 150 lb/ft³ times 72 in, and a quarter more for the surge.",
    );
  });

  test("does not say that nobody is named where somebody is and the act does not count", () => {
    const people = { people: [{ id: "ann", name: "Ann", calendar: "weekends" }] };
    const deep = of(columnOf({ held: { pass: "30 in", every: "20 min", who: "ann" } }), {}, people).one.pressure!;
    expect(deep.design).toBe("hose");
    expect(fullHeadReasons(deep, "us").join(" ")).not.toContain("nobody is named");
    expect(fullHeadReasons(of(columnOf()).one.pressure!, "us").join(" ").toLowerCase()).toContain("nobody is named");
  });
});

test("how fast a hose fills a small column is told once", () => {
  const said = fullHeadReasons(of(columnOf()).one.pressure!, "us");
  expect(said[0]).toMatch(/^It is short and small in plan, .*: the hose raises it \d+ ft\/h\.$/);
  expect(said).toContain("Nobody is named to hold a rate.");
});

test("what a chute would fill at once is told with the rate, the lifts and the minutes at which it is let in, and no rate nobody would place at", () => {
  const column = columnOf({ shape: { kind: "column", long: "10 in", wide: "10 in", high: "9 ft" } });
  const { pressure } = of(column, { placed: "chute", rate: "10 yd3/h" }).one;
  // 16 in at 15 ft/h: 5.33 min, rounded up.
  expect(pressure?.throttle).toEqual({ rise_m_h: 15 * 0.3048, lift_mm: 406.4, every_min: 6 });
  const said = fullHeadReasons(pressure!, "us", "chute");
  expect(said[0]).toMatch(
    /^.+\. Let it in no faster than 15 ft\/h: lifts of 16 in at most, each vibrated, and 6 min from the start of one to the next\.$/,
  );
  const rates = said
    .join(" ")
    .match(/\d+(?= ft\/h)/g)
    ?.map(Number);
  expect(rates).toEqual([15]);
  // It lowers no pressure: only a written act of a named person does.
  expect(pressure?.design).toBe("hose");
  expect(pressure?.hose.most_psf).toBeCloseTo(9 * 150, 6);
  // A hose cannot be throttled, and what is one lift high has no lifts.
  expect(of(column, { placed: "hose" }).one.pressure?.throttle).toBeNull();
  const low = columnOf({ shape: { kind: "column", long: "10 in", wide: "10 in", high: "14 in" }, form: undefined });
  expect(of(low, { placed: "chute", rate: "10 yd3/h" }).one.pressure?.throttle).toBeNull();
  const metric = of(column, { placed: "chute", rate: "8 m3/h" }, { pressure: "aci-si" }).one.pressure!;
  expect(fullHeadReasons(metric, "metric", "chute")[0]).toContain("4.5 m/h: lifts of 400 mm at most, each vibrated, and 6 min");
});

test("a formula of a document is named once", () => {
  const people = { people: [{ id: "ann", name: "Ann", calendar: "weekends" }], pressure: "ciria" };
  const held = { held: { pass: "6 in", every: "30 min", who: "ann" } };
  const slow = of(
    wallOf({ high: "8 ft", long: "20 ft" }, {}, held),
    { mix: { strength: "4000 psi", cement: "I", slump: "4 in" }, vibrated: "3 ft" },
    people,
  );
  expect(pressureSentences(slow.one.pressure!, "us")[1]).toContain("(CIRIA Report 108)");
});

test("a change that leaves another part over says that it still would not hold", () => {
  const weak = columnOf({}, { bands: { stuff: "2x4", at: ["10 in", "60 in"], bolt: { carries: "200 lb", from: "product sheet" } } });
  const { build, one } = of(weak);
  const over = one.fixes.filter(({ of100 }) => of100 > 100);
  expect(over.length).toBeGreaterThan(0);
  for (const fix of over) expect(fixSentence(fix, build.site.units)).toContain("it still would not hold");
});

test("what is missing to say how fast it dries is named", () => {
  const slab = { id: "s", name: "Slab", shape: { kind: "slab", long: "10 ft", wide: "10 ft", thick: "4 in" } };
  const { build, sheet } = of(slab);
  const finding = sheet.findings.find(({ code }) => code === "pour.drying-unknown")!;
  expect(findingSentence(finding, build)).toContain("without the air, humidity and wind of that day");
});

test("what is over by more than ten times says so, without a figure that nobody reads", () => {
  expect([of100(1000), of100(1000.1), of100(230763)]).toEqual(["1000 of 100", "more than 10 times", "more than 10 times"]);
  expect([ofWhatMay(97, true), ofWhatMay(230763, true), ofWhatMay(230763)]).toEqual([
    "97 of 100 of what they may",
    "more than 10 times what they may",
    "more than 10 times what it may",
  ]);
  const { build, sheet, one } = of(
    columnOf({}, { bands: { stuff: "2x4", at: ["10 in"], bolt: { carries: "3 lb", from: "product sheet" } } }),
  );
  expect(firstSentence(one.form!, "us")).toContain("more than 10 times what they may, in sag");
  const over = sheet.findings.find(({ code, detail }) => code === "form.over" && detail.part === "corner bolts")!;
  expect(findingSentence(over, build)).toMatch(/carry more than 10 times what they may, in tension/);
});

test("stakes are pushed sideways, and not pulled", () => {
  const { one } = of({
    id: "footing",
    shape: { kind: "footing", long: "20 ft", wide: "3 ft", thick: "12 in" },
    form: { kind: "edge", boards: "2x12", stakes: { spacing: "3 ft", by: { name: "stake", carries: "100 lb", from: "code" } } },
  });
  expect(firstSentence(one.form!, "us")).toMatch(
    /^It would not hold\. The stakes give first: \d+ of 100 of what they may, in sideways push\.$/,
  );
});
