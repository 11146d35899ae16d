import { expect, test } from "vitest";
import { sourceOf, withSource } from "./source";

test("a source goes beside a figure and comes off it again", () => {
  expect(withSource("12 in", "drawing")).toEqual({ is: "12 in", from: "drawing" });
  expect(withSource({ is: "12 in", from: "own guess" }, "drawing")).toEqual({ is: "12 in", from: "drawing" });
  expect(withSource({ is: "12 in", from: "drawing" }, " ")).toBe("12 in");
  expect(withSource({ is: "8 h", on: "weekends", from: "drawing" }, "")).toEqual({ is: "8 h", on: "weekends" });
  expect(withSource({ low: "1 h", likely: "2 h", high: "3 h" }, "own guess")).toEqual({
    low: "1 h",
    likely: "2 h",
    high: "3 h",
    from: "own guess",
  });
  expect(withSource(undefined, "drawing")).toBeUndefined();
  expect(withSource("12 in", "")).toBe("12 in");
});

test("the source is told where one is written", () => {
  expect(sourceOf({ is: "12 in", from: "drawing" })).toBe("drawing");
  expect(sourceOf("12 in")).toBe("");
  expect(sourceOf({ from: 3 })).toBe("3");
  expect(sourceOf({ from: {} })).toBe("");
});
