import { afterEach, describe, expect, test } from "vitest";
import { dayNumber, readDate, readMoment, textOf, weekdayOfNumber } from "./dates";

const home = process.env.TZ;
afterEach(() => {
  process.env.TZ = home ?? "UTC";
});

describe("dates as they are written", () => {
  test("are read when they exist and refused when not", () => {
    expect(readDate("1970-01-02")).toBe(1);
    expect(readDate("2028-02-29")).toBe(dayNumber(2028, 2, 29));
    for (const text of [
      "2027-02-29",
      "2100-02-29",
      "2027-04-31",
      "2027-13-01",
      "2027-00-10",
      "2027-01-00",
      "2027-1-1",
      "1899-12-31",
      "27-01-01",
      "2027-06-26T",
    ])
      expect(readDate(text), text).toBeNull();
  });

  test("with a time of day; 24:00 is none", () => {
    expect(readMoment("2027-06-26T07:30")).toEqual({ number: dayNumber(2027, 6, 26), minute: 450 });
    for (const text of ["2027-06-26T24:00", "2027-06-26T07:60", "2027-06-31T07:30", "2027-06-26T7:30"])
      expect(readMoment(text), text).toBeNull();
  });

  // Kiritimati never had 31 December 1994, Apia never 30 December 2011; machines there must read the same dates.
  test.each(["UTC", "Pacific/Kiritimati", "Pacific/Apia", "America/New_York"])("day by day for thirty years on a machine in %s", (zone) => {
    process.env.TZ = zone;
    const first = dayNumber(1990, 1, 1);
    const shown = new Date(Date.UTC(1994, 11, 31)).toString();
    expect(zone !== "Pacific/Kiritimati" || !shown.includes("Dec 31 1994")).toBe(true);
    for (let day = first; day < first + 30 * 366; day++) {
      const text = textOf(day);
      if (readDate(text) !== day) expect.fail(`${text} read as ${readDate(text)}`);
    }
    expect(readDate("1994-12-31")).toBe(dayNumber(1994, 12, 31));
    expect(readDate("2011-12-30")).toBe(dayNumber(2011, 12, 30));
    expect(weekdayOfNumber(dayNumber(2027, 3, 6))).toBe(6);
  });
});
