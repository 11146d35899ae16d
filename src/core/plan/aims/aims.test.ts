import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { aloneOnWeekends, eightToFour } from "../../../../test/fixtures/alone";
import { type Aim, type Build, readDocument } from "../../build";
import { apply } from "../../edit";
import { plan } from "../plan-of";
import { verifyPlan } from "../verify/verify-plan";
import { AimSearch } from "./aim-search";

type Raw = Record<string, unknown>;
const inspector = { id: "inspector", name: "Inspector", week: { mon: [eightToFour], wed: [eightToFour] } };
const written = (over: Raw): Raw => aloneOnWeekends(over, [inspector]);
const aimOf = (over: Partial<Aim>): Aim => ({ for: "site-days", months: [], coldest_C: null, weeksLater: 0, ...over });
const searched = (build: Build, aim: Aim) => {
  const search = new AimSearch(build, aim);
  search.step(100_000);
  expect(search.done).toBe(true);
  return search.aimed();
};
/** The plan that follows when what was found is written down, and what it is worth; null where nothing was. */
function followed(document: Raw, aim: Partial<Aim>) {
  const aimed = searched(readDocument(document).build!, aimOf(aim));
  if (aimed.served === null) return null;
  const build = readDocument(apply(document, [{ path: ["served"], value: aimed.served }]).document).build!;
  const made = plan(build);
  expect(verifyPlan(build, made)).toEqual([]);
  expect(made.finish).toBe(aimed.after!.finish);
  expect(made.finish).toBeLessThanOrEqual(aimed.finishBy);
  expect(made.days.filter((d) => d.site).length).toBe(aimed.after!.siteDays);
  return { aimed, made, build };
}

const trickle = written({
  deliveries: ["one", "two"].map((id, i) => ({ id, name: id, calendar: "inspector", promised: ["2027-03-10", "2027-03-17"][i] })),
  steps: [
    { id: "sort", name: "Sort", work: "1 h" },
    { id: "cut", name: "Cut", work: "2 h", needs: ["one"] },
    { id: "set", name: "Set", work: "3 h", needs: ["two"] },
  ],
});

test("work that trickles in is done on fewer site days with the finish where it was; what waits for it says so", () => {
  const { aimed, made, build } = followed(trickle, {})!;
  expect([aimed.before!.siteDays, aimed.after!.siteDays]).toEqual([3, 2]);
  expect(aimed.after!.finish).toBe(plan(readDocument(trickle).build!).finish);
  const waits = made.steps.filter((s) => s.holder.kind === "aim").length;
  expect(waits).toBeGreaterThan(0);
  expect(Object.keys(build.served!.from!).length).toBeGreaterThanOrEqual(waits);
});

test("the finish comes later only as far as the builder allows", () => {
  const monthly = written({ steps: [{ id: "pour", name: "Pour", sort: "pour", work: "4 h" }] });
  expect(followed(monthly, { for: "pours", months: [4] })).toBeNull();
  expect(followed(monthly, { for: "pours", months: [4], weeksLater: 3 })).toBeNull();
  const { aimed } = followed(monthly, { for: "pours", months: [4], weeksLater: 4 })!;
  expect([aimed.before!.poursOutside, aimed.after!.poursOutside]).toEqual([1, 0]);
});

test("a pour waits for days that do not get too cold, by the site's own temperatures", () => {
  const low = [-8, -7, -3, 2, 8, 13, 16, 15, 10, 4, 0, -5];
  const cold = {
    ...written({ steps: [{ id: "pour", name: "Pour", sort: "pour", work: "4 h" }] }),
    site: {
      zone: "America/New_York",
      latitude: 41.4,
      longitude: -73.9,
      units: "us",
      usualTemperatures: low.map((l) => ({ low: `${l} °C`, high: `${l + 10} °C` })),
    },
  };
  const { made, build } = followed(cold, { for: "pours", coldest_C: 4.5, weeksLater: 16 })!;
  // The middle of April is at 2 °C and that of May at 8: 4.5 °C comes on 28 April, a Wednesday.
  const date = made.days[0]!.date;
  expect(date).toBe("2027-05-01");
  expect(build.served!.from!.pour!.slice(0, 10) <= date).toBe(true);
});

test("two inspections come on one day where nothing is lost by it", () => {
  const looked = written({
    deliveries: [{ id: "bars", name: "Bars", calendar: "inspector", promised: "2027-03-31" }],
    steps: [
      { id: "dig", name: "Dig", work: "2 h" },
      { id: "look", name: "Look", sort: "inspection", work: "1 h", hands: 0, calendar: "inspector", after: ["dig"] },
      { id: "tie", name: "Tie", work: "6 h" },
      { id: "see", name: "See", sort: "inspection", work: "1 h", hands: 0, calendar: "inspector", after: ["tie"], notBefore: "2027-03-10" },
      { id: "pour", name: "Pour", work: "4 h", after: ["look", "see"], needs: ["bars"] },
    ],
  });
  const { aimed } = followed(looked, { for: "visits" })!;
  expect([aimed.before!.visits, aimed.after!.visits]).toEqual([2, 1]);
});

test("a week that is too full gives to the next where there is slack", () => {
  const heap = written({
    steps: [
      ...["a", "b", "c", "d"].map((id) => ({ id, name: id, work: "4 h" })),
      { id: "last", name: "Last", work: "2 h", fixed: "2027-03-20T08:00" },
    ],
  });
  const { aimed } = followed(heap, { for: "weekends" })!;
  expect(aimed.after!.fullest_min).toBeLessThan(aimed.before!.fullest_min);
});

test("nothing is made worse, nothing is found where nothing is better, and portions do not matter", () => {
  const document = JSON.parse(readFileSync("src/examples/garden-wall.json", "utf8"));
  const build = readDocument(document).build!;
  for (const kind of ["site-days", "visits", "pours", "weekends"] as const) {
    const aim = aimOf({ for: kind, months: [5, 6, 7, 8, 9], weeksLater: 1 });
    const whole = searched(build, aim);
    const bits = new AimSearch(build, aim);
    while (!bits.done) bits.step(7);
    expect(bits.aimed()).toEqual(whole);
    expect(whole.after!.cost).toBeLessThanOrEqual(whole.before!.cost);
    if (whole.served === null) expect(whole.after).toEqual(whole.before);
    else followed(document, aim);
  }
});

test("a build without dates is left alone", () => {
  const build = readDocument(written({ steps: [{ id: "a", name: "A", work: "2 h", deadline: "2027-03-01" }] })).build!;
  expect(searched(build, aimOf({}))).toMatchObject({ before: null, after: null, served: null });
});
