import { expect, test } from "vitest";
import { degreesOf, figureOf, figureOrText } from "./figure";

test.each([
  ["51.5", 51.5],
  ["51,5", 51.5],
  [" -0.1 ", -0.1],
  ["−33,9", -33.9],
  [".5", 0.5],
  ["1,234.5", null],
  ["12 m", null],
  ["two", null],
  ["", null],
])("%j is read as %j", (typed, value) => {
  expect(figureOf(typed)).toBe(value);
});

test("what is no number is handed on, and an empty field writes nothing", () => {
  expect(figureOrText("two")).toBe("two");
  expect(figureOrText(" ")).toBeUndefined();
  expect(figureOrText("3")).toBe(3);
});

test("degrees have their limits, and the sentence says them", () => {
  expect(degreesOf("90", "latitude")).toBe(90);
  expect(degreesOf("90.1", "latitude")).toBe("Latitude: write a number from −90 to 90, like 51.5.");
  expect(degreesOf("-180", "longitude")).toBe(-180);
  expect(degreesOf("west", "longitude")).toBe("Longitude: write a number from −180 to 180, like −0.1.");
});
