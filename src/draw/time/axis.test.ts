import { expect, test } from "vitest";
import { siteTime } from "../../core/clock";
import { makeAxis } from "./axis";

const time = siteTime("America/New_York", "2027-06-05");
const day = (number: number, site = true) => ({ date: time.dateOf(number), from: time.at(number, 480), to: time.at(number, 990), site });
const days = [day(0), day(1), day(7), day(8), day(11, false), day(35)];
const asked = { time, days, from: time.at(0, 480), to: time.at(36, 0), dayWidth: 60 } as const;

test("site days are wide, nights and idle days narrow strips, and a lone visit stands between two of them", () => {
  const { columns } = makeAxis({ ...asked, folding: "folded" });
  expect(columns.map(({ kind }) => kind)).toEqual([
    "site",
    "night",
    "site",
    "fold",
    "site",
    "night",
    "site",
    "fold",
    "visit",
    "fold",
    "site",
    "fold",
  ]);
  for (const { kind, x0, x1 } of columns) if (kind === "site") expect(x1 - x0).toBe(60);
});

test.each(["folded", "unfolded", "whole"] as const)("%s: later is never further left, and px lead back to the instant", (folding) => {
  const axis = makeAxis({ ...asked, folding });
  let before = -1;
  for (let t: number = time.at(0, 500); t < time.at(35, 900); t += 97) {
    const x = axis.x(t);
    expect(x).toBeGreaterThanOrEqual(before);
    expect(Math.abs(axis.t(x) - t)).toBeLessThan(1);
    before = x;
  }
  expect(axis.columns[axis.columns.length - 1]!.x1).toBe(axis.width);
});

test("columns touch, in time and on the sheet", () => {
  for (const folding of ["folded", "unfolded", "whole"] as const) {
    const { columns } = makeAxis({ ...asked, folding });
    columns.slice(1).forEach((column, index) => {
      expect(column.x0).toBeCloseTo(columns[index]!.x1, 9);
      expect(column.from).toBe(columns[index]!.to);
    });
  }
});

test("a day of the hour change has its 23 or 25 hours", () => {
  const autumn = siteTime("America/New_York", "2027-11-06");
  const axis = makeAxis({ time: autumn, days: [], from: autumn.at(0, 0), to: autumn.at(3, 0), dayWidth: 60, folding: "unfolded" });
  expect(axis.columns.map(({ from, to }) => (to - from) / 60)).toEqual([24, 25, 24]);
});

test("without a single day there is still an axis", () => {
  expect(makeAxis({ ...asked, days: [], folding: "folded" }).width).toBeGreaterThan(0);
});
