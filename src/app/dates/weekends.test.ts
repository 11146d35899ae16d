import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { weekends } from "./weekends";

const { build, plan } = porch();
const list = weekends(build, plan, 9 * 1440);

test("one entry a run of days, in order, none without work", () => {
  expect(list.map(({ title }) => title)).toEqual([
    "Sat 5 to Sun 6 Jun",
    "Sat 12 to Sun 13 Jun",
    "Wed 16 Jun",
    "Sat 19 to Sun 20 Jun",
    "Sat 26 Jun",
    "Sat 3 to Sun 4 Jul",
    "Sat 10 to Sun 11 Jul",
  ]);
});

test("every step and everything that comes stands somewhere", () => {
  const jobs = new Set(list.flatMap(({ days }) => days.flatMap((day) => day.jobs.map(({ step }) => step))));
  expect(jobs.size).toBe(build.steps.length);
  expect(list.flatMap(({ coming }) => coming.map(({ id }) => id))).toEqual(["bars", "inspector", "pump"]);
});

test("what comes before a weekend stands with it", () => {
  expect(list[1]!.coming.map(({ name, when }) => `${name}, ${when}`)).toEqual(["Bars, Fri 11 Jun"]);
});

test("a day says its jobs with times, hands and closings, and where hands are short", () => {
  const pour = list[4]!.days[0]!;
  expect(pour.short).toBe(true);
  expect(pour.people).toBe("5 wanted, 2 there");
  expect(pour.jobs[0]).toMatchObject({ name: "Pour piers and slab", time: "8:00 to 13:00", who: "five people", closes: "closes 13:00" });
  expect(pour.chances[0]).toMatchObject({ piece: "Slab", at: "13:00", before: ["Tie pier cages"] });
});

test("work that goes on over night is told on both days", () => {
  const [saturday, sunday] = list[6]!.days;
  expect(saturday!.jobs[0]!.time).toBe("8:00 to the next day");
  expect(sunday!.jobs[0]!.time).toBe("goes on to 15:00");
});

test("weekends before today are past", () => {
  expect(list.map(({ past }) => past)).toEqual([true, true, false, false, false, false, false]);
});
