import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import type { Build } from "../../core/build";
import { listed, nextWords } from "./next";

const { build, plan } = porch();
const kept = (finish: string): Build => ({ ...build, kept: { engine: "", rung: 1, steps: new Map(), finish } });

test("what is next, who, what it needs, and the finish", () => {
  expect(nextWords(build, plan, 5 * 1440)).toBe(
    "Next: Tie pier cages, Sat 12 Jun, 8:00, two people. Needs tying pliers and tie wire. Finish Sun 11 Jul 2027.",
  );
});

test("before the first day the first step is next", () => {
  expect(nextWords(build, plan, -100 * 1440)).toMatch(/^Next: Dig and form footings, Sat 5 Jun, 8:00, two people\./);
});

test.each([
  ["2027-07-11T15:00", "as in the kept plan"],
  ["2027-07-04T15:00", "a week later than the kept plan"],
  ["2027-07-12T15:00", "a day earlier than the kept plan"],
  ["2027-06-27T15:00", "2 weeks later than the kept plan"],
])("the finish against a kept plan that ends %s", (finish, said) => {
  expect(nextWords(kept(finish), plan, 5 * 1440)).toContain(said);
});

test("after the last step", () => {
  expect(nextWords(build, plan, 400 * 1440)).toBe("All is done by the plan. Finish Sun 11 Jul 2027.");
});

test("without a plan it says so", () => {
  expect(nextWords(build, { ...plan, status: "no-order", steps: [] }, 0)).toMatch(/cannot be built as written/);
});

test("lists read as one says them", () => {
  expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(listed)).toEqual(["", "a", "a and b", "a, b and c"]);
});
