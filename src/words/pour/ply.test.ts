import { expect, test } from "vitest";
import { plywoodSizes } from "../../core/pour";
import { plyWords } from "./ply";

test("plywood is told in the units shown, and in metric with the inches it is sold by", () => {
  expect(plyWords("3/4", "us")).toBe("3/4 in");
  expect(plyWords("3/4", "metric")).toBe("19 mm (3/4 in)");
  expect(plyWords("1", "metric")).toBe("25 mm (1 in)");
  expect(plyWords("1-1/8", "metric")).toBe("29 mm (1-1/8 in)");
  for (const size of plywoodSizes) expect(plyWords(size, "metric"), size).toMatch(/^\d\d mm \(.+ in\)$/);
});

test("what is no size of plywood stays as it is written", () => {
  expect(plyWords("", "us")).toBe("");
  expect(plyWords("birch, 18 mm", "metric")).toBe("birch, 18 mm");
});
