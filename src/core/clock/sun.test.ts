import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cut } from "./runs";
import { type SiteSpec, siteTime } from "./site";
import { daylight, inDaylight, sunDays } from "./sun";

/**
 * U.S. Naval Observatory, Astronomical Applications Department, "Rise and Set for the Sun": Fredonia, AZ (N36 57, W112 31), 2023, zone 7 h west of
 * Greenwich, first and 15th of each month. Printed to the minute.
 */
const fredonia = `
01-01 0743 1724 | 02-01 0733 1755 | 03-01 0701 1824 | 04-01 0616 1852 | 05-01 0536 1919 | 06-01 0512 1944
07-01 0514 1954 | 08-01 0535 1937 | 09-01 0601 1859 | 10-01 0625 1814 | 11-01 0654 1733 | 12-01 0724 1714
01-15 0742 1737 | 02-15 0719 1810 | 03-15 0641 1837 | 04-15 0556 1905 | 05-15 0522 1931 | 06-15 0510 1951
07-15 0522 1949 | 08-15 0547 1922 | 09-15 0612 1838 | 10-15 0638 1754 | 11-15 0708 1721 | 12-15 0736 1715`;

/** The same, 2020, Auckland (S36 50, E174 48), universal date and time. */
const auckland = `
01-05 1709 0744 | 02-15 1752 0719 | 03-25 1829 0625 | 05-05 1904 0531 | 06-25 1934 0513 | 08-05 1914 0539
09-15 1819 0612 | 10-25 1722 0647 | 12-25 1701 0741`;

/**
 * The same, 2020, Longyearbyen (N78 13, E15 38), universal date and time, every row of the list that has both. The row of 25 August (0016 2126) is left
 * out: by the sun's declination that night its figures are those of the 26th.
 */
const longyearbyen = `
02-25 0811 1413 | 03-05 0648 1533 | 03-15 0527 1649 | 03-25 0409 1802 | 04-05 0235 1932 | 04-15 0038 2133
09-05 0219 1926 | 09-15 0340 1800 | 09-25 0453 1642 | 10-05 0606 1523 | 10-15 0729 1354 | 10-25 0950 1131`;

function rows(table: string) {
  return table
    .trim()
    .split(/[|\n]/)
    .map((row) => row.trim().split(" ") as [string, string, string]);
}

/** Largest difference in minutes; the sun is asked for the local date on which the published instant falls. */
function furthest(table: string, year: number, site: SiteSpec, east_h: number): number {
  const start = `${year}-01-01`;
  const time = siteTime(site.zone, start);
  const apart = rows(table).flatMap(([date, ...published]) =>
    published.map((text, i) => {
      const utc_min = Date.parse(`${year}-${date}T${text.slice(0, 2)}:${text.slice(2)}Z`) / 60_000 - east_h * 60;
      const t = utc_min - time.epoch_utc_min;
      const sun = sunDays(site, start)(time.dayOf(t));
      expect(sun.up).toBe("part");
      return Math.abs(((i === 0 ? sun.rise : sun.set) as number) - t);
    }),
  );
  return Math.max(...apart);
}

describe("sunrise and sunset", () => {
  test("are within a minute of the Naval Observatory's table for Fredonia, Arizona", () => {
    expect(rows(fredonia)).toHaveLength(24);
    expect(furthest(fredonia, 2023, { zone: "America/Phoenix", latitude: 36.95, longitude: -112.5167 }, -7)).toBeLessThanOrEqual(1);
  });

  test("south of the equator and near the date line, on the local date", () => {
    expect(rows(auckland)).toHaveLength(9);
    expect(furthest(auckland, 2020, { zone: "Pacific/Auckland", latitude: -36.8333, longitude: 174.8 }, 0)).toBeLessThanOrEqual(1);
  });

  test("north of the Arctic circle, on days that have both", () => {
    expect(rows(longyearbyen)).toHaveLength(12);
    expect(furthest(longyearbyen, 2020, { zone: "Arctic/Longyearbyen", latitude: 78.2167, longitude: 15.6333 }, 0)).toBeLessThanOrEqual(1);
  });

  test("are missing in the polar night and the polar day, as the same table says", () => {
    const site = { zone: "Arctic/Longyearbyen", latitude: 78.2167, longitude: 15.6333 };
    const time = siteTime(site.zone, "2020-01-01");
    const up = (date: string) => sunDays(site, "2020-01-01")(time.dayOfDate(date) as number);
    for (const date of ["2020-01-05", "2020-02-05", "2020-11-05", "2020-12-25"])
      expect(up(date)).toEqual({ rise: null, set: null, up: "not-at-all" });
    for (const date of ["2020-04-25", "2020-06-15", "2020-08-15"]) expect(up(date)).toEqual({ rise: null, set: null, up: "all-day" });
    const light = daylight(site, "2020-01-01");
    const [june, july] = ["2020-06-01", "2020-07-01"].map((date) => time.minuteOf(date) as number) as [number, number];
    expect(light(june, july)).toEqual([june, july]);
    const [december, end] = ["2020-12-01", "2020-12-31"].map((date) => time.minuteOf(date) as number) as [number, number];
    expect(light(december, end)).toEqual([]);
  });

  test("light for work is cut inwards to quarter hours on the wall, also where the zone is three quarters of an hour off", () => {
    for (const zone of ["America/New_York", "Asia/Kathmandu"]) {
      const site = { zone, latitude: 41.4, longitude: zone.startsWith("Asia") ? 85.3 : -73.9 };
      const time = siteTime(site.zone, "2027-10-01");
      const light = daylight(site, "2027-10-01")(0, 60 * 1440);
      expect(light).toHaveLength(120);
      light.forEach((t, i) => {
        const sun = sunDays(site, "2027-10-01")(i >> 1);
        const late = i % 2 === 0 ? t - (sun.rise as number) : (sun.set as number) - t;
        expect(time.local(t).minute % 15).toBe(0);
        expect(late).toBeGreaterThanOrEqual(0);
        expect(late).toBeLessThan(15);
      });
    }
  });

  test("light is the same whatever stretch is asked for, at any latitude and however far the wall clock is from the sun", () => {
    const zones = ["America/New_York", "Pacific/Apia", "Asia/Urumqi", "UTC"];
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: -89, max: 89 }),
        fc.integer({ min: -180, max: 180 }),
        fc.integer({ min: -600_000, max: 600_000 }),
        fc.integer({ min: 1, max: 3_000 }),
        (zone, latitude, longitude, from, lasts) => {
          const light = daylight({ zone, latitude, longitude }, "2012-01-01");
          const wide = light(from - 4_000, from + lasts + 4_000);
          expect(light(from, from + lasts)).toEqual(cut(wide, from, from + lasts));
          const windows = Array.from({ length: Math.floor(lasts / 300) }, (_, i) => [from + 300 * i, from + 300 * i + 240]);
          const lit = inDaylight(() => windows.flat(), { zone, latitude, longitude }, "2012-01-01")(from, from + lasts);
          expect(lit).toEqual(windows.flatMap(([a, b]) => [...cut(wide, a as number, b as number)]));
        },
      ),
      { numRuns: 300 },
    );
  });
});
