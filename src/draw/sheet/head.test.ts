import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { plan } from "../../core/plan";
import { sheet } from "./sheet";

const build = buildOf({
  start: "2026-11-28",
  steps: [
    { id: "dig", work: "2 h", notBefore: "2026-11-28" },
    { id: "tie", work: "2 h", notBefore: "2026-12-05" },
    { id: "pour", work: "2 h", notBefore: "2026-12-12" },
    { id: "strip", work: "2 h", notBefore: "2027-01-09" },
  ],
});
const made = plan(build);
const said = (dayWidth: number, id: RegExp): readonly string[] =>
  sheet({ build, plan: made, scale: "weekends", dayWidth })
    .parts.flatMap(({ marks }) => marks)
    .flatMap((mark) => (mark.shape === "text" && id.test(mark.id) ? [mark.text] : []));

test("every month is named over its days, shorter where the next begins soon, and a year is named once", () => {
  expect(said(130, /^month /)).toEqual(["November 2026", "December", "January 2027"]);
  expect(said(40, /^month /)).toEqual(["Nov", "December 2026", "January 2027"]);
  expect(said(24, /^month /)).toEqual(["Nov", "Dec 2026", "January 2027"]);
});

test("a day is named once: in its own line, or over its number", () => {
  expect(said(130, /^day /)).toEqual(["Sat 28", "Sat 5", "Sat 12", "Sat 9"]);
  expect(said(130, /^weekday /)).toEqual([]);
  expect(said(40, /^day /)).toEqual(["28", "5", "12", "9"]);
  expect(said(40, /^weekday /)).toEqual(["Sa", "Sa", "Sa", "Sa"]);
});
