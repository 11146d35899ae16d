import { expect, test } from "vitest";
import { stepsOfZoom } from "./zoom";

test.each([
  [1, 0, 0],
  [1.1, 0, 0],
  [1.2, 0, 1],
  [1.7, 0, 2],
  [0.8, 0, -1],
  [0.1, 0, -3],
  [0.1, -3, 0],
  [50, 0, 6],
  [50, 5, 1],
])("%d times as wide, at %d: %d steps", (times, zoom, steps) => {
  expect(stepsOfZoom(times, zoom)).toBe(steps);
});
