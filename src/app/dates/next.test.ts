import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { buildOf } from "../../../test/fixtures/make";
import { keep, plan } from "../../core/plan";
import { nextWords } from "./next";

const { build, plan: planned } = porch();

test("what is next, who, what it needs, and the finish", () => {
  expect(nextWords(build, planned, 5 * 1440)).toBe(
    "Next: Tie pier cages, Sat 12 Jun, 8:00, two people. Needs tying pliers and tie wire. Finish Sun 11 Jul 2027.",
  );
});

test("before the first day the first step is next", () => {
  expect(nextWords(build, planned, -100 * 1440)).toMatch(/^Next: Dig and form footings, Sat 5 Jun, 8:00, two people\./);
});

test.each([
  [4, "as in the kept plan"],
  [12, "1 site day later than the kept plan"],
  [30, "3 site days later than the kept plan"],
  [3, "a little earlier than the kept plan, on the same site day"],
])("against the kept plan the finish is told in site days, as everywhere: %s hours of work for four", (hours, said) => {
  const steps = (work: number) => [
    { id: "a", work: `${work} h` },
    { id: "b", work: "4 h", after: ["a"] },
  ];
  const first = buildOf({ steps: steps(4) });
  const later = buildOf({ steps: steps(hours), kept: JSON.parse(JSON.stringify(keep(first, plan(first)))) });
  expect(nextWords(later, plan(later), 0)).toMatch(new RegExp(`Finish \\w{3} \\d+ Mar 2027, ${said}\\.$`));
});

test("after the last step", () => {
  expect(nextWords(build, planned, 400 * 1440)).toBe("All is done by the plan. Finish Sun 11 Jul 2027.");
});

test("what is ticked is never next", () => {
  const done = { start: "2027-06-05T08:00", finish: "2027-06-05T16:00" };
  const ticked = (count: number) =>
    ({ ...build, steps: build.steps.map((step, at) => (at < count ? { ...step, done } : step)) }) as typeof build;
  const [first, second] = [nextWords(build, planned, 0), nextWords(ticked(1), planned, 0)];
  expect(first).toMatch(/^Next: Dig and form footings,/);
  expect(second).toMatch(/^Next: (?!Dig and form footings)/);
  expect(nextWords(ticked(build.steps.length), planned, 0)).toBe("All is done. Finish Sun 11 Jul 2027.");
});

test("without a plan it says so", () => {
  expect(nextWords(build, { ...planned, status: "no-order", steps: [] }, 0)).toMatch(/cannot be built as written/);
});
