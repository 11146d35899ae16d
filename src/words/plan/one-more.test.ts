import { expect, test } from "vitest";
import { never } from "../../core/base";
import { readDocument } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Bought, OfferKind, OneMoreRow, OneMoreTable } from "../../core/plan";
import { faultsOf } from "../lint.testing";
import { wall } from "../wall.testing";
import { oneMoreProgress, oneMoreWords } from "./one-more";

const build = readDocument(
  wall({
    over: {
      people: [
        { id: "ruth", name: "Ruth", calendar: "weekends" },
        { id: "sam", name: "Sam", calendar: "weekends" },
      ],
      stock: [{ id: "form-ply", name: "Form plywood", inHand: 4 }],
      equipment: [{ id: "mixer", name: "Mixer" }],
      bookings: [{ id: "pump-date", name: "Pump", step: "pour", calendar: "yard", date: "2027-03-20" }],
    },
  }),
).build!;
const time = siteTime(build.site.zone, build.start);
const at = (moment: string) => time.minuteOf(moment)!;
const before = at("2027-03-20T12:00");
const buys = (date: string | null, finish: string, siteDays: number, from = before): Bought => {
  const t = at(finish);
  return { date, finish: t, siteDays, earlier_min: Math.max(0, from - t), edits: [{ path: ["start"], value: date }] };
};
const row = (kind: OfferKind, id: string, number: number, dates: number, ...bought: Bought[]): OneMoreRow => ({
  kind,
  id,
  who: kind === "day-off" ? ["ruth", "sam"] : [],
  number,
  dates,
  bought,
});
const table = (...rows: OneMoreRow[]): OneMoreTable => ({ finish: before, planned: before, rows, done: true, made: 9, toMake: 9 });
const said = (...rows: OneMoreRow[]) =>
  oneMoreWords(table(...rows), build).rows.map(({ what, sentence, change }) => {
    for (const text of [`${what}.`, sentence]) expect(faultsOf(text, build), text).toEqual([]);
    expect(change).not.toBe("");
    return `${what}: ${sentence}`;
  });

test("what a day off is worth, and that a second buys nothing", () => {
  const first = buys("2027-03-08", "2027-03-13T12:00", 2);
  expect(said(row("day-off", "", 1, 5, first, buys("2027-03-12", "2027-03-13T12:00", 0, first.finish)))).toEqual([
    "A day off for Ruth and Sam: On Mon 8 Mar it is worth a week (two site days): the finish is Sat 13 Mar, 12:00 instead of Sat 20 Mar, 12:00. A second buys nothing.",
  ]);
});

test("gains are told in weeks, days and hours, the second on top of the first", () => {
  const first = buys("2027-03-14", "2027-03-15T12:00", 1);
  expect(
    said(
      row("visit-day", "yard", 1, 5, first, buys("2027-03-13", "2027-03-14T12:00", 0, first.finish)),
      row("equipment", "mixer", 1, 0, buys(null, "2027-03-20T09:30", 0)),
    ),
  ).toEqual([
    "One more day of “Lumber yard”: On Sun 14 Mar it is worth five days (one site day): the finish is Mon 15 Mar, 12:00 instead of Sat 20 Mar, 12:00. A second, on Sat 13 Mar, is worth a day (no site day) more.",
    "One more mixer: It is worth 2 h 30 min on its last day: the finish is Sat 20 Mar, 9:30 instead of Sat 20 Mar, 12:00.",
  ]);
});

test("what buys nothing says how many days were tried, and stands last", () => {
  const nothing = buys("2027-03-08", "2027-03-20T12:00", 0);
  const lines = said(
    row("helper-day", "one-more-helper", 1, 5, nothing),
    row("stock", "form-ply", 4, 0, { ...nothing, date: null }),
    row("other-date", "pump-date", 1, 0, buys(null, "2027-03-06T12:00", 4)),
  );
  expect(lines).toEqual([
    "Another date for the pump: It is worth two weeks (four site days): the finish is Sat 6 Mar, 12:00 instead of Sat 20 Mar, 12:00.",
    "A day of a helper: Buys nothing, on whichever of five days tried.",
    "Four more of the form plywood: Buys nothing.",
  ]);
});

test("where another order alone is better, what more buys is counted from there", () => {
  const { lead } = oneMoreWords({ ...table(), planned: at("2027-03-21T10:00") }, build);
  expect(lead).toBe(
    "As it stands the finish is Sun 21 Mar, 10:00. Another order of the work alone makes it Sat 20 Mar, 12:00: what more buys is counted from there.",
  );
  expect(faultsOf(lead, build)).toEqual([]);
});

test("a build without dates has no table, and how far it is is told in plans", () => {
  const none: OneMoreTable = { finish: never, planned: never, rows: [], done: true, made: 1, toMake: 1 };
  expect(oneMoreWords(none, build)).toEqual({ lead: "The build has no dates yet, so nothing can be said of more.", rows: [] });
  expect(oneMoreProgress({ ...none, done: false, made: 3, toMake: 40 })).toBe("3 of 40 plans made");
});
