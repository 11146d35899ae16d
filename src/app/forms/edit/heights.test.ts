import { expect, test } from "vitest";
import { heightBetween, sortedHeights } from "./heights";

test("heights stand from the foot up, as they were written", () => {
  expect(sortedHeights(["2 ft", "4 in", { is: "30 cm", from: "drawing" }])).toEqual(["4 in", { is: "30 cm", from: "drawing" }, "2 ft"]);
});

test("one more goes where a full head presses most on one gap", () => {
  // Gaps of 100, 300, 300 and 1100 mm under a head of 1800 mm: 100·1750, 300·1550, 300·1250, 1100·550.
  expect(heightBetween([100, 400, 700], 1800, "metric")).toBe(1250);
  // Even gaps: the lowest one.
  expect(heightBetween([400, 800, 1200], 1600, "metric")).toBe(200);
  expect(heightBetween([], 25.4 * 8, "us")).toBeCloseTo(25.4 * 4, 9);
});
