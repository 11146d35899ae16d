import { expect, test } from "vitest";
import { lumberOf, lumberWith } from "./lumber";

test("short and in full are one thing", () => {
  expect(lumberOf("2x6")).toEqual({ size: "2x6" });
  expect(lumberOf({ size: "2x6", flat: true })).toEqual({ size: "2x6", flat: true });
});

test("what says more than its size is written in full, what does not is written short", () => {
  expect(lumberWith("2x4", "pieces", 2)).toEqual({ size: "2x4", pieces: 2 });
  expect(lumberWith({ size: "2x4", pieces: 2 }, "pieces", undefined)).toBe("2x4");
  expect(lumberWith({ size: "2x4", from: "stock" }, "size", "2x6")).toEqual({ size: "2x6", from: "stock" });
});
