import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { siteTime } from "../../core/clock";
import { sheet } from "../../draw";
import { dayLater, moveFlag, standsAt } from "./flag-move";

const { build, plan } = porch();
const time = siteTime(build.site.zone, build.start);
const { flags } = sheet({ build, plan, scale: "weekends" });
const flag = (id: string) => flags.find((one) => one.id === id)!;

test("a delivery moves by its promised date", () => {
  const move = moveFlag(build, time, flag("bars"), "2027-06-14");
  expect(move?.edits).toEqual([{ path: ["deliveries", "id=bars", "promised"], value: "2027-06-14" }]);
  expect(move?.words).toBe("move Bars to Mon 14 Jun");
});

test("a booking keeps its time of day", () => {
  expect(moveFlag(build, time, flag("pump"), "2027-07-03")?.edits).toEqual([
    { path: ["bookings", "id=pump", "date"], value: "2027-07-03T08:00" },
  ]);
});

test("a text that is no date moves nothing", () => {
  expect(moveFlag(build, time, flag("bars"), "2027-06-31")).toBeNull();
  expect(moveFlag(build, time, flag("bars"), "")).toBeNull();
});

test("where a flag stands, and days later over the end of a month", () => {
  expect(standsAt(time, flag("pump"))).toEqual({ date: "2027-06-26", clock: "08:00" });
  expect(standsAt(time, flag("bars"))).toEqual({ date: "2027-06-11", clock: null });
  expect(dayLater(time, "2027-06-30", 1)).toBe("2027-07-01");
});
