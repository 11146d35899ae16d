import { expect, test } from "vitest";
import { lengthsTogether } from "./lengths";

const inch = 25.4;
test.each([
  ["us", [8 * inch, 68 * inch, 72 * inch], ["8 in", "68 in", "72 in"]],
  ["us", [8 * inch, 12 * inch, 68 * inch, 90.5 * inch], ["8 in", "1 ft", "5 ft 8 in", "7 ft 6 1/2 in"]],
  ["us", [11.99 * inch, 80 * inch], ["1 ft", "6 ft 8 in"]],
  ["us", [0, 80 * inch], ["0 in", "6 ft 8 in"]],
  ["metric", [200, 999.6, 2286], ["200 mm", "1000 mm", "2286 mm"]],
  ["metric", [200, 12_000], ["200 mm", "12 m"]],
] as const)("%s: lengths that stand together are in one unit", (display, all, says) => {
  expect(all.map(lengthsTogether(all, display))).toEqual(says);
});
