import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { calendarRuns, type WorkSpec } from "./calendar";
import { checkHolidays } from "./check";
import { holidayName, holidayTables } from "./holidays";
import { cut } from "./runs";
import { siteTime } from "./site";
import { sunDays } from "./sun";
import { WorkingClock } from "./working";

const site = { zone: "America/New_York", latitude: 41.4, longitude: -73.9 };
const start = "2027-03-06";
const time = siteTime(site.zone, start);
const w = (from: string, to: string) => ({ from_min: minutes(from), to_min: minutes(to) });
const minutes = (text: string) => Number(text.split(":")[0]) * 60 + Number(text.split(":")[1]);
const t = (moment: string) => time.minuteOf(moment) as number;

function spec(week: WorkSpec["week"], more: Partial<WorkSpec> = {}): WorkSpec {
  return { id: "c", week, off: [], extra: new Map(), holidays: null, daylightOnly: false, ...more };
}

const none: WorkSpec["week"] = [[], [], [], [], [], [], []];
const weekends: WorkSpec["week"] = none.map((_, day) => (day === 0 || day === 6 ? [w("7:30", "12:00"), w("12:30", "17:00")] : []));
const shown = (runs: Iterable<number>) => Array.from(runs, (at) => time.momentOf(at).slice(5).replace("T", " "));

describe("a calendar's working time", () => {
  test("is its windows on its weekdays, on the wall clock", () => {
    const runs = calendarRuns(spec(weekends), site, start);
    expect(shown(runs(0, t("2027-03-08")))).toEqual([
      "03-06 07:30",
      "03-06 12:00",
      "03-06 12:30",
      "03-06 17:00",
      "03-07 07:30",
      "03-07 12:00",
      "03-07 12:30",
      "03-07 17:00",
    ]);
    // The weekend of the spring change: still half past seven on the wall, an hour less since the epoch.
    expect(shown(runs(t("2027-03-14"), t("2027-03-15"))).slice(0, 1)).toEqual(["03-14 07:30"]);
    expect(t("2027-03-14T07:30")).toBe(8 * 1440 + 450 - 60);
  });

  test("an hour's window across the changes lasts as long as it really does", () => {
    const nights = spec(none.map(() => [w("1:00", "4:00")]));
    const clock = new WorkingClock("nights", calendarRuns(nights, site, start));
    const lasts = (date: string, next: string) => clock.reading(time.minuteOf(next)!) - clock.reading(time.minuteOf(date)!);
    expect(lasts("2027-03-13", "2027-03-14")).toBe(180);
    expect(lasts("2027-03-14", "2027-03-15")).toBe(120);
    expect(lasts("2027-11-07", "2027-11-08")).toBe(240);
    const inGap = spec(none.map(() => [w("2:00", "3:00")]));
    const runs = calendarRuns(inGap, site, start);
    expect(runs(t("2027-03-14"), t("2027-03-15"))).toEqual([]);
    expect(runs(t("2027-11-07"), t("2027-11-08"))).toHaveLength(2);
  });

  test("windows that meet in the repeated hour neither overlap nor leave a gap", () => {
    const shifts = spec(none.map(() => [w("0:00", "1:30"), w("1:30", "5:00")]));
    const runs = calendarRuns(shifts, site, start)(t("2027-11-07"), t("2027-11-08"));
    expect(runs).toEqual([t("2027-11-07"), t("2027-11-07") + 6 * 60]);
  });

  test("what a date says goes before holidays, and these before the week", () => {
    const own = spec(
      weekends.map(() => [w("8:00", "16:00")]),
      {
        off: ["2027-06-12", "2027-06-15"],
        extra: new Map([
          ["2027-06-15", [w("10:00", "11:00")]],
          ["2027-06-16", []],
          ["2027-07-05", [w("9:00", "10:00")]],
        ]),
        holidays: "us-federal",
      },
    );
    const runs = calendarRuns(own, site, start);
    const day = (date: string) => shown(runs(t(date), time.startOf((time.dayOfDate(date) as number) + 1)));
    expect(day("2027-06-11")).toEqual(["06-11 08:00", "06-11 16:00"]);
    expect(day("2027-06-12")).toEqual([]);
    expect(day("2027-06-15")).toEqual(["06-15 10:00", "06-15 11:00"]);
    expect(day("2027-06-16")).toEqual([]);
    expect(day("2027-06-18")).toEqual([]);
    expect(day("2027-07-05")).toEqual(["07-05 09:00", "07-05 10:00"]);
    expect(day("2027-11-25")).toEqual([]);
  });

  test("a window may pass midnight", () => {
    const night = spec(none.map((_, day) => (day === 5 ? [w("22:00", "26:00")] : [])));
    const runs = calendarRuns(night, site, start);
    expect(shown(runs(t("2027-03-12"), t("2027-03-15")))).toEqual(["03-12 22:00", "03-13 02:00"]);
    expect(runs(t("2027-03-13"), t("2027-03-13T01:00"))).toEqual([t("2027-03-13"), t("2027-03-13T01:00")]);
  });

  test("in daylight only, is cut at sunrise and sunset, inwards to quarter hours", () => {
    const long = spec(
      none.map(() => [w("5:00", "21:00")]),
      { daylightOnly: true },
    );
    const runs = calendarRuns(long, site, start);
    const december = time.dayOfDate("2027-12-20") as number;
    const sun = sunDays(site, start)(december);
    expect([sun.rise, sun.set].map((at) => time.momentOf(at as number).slice(5))).toEqual(["12-20T07:18", "12-20T16:29"]);
    expect(shown(runs(time.startOf(december), time.startOf(december + 1)))).toEqual(["12-20 07:30", "12-20 16:15"]);
  });

  test("says the same whatever stretch is asked for", () => {
    const windows = fc.array(
      fc
        .tuple(fc.integer({ min: 0, max: 1500 }), fc.integer({ min: 1, max: 600 }))
        .map(([from_min, lasts]) => ({ from_min, to_min: from_min + lasts })),
      { maxLength: 3 },
    );
    const week = fc.array(windows, { minLength: 7, maxLength: 7 });
    const at = fc.integer({ min: -30_000, max: 600_000 });
    fc.assert(
      fc.property(
        week,
        fc.boolean(),
        at,
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 1, max: 20_000 }),
        (days, daylightOnly, a, b, c) => {
          const runs = calendarRuns(spec(days, { daylightOnly, holidays: "us-federal" }), site, start);
          const wide = runs(a, a + b + c);
          expect(cut(wide, a, a + b)).toEqual(runs(a, a + b));
          expect(cut(wide, a + b, a + b + c)).toEqual(runs(a + b, a + b + c));
          for (let i = 1; i < wide.length; i += 1) expect(wide[i]).toBeGreaterThan(wide[i - 1] as number);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("holiday tables", () => {
  test("have the federal holidays as the U.S. Office of Personnel Management lists them (from memory)", () => {
    const kept: Record<string, readonly string[]> = {
      2025: ["01-01", "01-20", "02-17", "05-26", "06-19", "07-04", "09-01", "10-13", "11-11", "11-27", "12-25"],
      2026: ["01-01", "01-19", "02-16", "05-25", "06-19", "07-03", "09-07", "10-12", "11-11", "11-26", "12-25"],
      2027: ["01-01", "01-18", "02-15", "05-31", "06-18", "07-05", "09-06", "10-11", "11-11", "11-25", "12-24", "12-31"],
    };
    for (const [year, dates] of Object.entries(kept)) {
      const weekdays: string[] = [];
      for (let date = Date.UTC(Number(year), 0, 1); new Date(date).getUTCFullYear() === Number(year); date += 86_400_000) {
        const text = new Date(date).toISOString().slice(0, 10);
        const weekday = new Date(date).getUTCDay();
        if (weekday !== 0 && weekday !== 6 && holidayName("us-federal", text) !== null) weekdays.push(text.slice(5));
      }
      expect(weekdays, year).toEqual(dates);
    }
    expect(holidayName("us-federal", "2027-06-18")).toBe("Juneteenth");
    expect(holidayName("us-federal", "2027-06-17")).toBeNull();
  });

  test("know Easter elsewhere: 28 March 2027 by the Gregorian computus", () => {
    expect(holidayName("de", "2027-03-29")).toBe("Easter Monday");
    expect(holidayName("nz", "2027-03-26")).toBe("Good Friday");
    expect(holidayName("gb-england", "2027-12-27")).toBe("Christmas Day");
  });

  test("are refused by name when there is no such table, and noticed where their years run out", () => {
    const where = { list: "calendars", id: "weekends", key: "holidays" };
    expect(checkHolidays("us-federal", 2027, where)).toEqual([]);
    expect(checkHolidays("us", 2027, where)).toEqual([
      { code: "clock.unknown-holidays", severity: "stop", where, detail: { table: "us", known: holidayTables } },
    ]);
    expect(checkHolidays("de", 2046, where)[0]).toMatchObject({
      code: "clock.holidays-end",
      severity: "look",
      detail: { from: 2024, to: 2045 },
    });
    expect(checkHolidays("de", 2023, where)).toHaveLength(1);
  });
});
