import { expect, test } from "vitest";
import type { Rate } from "../../core/kits";
import { perWords, rateAnswer, rateShown, shownTime } from "./rate";

const dig: Rate = { name: "dig", per: "m3", low_h: 2, likely_h: 3, high_h: 5, from: "common practice, no source" };

test("a rate is told for a quantity of the units shown", () => {
  expect([perWords(dig, "metric"), rateShown(dig, undefined, "metric")]).toEqual(["1 m³", "3 h"]);
  // A cubic yard is 0.7646 m³: 3 h come to 2 h 18 min.
  expect([perWords(dig, "us"), rateShown(dig, undefined, "us")]).toEqual(["1 yd³", "2 h 18 min"]);
});

test.each(["us", "metric"] as const)("what is typed comes back as typed, %s", (units) => {
  for (const typed of ["20 min", "1 h", "2 h 15 min", "7 h"]) {
    expect(rateShown(dig, rateAnswer(dig, typed, units), units)).toBe(typed);
  }
});

test("what is no time is left for the check to refuse", () => {
  expect(rateAnswer(dig, " soon ", "us")).toBe("soon");
  expect(rateShown(dig, "soon", "metric")).toBe("3 h");
});

test.each([
  [0.004, "0.2 min"],
  [0.25, "15 min"],
  [1, "1 h"],
  [1.5, "1 h 30 min"],
])("%d h are %s", (hours, text) => {
  expect(shownTime(hours)).toBe(text);
});
