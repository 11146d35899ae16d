import { expect, test } from "vitest";
import type { ElapsedMinute } from "../../core/base";
import { type Aim, readDocument } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Aimed, Measured } from "../../core/plan";
import { faultsOf } from "../lint.testing";
import { wall } from "../wall.testing";
import { aimNames, aimProgress, aimSentences } from "./aims";

const build = readDocument(wall()).build!;
const time = siteTime(build.site.zone, build.start);
const at = (moment: string) => time.minuteOf(moment)!;
const before: Measured = {
  finish: at("2027-03-20T12:00"),
  siteDays: 14,
  visits: 5,
  poursOutside: 2,
  pours: 4,
  fullest_min: 1200,
  idleWeeks: 3,
  cost: 0,
};
const aim = (kind: Aim["for"], more: Partial<Aim> = {}): Aim => ({ for: kind, months: [5], coldest_C: null, weeksLater: 0, ...more });
const aimed = (after: Partial<Measured> | null, from: Record<string, string> = {}): Aimed => ({
  tried: 60,
  done: true,
  before,
  after: after === null ? before : { ...before, ...after },
  finishBy: 0 as ElapsedMinute,
  served: after === null ? null : { engine: "x", rung: 60, steps: [], from },
});
const said = (...args: [Aimed, Aim]) => {
  const lines = aimSentences(...args, build);
  for (const line of lines) expect(faultsOf(line, build), line).toEqual([]);
  return lines;
};

test("what was gained, and that the finish stays or moves", () => {
  expect(said(aimed({ siteDays: 12 }), aim("site-days"))).toEqual(["Twelve site days instead of 14; the finish stays Sat 20 Mar, 12:00."]);
  expect(said(aimed({ visits: 4, finish: at("2027-03-27T12:00") }), aim("visits"))).toEqual([
    "Four visits instead of five; the finish is Sat 27 Mar, 12:00 instead of Sat 20 Mar, 12:00.",
  ]);
  expect(said(aimed({ poursOutside: 0 }), aim("pours"))[0]).toBe(
    "All four pours fall on days as wanted, instead of two not; the finish stays Sat 20 Mar, 12:00.",
  );
  expect(said(aimed({ poursOutside: 1 }), aim("pours"))[0]).toBe(
    "One pour of four does not fall on a day as wanted, instead of two; the finish stays Sat 20 Mar, 12:00.",
  );
  expect(said(aimed({ fullest_min: 960, idleWeeks: 1 }), aim("weekends"))[0]).toBe(
    "The fullest week holds 16 h of work instead of 20 h, with one week without work instead of three; the finish stays Sat 20 Mar, 12:00.",
  );
  expect(said(aimed({}), aim("weekends"))[0]).toContain("as before, and the others are evener");
});

test("which steps wait for it, the first three by name", () => {
  const day = "2027-03-13T00:00";
  expect(said(aimed({ siteDays: 12 }, { tie: day }), aim("site-days"))[1]).toBe(
    "One step waits on purpose for it: “Tie the bars” until Sat 13 Mar.",
  );
  expect(said(aimed({ siteDays: 12 }, { tie: day, form: day, pour: day, strip: day }), aim("site-days"))[1]).toBe(
    "Four steps wait on purpose for it: “Tie the bars” until Sat 13 Mar; “Set the north form” until Sat 13 Mar; “Pour the wall” until Sat 13 Mar; and one more.",
  );
});

test("where nothing is better, where there is nothing to go by, and where there are no dates", () => {
  expect(said(aimed(null), aim("site-days"))).toEqual(["Nothing better was found: 14 site days as it stands."]);
  expect(said(aimed(null), aim("visits"))).toEqual(["Nothing better was found: five visits as it stands."]);
  expect(said(aimed(null), aim("weekends"))).toEqual(["Nothing better was found: the fullest week holds 20 h of work as it stands."]);
  expect(said(aimed(null), aim("pours"))).toEqual(["Nothing better was found: two pours of four do not fall on a day as wanted."]);
  expect(said(aimed(null), aim("pours", { months: [] }))).toEqual(["Say in which months, or how warm a day has to be, to pour."]);
  expect(said({ ...aimed(null), before: null, after: null }, aim("visits"))).toEqual([
    "The build has no dates yet, so there is nothing to choose among.",
  ]);
  expect(aimProgress(aimed(null))).toBe("60 schedules tried");
  expect(Object.values(aimNames).every((name) => name !== "")).toBe(true);
});
