import { describe, expect, test } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import { place, step } from "../../../test/fixtures/small";
import { examples } from "../../examples";
import { readDocument } from "../build";
import { clocksOf } from "../clock";
import { daySheet, nextSiteDay, overdue, plan, sheetDays, workDays } from ".";

const sheetOf = (document: PartialDocument, date?: string) => {
  const build = buildOf(document);
  const made = plan(build);
  expect(made.status).toBe("planned");
  return { build, made, sheet: daySheet(build, made, date ?? workDays(made)[0]!.date)! };
};
const done = (day: string) => ({ done: { start: `${day}T08:00`, finish: `${day}T09:00` } });

describe("the sheet of a site day", () => {
  test("has the day's steps in order, with what they close, and the days on both sides", () => {
    const { build, made, sheet } = sheetOf({
      places: [place("cage", { id: "north", passes: ["person"] })],
      pieces: [{ id: "shut", closes: ["cage.north"] }],
      steps: [step("close", { puts: ["shut"] }), step("tie", { reaches: [{ place: "cage" }], work: "30 h" })],
    });
    expect(sheet.rows.map(({ step: s }) => s)).toEqual([1]);
    expect([sheet.rows[0]!.began, sheet.rows[0]!.goesOn]).toEqual([false, true]);
    expect(sheet.before).toBeNull();
    const days = workDays(made);
    expect(sheet.after).toBe(days[1]!.date);
    const closing = daySheet(build, made, days.at(-1)!.date)!;
    expect(closing.rows.flatMap(({ closes }) => closes)).toEqual([0]);
    expect(closing.after).toBeNull();
    expect(daySheet(build, made, "1999-01-01")).toBeNull();
  });

  test("wants no more tools and materials for what is ticked", () => {
    const mix = step("mix", { work: "1 h", tools: ["paddle", "bucket"], materials: ["cement"] });
    const trowel = step("trowel", { work: "1 h", tools: ["bucket", "float"], materials: ["water"], after: ["mix"] });
    const wanted = (steps: object[]) => {
      const { sheet } = sheetOf({ steps });
      return [sheet.tools, sheet.materials.map(({ what }) => what), sheet.rows.length];
    };
    expect(wanted([mix, trowel])).toEqual([["paddle", "bucket", "float"], ["cement", "water"], 2]);
    const day = workDays(sheetOf({ steps: [mix, trowel] }).made)[0]!.date;
    expect(wanted([{ ...mix, ...done(day) }, trowel])).toEqual([["bucket", "float"], ["water"], 2]);
  });

  test("tells what wants it dry, and what can be done in the shop instead", () => {
    const shop = { ...place("bench"), side: "off-site" };
    const { build, sheet } = sheetOf({
      places: [place("yard"), shop],
      steps: [
        step("paint", { work: "20 h", weather: { dry: true }, reaches: [{ place: "yard" }] }),
        step("cut", { reaches: [{ place: "bench" }] }),
        step("join", { reaches: [{ place: "bench" }], after: ["paint"] }),
      ],
      people: [{ id: "me" }],
    });
    const names = (steps: readonly number[]) => steps.map((s) => build.steps[s]!.id);
    expect(names(sheet.dry)).toEqual(["paint"]);
    expect(names(sheet.shop)).toEqual(["cut"]);
  });

  test("names what has to be ordered before the day after, and what comes", () => {
    const { build, sheet } = sheetOf({
      deliveries: [
        { id: "sand", promised: "2027-03-04" },
        { id: "late", lead: "10 d" },
        { id: "had", lead: "1 d", ordered: true },
      ],
      steps: [
        step("first", { work: "4 h", needs: ["sand"] }),
        step("then", { after: ["first"], needs: ["late"] }),
        step("last", { after: ["then"], needs: ["had"] }),
      ],
    });
    expect(sheet.arrives.map((d) => build.deliveries[d]!.id)).toContain("sand");
    expect(sheet.order.map((d) => build.deliveries[d]!.id)).toEqual(["late"]);
  });

  test("lists what is left behind: holes, scaffolds, open forms, and no longer what is gone or filled", () => {
    const cage = place("cage", { id: "top", passes: ["person"] });
    const { sheet } = sheetOf({
      places: [cage],
      pieces: [
        { id: "pit", sort: "hole" },
        { id: "tower", sort: "scaffold" },
        { id: "form", sort: "form", closes: ["cage.top"] },
      ],
      steps: [
        step("dig", { puts: ["pit"] }),
        step("build", { puts: ["tower"] }),
        step("set", { puts: ["form"] }),
        step("wait", { work: "40 h" }),
      ],
    });
    expect(sheet.left.map(({ kind }) => kind)).toEqual(["hole", "forms", "scaffold"]);
    const gone = sheetOf({
      pieces: [{ id: "pit", sort: "hole" }],
      steps: [step("dig", { puts: ["pit"] }), step("fill", { takes: ["pit"] })],
    });
    expect(gone.sheet.left).toEqual([]);
  });
});

describe("the day that comes next", () => {
  const document: PartialDocument = {
    steps: [step("a", { work: "4 h" }), step("b", { work: "4 h", after: ["a"] }), step("c", { work: "20 h", after: ["b"] })],
  };

  test("is the first with a step that is not done, not before today; where all lies before, the last of them", () => {
    const build = buildOf(document);
    const made = plan(build);
    const days = workDays(made).map(({ date }) => date);
    expect(nextSiteDay(build, made, "2027-01-01")).toBe(days[0]);
    expect(nextSiteDay(build, made, days[1]!)).toBe(days[1]);
    expect(nextSiteDay(build, made, "2099-01-01")).toBe(days.at(-1));
    const all = buildOf({ steps: ["a", "b", "c"].map((id) => step(id, done("2027-03-06"))) });
    expect(nextSiteDay(all, plan(all), "2027-03-06")).toBeNull();
  });

  test("steps planned to be finished before today and not ticked are overdue", () => {
    const build = buildOf({ steps: [step("a", done("2027-03-06")), step("b", { work: "1 h" }), step("c", { fixed: "2027-06-05" })] });
    const made = plan(build);
    const after = clocksOf(build).time.dateOf(clocksOf(build).time.dayOf(made.steps[1]!.finish) + 1);
    expect(overdue(build, made, after)).toEqual([1]);
    expect(overdue(build, made, build.start)).toEqual([]);
  });
});

test("a day on which all is ticked stays a day to look at", () => {
  const build = buildOf({ steps: [step("a", done("2027-03-06")), step("b", { fixed: "2027-06-05" })] });
  const made = plan(build);
  expect(workDays(made).map(({ date }) => date)).toEqual(["2027-03-06", "2027-06-05"]);
  expect(daySheet(build, made, "2027-03-06")!.rows.map((row) => row.done)).toEqual([true]);
});

test("every site day of the cellar has a sheet, and all its steps are on one", async () => {
  const build = readDocument(await examples.find(({ id }) => id === "bank-cellar")!.load()).build!;
  const made = plan(build);
  const seen = new Set<number>();
  for (const day of workDays(made)) {
    const sheet = daySheet(build, made, day.date)!;
    for (const row of sheet.rows) {
      seen.add(row.step);
      expect(row.to).toBeGreaterThanOrEqual(row.from);
    }
  }
  const manned = build.steps.flatMap((one, s) => (one.hands.length > 0 ? [s] : []));
  expect(manned.filter((s) => !seen.has(s))).toEqual([]);
});

test("concrete that is to be kept wet is among what is left behind, until it need not be", async () => {
  const build = readDocument(await examples.find(({ id }) => id === "bank-cellar")!.load()).build!;
  const made = plan(build);
  const wet = (date: string) =>
    daySheet(build, made, date)!.left.flatMap((left) => (left.kind === "wet" ? [build.steps[left.step]!.id as string] : []));
  const { time } = clocksOf(build);
  const pour = build.pours.find(({ cure }) => cure.how === "wet" && cure.days !== null)!;
  const placed = made.steps[build.at.step.get(pour.step as never)!]!.finish;
  const [before = "", on = ""] = [
    workDays(made).findLast(({ from }) => time.dayOf(from) < time.dayOf(placed))?.date,
    time.dateOf(time.dayOf(placed)),
  ];
  const over = workDays(made).find(({ from }) => from > placed + (pour.cure.days! + 1) * 1440)!.date;
  expect(wet(before)).not.toContain(pour.step);
  expect(wet(on)).toContain(pour.step);
  expect(wet(over)).not.toContain(pour.step);
});

test("a day on which only others work has a sheet of its own, and is next where the crew has nothing left", () => {
  const inspector = { id: "look", sort: "inspection", calendar: "inspector", work: "1 h", hands: 0 };
  const document = {
    steps: [step("dig", { work: "2 h" }), { ...inspector, after: ["dig"] }, step("fill", { work: "2 h", after: ["look"] })],
  };
  const { build, made, sheet } = sheetOf(document);
  expect(made.status).toBe("planned");
  const days = sheetDays(made).map(({ date }) => date);
  expect(days.length).toBe(workDays(made).length + 1);
  expect([sheet.after, sheet.back]).toEqual([days[1], days[2]]);
  const between = daySheet(build, made, days[1]!)!;
  expect(between.rows.map(({ step }) => build.steps[step]!.id)).toEqual(["look"]);
  expect([between.before, between.after, between.back]).toEqual([days[0], days[2], days[2]]);
  expect(nextSiteDay(build, made, days[1]!)).toBe(days[2]);
  const last = sheetOf({ steps: [step("dig", { work: "2 h" }), { ...inspector, after: ["dig"] }] });
  expect(nextSiteDay(last.build, last.made, days[1]!)).toBe(days[1]);
});
