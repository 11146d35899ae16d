import { expect, test } from "vitest";
import { textWidth, wrap } from "./measure";

// Measured in Chromium on Source Sans 3 at 1000 px: "Sat 19" is S a t space 1 9 = 534 + 504 + 338 + 200 + 497 + 497.
test("a line is as wide as its letters", () => {
  expect(textWidth("Sat 19", 1000)).toBe(2570);
  expect(textWidth("Sat 19", 14)).toBeCloseTo(35.98, 5);
  expect(textWidth("Sat 19", 14, 600)).toBeGreaterThan(textWidth("Sat 19", 14));
});

test("a letter that is not in the table is taken for a wide one", () => {
  expect(textWidth("ж", 1000)).toBeGreaterThan(textWidth("A", 1000));
});

test("lines break at spaces and stay within the width", () => {
  const lines = wrap("Inside of the east column form", 90, 14);
  expect(lines.join(" ")).toBe("Inside of the east column form");
  expect(lines.length).toBe(3);
  for (const line of lines) expect(textWidth(line, 14)).toBeLessThanOrEqual(90);
});

test("a word too long for the width is not cut", () => {
  expect(wrap("formwork superplasticizer now", 40, 14)).toEqual(["formwork", "superplasticizer", "now"]);
});

test("a line is as wide when it is asked for again, and after more lines than are kept", () => {
  const before = textWidth("Set batter boards", 14);
  expect(textWidth("Set batter boards", 28)).toBeCloseTo(2 * before, 9);
  for (let line = 0; line < 20_010; line += 1) textWidth(`line ${line}`, 14);
  expect(textWidth("Set batter boards", 14)).toBe(before);
});
