import { TZDate } from "@date-fns/tz";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkSkipped, checkZone } from "./check";
import { dayNumber, readDate, readMoment } from "./dates";
import { siteTime } from "./site";
import { zone } from "./zone";

const here = { list: "site" };

describe("the site's wall clock", () => {
  test("is skipped for an hour in spring: what falls into the gap is the first minute after it", () => {
    // Changes of 2027 by the zone database: New York 14 March 2:00 and 7 November 2:00; Berlin 28 March 2:00 and 31 October 3:00;
    // Auckland (southern) forward 26 September 2:00, back 4 April 3:00; Lord Howe by half an hour on 3 October 2:00.
    for (const [name, date, gap, after, length] of [
      ["America/New_York", "2027-03-14", "02:30", "03:00", 60],
      ["Europe/Berlin", "2027-03-28", "02:30", "03:00", 60],
      ["Pacific/Auckland", "2027-09-26", "02:30", "03:00", 60],
      ["Australia/Lord_Howe", "2027-10-03", "02:15", "02:30", 30],
    ] as const) {
      const time = siteTime(name, date);
      expect(time.minuteOf(`${date}T${gap}`)).toBe(time.minuteOf(`${date}T${after}`));
      expect(time.minuteOf(`${date}T02:00`)).toBe(120);
      expect(time.minuteOf(`${date}T01:59`)).toBe(119);
      expect(time.momentOf(120)).toBe(`${date}T${after}`);
      expect(time.startOf(1)).toBe(1440 - length);
      expect(checkSkipped(`${date}T${gap}`, name, here)).toEqual([
        { code: "clock.time-skipped", severity: "note", where: here, detail: { moment: `${date}T${gap}`, means: `${date}T${after}` } },
      ]);
      expect(checkSkipped(`${date}T${after}`, name, here)).toEqual([]);
    }
  });

  test("shows an hour twice in autumn: the first of the two is meant", () => {
    for (const [name, date, twice, minute] of [
      ["America/New_York", "2027-11-07", "01:30", 90],
      ["Europe/Berlin", "2027-10-31", "02:30", 150],
      ["Pacific/Auckland", "2027-04-04", "02:30", 150],
    ] as const) {
      const time = siteTime(name, date);
      expect(time.minuteOf(`${date}T${twice}`)).toBe(minute);
      expect(time.momentOf(minute)).toBe(`${date}T${twice}`);
      expect(time.momentOf(minute + 60)).toBe(`${date}T${twice}`);
      expect(time.startOf(1)).toBe(1500);
    }
  });

  test("a build may begin on a day whose midnight is skipped", () => {
    // Chile goes forward at midnight: 5 September 2027 begins at 1:00 (zone database).
    const time = siteTime("America/Santiago", "2027-09-05");
    expect(time.momentOf(0)).toBe("2027-09-05T01:00");
    expect(time.momentOf(-1)).toBe("2027-09-04T23:59");
    expect(time.dayOf(0)).toBe(0);
    expect(time.dayOf(-1)).toBe(-1);
  });

  test("round-trips, never runs backwards, and agrees with the zone library on plain times", () => {
    const names = fc.constantFrom("America/New_York", "Europe/Berlin", "Pacific/Auckland", "America/Santiago", "Asia/Kolkata", "UTC");
    fc.assert(
      fc.property(
        names,
        fc.integer({ min: -400, max: 3000 }),
        fc.integer({ min: 0, max: 1439 }),
        fc.integer({ min: 0, max: 200 }),
        (name, day, minute, more) => {
          const time = siteTime(name, "2027-03-06");
          const t = time.at(day, minute);
          expect(time.at(day, minute + more)).toBeGreaterThanOrEqual(t);
          const skipped = zone(name).skips((time.first + day) * 1440 + minute);
          const shown = time.local(t);
          if (!skipped) expect([shown.day, shown.minute]).toEqual([day, minute]);
          expect(time.minuteOf(time.momentOf(t))).toBe(t);
          expect(shown.weekday).toBe(new Date(`${shown.date}T00:00Z`).getUTCDay());
          const noon = new TZDate(
            Number(shown.date.slice(0, 4)),
            Number(shown.date.slice(5, 7)) - 1,
            Number(shown.date.slice(8)),
            12,
            0,
            name,
          );
          expect(time.at(shown.day, 720)).toBe(noon.getTime() / 60_000 - time.epoch_utc_min);
        },
      ),
    );
  });
});

describe("dates as written", () => {
  test("are read only when they exist", () => {
    expect(readDate("2028-02-29")).toBe(dayNumber(2028, 2, 29));
    expect(readMoment("2027-06-26T07:30")).toEqual({ number: dayNumber(2027, 6, 26), minute: 450 });
    for (const text of [
      "2027-02-29",
      "2027-13-01",
      "2027-00-10",
      "2027-04-31",
      "2027-4-3",
      "2027-06-26T24:00",
      "2027-06-26T07:60",
      "soon",
    ]) {
      expect(readMoment(text), text).toBeNull();
    }
  });

  test("need a zone the platform knows", () => {
    expect(checkZone("America/New_York", here)).toEqual([]);
    for (const name of ["America/Nowhere", "EST5", "+05:30", "", "new york"]) {
      expect(checkZone(name, here), name).toEqual([{ code: "clock.unknown-zone", severity: "stop", where: here, detail: { zone: name } }]);
    }
  });
});
