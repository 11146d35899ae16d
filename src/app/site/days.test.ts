import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { listOf, type Written } from "../write/written";
import { type DaySort, dayEdits, dayState, daysOn, hoursOffered, isDay, monthOf, monthsOn, nextSort, weekdayOf } from "./days";

test("days and months go on over the ends of years and short months", () => {
  expect(daysOn("2027-12-31", 1)).toBe("2028-01-01");
  expect(daysOn("2028-03-01", -1)).toBe("2028-02-29");
  expect(monthsOn("2027-01-31", 1)).toBe("2027-02-28");
  expect(monthsOn("2027-01-15", -1)).toBe("2026-12-15");
  expect(weekdayOf("2027-06-26")).toBe(6);
  expect([isDay("2027-02-29"), isDay("2028-02-29"), isDay("June")]).toEqual([false, true, false]);
});

test("a month is laid out in weeks that begin where one says", () => {
  const sunday = monthOf("2027-06-26", 0);
  expect(sunday.name).toBe("June 2027");
  expect(sunday.weeks[0]).toEqual([null, null, "2027-06-01", "2027-06-02", "2027-06-03", "2027-06-04", "2027-06-05"]);
  expect(sunday.weeks.flat().filter((date) => date !== null)).toHaveLength(30);
  expect(monthOf("2027-02-01", 1).weeks).toHaveLength(4);
  expect(monthOf("2027-08-31", 1).weeks[5]).toEqual(["2027-08-30", "2027-08-31", null, null, null, null, null]);
});

describe("a day of a calendar", () => {
  const weekends: Written = { id: "weekends", week: { sat: ["8:00-12:00"], sun: ["9:00-12:00"] }, holidays: "us-federal" };

  test("says what the planner reads: own hours, days off, holidays, the week", () => {
    expect(dayState(weekends, "2027-06-26")).toEqual({ sort: "week", hours: ["8:00-12:00"], holiday: "" });
    expect(dayState({ ...weekends, off: ["2027-06-26"] }, "2027-06-26")).toMatchObject({ sort: "off", hours: [] });
    const both = { ...weekends, off: ["2027-06-26"], extra: { "2027-06-26": ["7:00-9:00"] } };
    expect(dayState(both, "2027-06-26")).toMatchObject({ sort: "extra", hours: ["7:00-9:00"] });
    expect(dayState({ ...weekends, extra: { "2027-06-26": [] } }, "2027-06-26").sort).toBe("off");
    // 4 July 2027 is a Sunday; the table also keeps Monday the 5th.
    expect(dayState(weekends, "2027-07-04")).toMatchObject({ sort: "week", hours: [], holiday: "Independence Day" });
  });

  test("goes round in three, a worked day by way of off first, an idle one by way of hours", () => {
    const round = (date: string): readonly DaySort[] => {
      let document: unknown = documentOf({ calendars: [weekends] });
      return [1, 2, 3].map(() => {
        const calendar = listOf(document, "calendars").find(({ id }) => id === "weekends") ?? {};
        const next = nextSort(calendar, date);
        document = apply(document, dayEdits(calendar, date, next, hoursOffered(calendar, date))).document;
        expect(readDocument(document).build).not.toBeNull();
        return next;
      });
    };
    expect(round("2027-06-26")).toEqual(["off", "extra", "week"]);
    expect(round("2027-06-25")).toEqual(["extra", "off", "week"]);
    expect(round("2027-07-04")).toEqual(["extra", "off", "week"]);
  });

  test("leaves nothing behind when all is as the week says again, and keeps dates in order", () => {
    const calendar = { ...weekends, off: ["2027-07-10"], extra: { "2027-07-16": ["8:00-9:00"] } };
    const document = documentOf({ calendars: [calendar] });
    const left = (edits: Parameters<typeof apply>[1]): Written =>
      listOf(apply(document, edits).document, "calendars").find(({ id }) => id === "weekends") ?? {};
    expect(left(dayEdits(calendar, "2027-06-26", "off", [])).off).toEqual(["2027-06-26", "2027-07-10"]);
    expect(left(dayEdits(calendar, "2027-07-10", "week", []))).not.toHaveProperty("off");
    expect(left(dayEdits(calendar, "2027-07-16", "week", []))).not.toHaveProperty("extra");
    const moved = left(dayEdits(calendar, "2027-07-10", "extra", ["7:00-8:00"]));
    expect(moved).not.toHaveProperty("off");
    expect(Object.keys(moved.extra as object)).toEqual(["2027-07-10", "2027-07-16"]);
    expect(dayEdits(calendar, "2027-06-27", "week", [])).toEqual([]);
  });

  test("offers the hours of its weekday, else of the first day that has any", () => {
    expect(hoursOffered(weekends, "2027-06-27")).toEqual(["9:00-12:00"]);
    expect(hoursOffered(weekends, "2027-06-25")).toEqual(["9:00-12:00"]);
    expect(hoursOffered({ id: "none" }, "2027-06-25")).toEqual(["8:00-17:00"]);
  });
});
