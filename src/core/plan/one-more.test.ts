import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { aloneOnWeekends, eightToFour } from "../../../test/fixtures/alone";
import { type DocumentEdit, never } from "../base";
import { readDocument } from "../build";
import { siteTime } from "../clock";
import { apply } from "../edit";
import { OneMore, type OneMoreTable } from "./one-more";
import { plan } from "./plan-of";
import { quickFinish } from "./quick-finish";
import { PlanSearch } from "./search/plan-search";
import { rungs } from "./search/sought";
import { searched } from "./searched";
import { verifyPlan } from "./verify/verify-plan";

type Raw = Record<string, unknown>;
const others = [
  { id: "inspector", name: "Inspector", week: { mon: ["9:00-15:00"] } },
  { id: "helpers", name: "Helpers", week: {}, extra: { "2027-03-20": [eightToFour] } },
];
const written = (over: Raw): Raw =>
  aloneOnWeekends({ people: [{ id: "ruth", name: "Ruth", calendar: "weekends", daysOff: { budget: 1 } }], ...over }, others);
const edited = (document: unknown) => (edits: readonly DocumentEdit[]) => readDocument(apply(document, edits).document).build;
const searchOf = (document: unknown, from = "") =>
  new OneMore(readDocument(document).build!, edited(document), { quick: quickFinish, search: searched }, from);
const tableOf = (document: unknown, from = ""): OneMoreTable => {
  const search = searchOf(document, from);
  search.step(10_000);
  return search.table();
};
const time = siteTime("America/New_York", "2027-03-06");
const said = (table: OneMoreTable, kind: string) =>
  table.rows
    .filter((r) => r.kind === kind)
    .flatMap((r) => r.bought.map((b) => `${r.id} ${b.date} ${time.momentOf(b.finish)} ${b.siteDays}`.trim()));

const threeDays = written({ steps: ["a", "b", "c"].map((id, i, all) => ({ id, work: "8 h", after: i === 0 ? [] : [all[i - 1]] })) });

test("a day off is taken where it brings the finish forward most; a second on top of it buys nothing", () => {
  const table = tableOf(threeDays);
  expect(time.momentOf(table.finish)).toBe("2027-03-13T16:00");
  expect(said(table, "day-off")).toEqual(["2027-03-08 2027-03-08T16:00 1", "2027-03-09 2027-03-08T16:00 0"]);
  expect(table.rows[0]!.bought.map((b) => b.earlier_min)).toEqual([5 * 1440, 0]);
});

test("nothing is added before the day asked from", () => {
  expect(said(tableOf(threeDays, "2027-03-10"), "day-off")[0]).toBe("2027-03-12 2027-03-12T16:00 1");
});

test("those who come now and then come once more; where nobody does, somebody comes", () => {
  const helped = written({
    people: [
      { id: "ruth", name: "Ruth", calendar: "weekends" },
      { id: "tom", name: "Tom", calendar: "helpers" },
    ],
    steps: [{ id: "lift", work: "6 h", hands: 2 }],
  });
  const table = tableOf(helped);
  expect(said(table, "helper-day")[0]).toBe("helpers 2027-03-06 2027-03-06T14:00 4");
  expect(table.rows.find((r) => r.kind === "helper-day")!.who).toEqual(["tom"]);
  const alone = written({
    steps: [
      { id: "a", work: "8 h" },
      { id: "b", work: "8 h" },
    ],
  });
  expect(said(tableOf(alone), "helper-day")).toEqual([
    "one-more-helper 2027-03-06 2027-03-06T16:00 1",
    "one-more-helper 2027-03-07 2027-03-06T16:00 0",
  ]);
});

test("an inspector on one more day, and what is booked on another date", () => {
  const inspected = written({
    steps: [
      { id: "tie", work: "8 h" },
      { id: "look", sort: "inspection", work: "1 h", hands: 0, calendar: "inspector", after: ["tie"] },
      { id: "pour", work: "4 h", after: ["look"] },
    ],
    bookings: [{ id: "pump", name: "Pump", step: "pour", calendar: "inspector", date: "2027-03-20" }],
  });
  expect(said(tableOf(inspected), "other-date")).toEqual(["pump null 2027-03-13T12:00 2"]);
  const free = apply(inspected, [{ path: ["bookings"] }]).document;
  expect(said(tableOf(free), "visit-day")[0]).toBe("inspector 2027-03-07 2027-03-07T14:00 1");
});

test("a set of sheets is what the largest form takes; of what never comes back there is no set", () => {
  const forms = written({
    stock: [
      { id: "sheets", name: "Sheets", inHand: 4 },
      { id: "bags", name: "Bags", inHand: 4 },
    ],
    pieces: ["p", "q"].map((id) => ({
      id,
      name: id,
      uses: [
        { of: "sheets", number: 4 },
        { of: "bags", number: 2, loss: 2 },
      ],
    })),
    steps: ["p", "q"].flatMap((id) => [
      { id: `set-${id}`, work: "2 h", puts: [id] },
      { id: `strip-${id}`, work: "2 h", takes: [id] },
    ]),
    waits: ["p", "q"].map((id) => ({ id: `cure-${id}`, from: `set-${id}`, to: `strip-${id}`, least: "6 d" })),
  });
  const table = tableOf(forms);
  expect(table.rows.filter((r) => r.kind === "stock").map((r) => [r.id, r.number])).toEqual([["sheets", 4]]);
  expect(said(table, "stock")).toEqual(["sheets null 2027-03-13T12:00 2", "sheets null 2027-03-13T12:00 0"]);
});

const example = JSON.parse(readFileSync("src/examples/garden-wall.json", "utf8"));

test("each answer is what a search of the changed document by itself finds, and its edits make the document that is planned so", () => {
  for (const document of [threeDays, example]) {
    for (const row of tableOf(document).rows) {
      for (const { edits, finish } of row.bought) {
        const search = new PlanSearch(edited(document)(edits.filter(({ path }) => path[0] !== "served"))!);
        while (!search.sought().done && search.sought().rung < rungs[0]) search.step(500);
        expect(search.plan().finish).toBe(finish);
        const build = edited(document)(edits)!;
        expect(plan(build).finish).toBe(finish);
        expect(verifyPlan(build, plan(build))).toEqual([]);
      }
    }
  }
});

test("in portions it comes to the same as in one go, and says how far it is", () => {
  const search = searchOf(threeDays);
  let before = -1;
  while (!search.table().done) {
    const { made, toMake } = search.table();
    expect(made).toBeGreaterThanOrEqual(before);
    expect(toMake).toBeGreaterThanOrEqual(made);
    before = made;
    search.step(1);
  }
  expect(search.table()).toEqual(tableOf(threeDays));
});

test("a build without dates has no table", () => {
  const never_ = written({ steps: [{ id: "a", work: "2 h", deadline: "2027-03-01" }] });
  expect(tableOf(never_)).toMatchObject({ finish: never, rows: [], done: true });
});
