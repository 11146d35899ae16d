import { afterEach, expect, test } from "vitest";
import { plainStyle, saidDate, saidDay, saidTime, saidWeekdayDate, saidYearDate, sayDates } from "./said";

afterEach(() => sayDates(plainStyle));

test("day before month and 24 hours, unless something else is set", () => {
  expect([saidDay(6, 19), saidDate(19, 6), saidWeekdayDate(6, 19, 6), saidYearDate(19, 6, "2027")]).toEqual([
    "Sat 19",
    "19 Jun",
    "Sat 19 Jun",
    "19 Jun 2027",
  ]);
  expect([0, 570, 930, 1440].map(saidTime)).toEqual(["0:00", "9:30", "15:30", "24:00"]);
});

test("month before day and twice twelve hours", () => {
  sayDates({ order: "month day", hours: 12 });
  expect([saidDate(19, 6), saidWeekdayDate(6, 19, 6), saidYearDate(19, 6, "2027")]).toEqual(["Jun 19", "Sat Jun 19", "Jun 19, 2027"]);
  expect([0, 570, 720, 930, 1439, 1440].map(saidTime)).toEqual(["12:00 am", "9:30 am", "12:00 pm", "3:30 pm", "11:59 pm", "12:00 am"]);
});
