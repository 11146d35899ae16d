import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { daySheet, plan, workDays } from "../../core/plan";
import { jobRows } from "./rows";

test("of what is ticked and went on overnight no day tells a midnight", () => {
  const document = (done: object) => buildOf({ steps: [{ id: "tie", name: "Tie", work: "12 h", ...done }] });
  const planned = document({});
  const [first, second] = workDays(plan(planned)).map(({ date }) => date);
  const build = document({ done: { start: `${first}T16:30`, finish: `${second}T13:00` } });
  const made = plan(build);
  const times = [first!, second!].map((date) => jobRows(build, made, daySheet(build, made, date)!).map(({ time }) => time));
  expect(times).toEqual([["from 16:30, not finished this day"], ["until 13:00, goes on"]]);
});
