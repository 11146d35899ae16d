import { expect, test } from "vitest";
import type { Build } from "../core/build";
import { begunBefore } from "./begun-before";

const build = { start: "2027-04-10", site: { zone: "Europe/Berlin" } } as Build;
const done = (start: string, finish: string) => begunBefore({ done: { start, finish } as never }, build);

test.each([
  ["2027-03-20T09:00", "2027-03-20T12:00", { day: "Sat 20 Mar", time: "9:00", span: "Sat 20 Mar, 9:00 to 12:00" }],
  ["2027-03-20T09:00", "2027-03-21T12:00", { day: "Sat 20 Mar", time: "9:00", span: "Sat 20 Mar, 9:00 to Sun 21 Mar, 12:00" }],
  ["2027-03-20", "2027-03-20", { day: "Sat 20 Mar", time: "", span: "Sat 20 Mar" }],
  ["2026-12-05T08:00", "2027-04-10T09:30", { day: "Sat 5 Dec 2026", time: "8:00", span: "Sat 5 Dec 2026, 8:00 to Sat 10 Apr, 9:30" }],
])("done from %s to %s", (start, finish, says) => {
  expect(done(start, finish)).toEqual(says);
});

test("what is done from the first day on stands on the plan's clocks, as what is not done does", () => {
  expect(done("2027-04-10T08:00", "2027-04-10T12:00")).toBeNull();
  expect(begunBefore({ done: null }, build)).toBeNull();
});
