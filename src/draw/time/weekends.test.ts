import { expect, test } from "vitest";
import type { ElapsedMinute } from "../../core/base";
import { siteTime } from "../../core/clock";
import { makeAxis } from "./axis";
import { weekendsIn } from "./weekends";

// 2027-03-06 is a Saturday.
const time = siteTime("America/New_York", "2027-03-06");
const day = (number: number) => {
  const from = (time.minuteOf("2027-03-06") ?? 0) + number * 1440 + 480;
  return { date: time.local(from).date, from: from as ElapsedMinute, to: (from + 480) as ElapsedMinute, site: true };
};
const axisOf = (days: readonly number[]) =>
  makeAxis({ time, days: days.map(day), from: day(days[0]!).from, to: day(days[days.length - 1]!).to, folding: "folded", dayWidth: 30 });

// Two days of 30 px with a night of 3, then a fold of 13.5: 76.5 px a weekend.
const weekends = Array.from({ length: 12 }, (_, week) => [7 * week, 7 * week + 1]).flat();

test("as many weekends as fit whole, from the first of them on", () => {
  expect(weekendsIn(axisOf(weekends), time, 10 * 76.5)).toEqual({ count: 10, what: "weekends" });
  expect(weekendsIn(axisOf(weekends), time, 10 * 76.5 - 14)).toEqual({ count: 9, what: "weekends" });
});

test("all of a short build are in sight", () => {
  expect(weekendsIn(axisOf(weekends.slice(0, 6)), time, 2000)).toEqual({ count: 3, what: "weekends" });
});

test("a Friday and a Monday stand with their weekend", () => {
  expect(weekendsIn(axisOf([-1, 0, 1, 2, 7, 8]), time, 2000).count).toBe(2);
});

test("where the work is on weekdays they are called weeks", () => {
  expect(weekendsIn(axisOf([2, 3, 4, 9, 10, 11, 16, 17]), time, 2000).what).toBe("weeks");
});
