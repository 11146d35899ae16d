import { expect, test } from "vitest";
import { styleOf } from "./date-style";

// Unicode CLDR, as the Intl of this machine carries it.
test.each([
  ["en-US", "month day", 12],
  ["en-GB", "day month", 24],
  ["de-DE", "day month", 24],
  ["sv-SE", "day month", 24],
  ["ja-JP", "month day", 24],
  ["C", "day month", 24],
] as const)("dates as %s says them", (language, order, hours) => {
  expect(styleOf("system", language)).toEqual({ order, hours });
});

test("what was chosen goes before the language", () => {
  expect(styleOf("day month 24", "en-US")).toEqual({ order: "day month", hours: 24 });
  expect(styleOf("month day 12", "de-DE")).toEqual({ order: "month day", hours: 12 });
});
