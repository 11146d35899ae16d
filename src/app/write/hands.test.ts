import { expect, test } from "vitest";
import { handsText, writtenHands } from "./hands";

test.each([
  ["2", 2],
  ["0", 0],
  [
    "1 hose, 4 hands",
    [
      { role: "hose", number: 1 },
      { role: "hands", number: 4 },
    ],
  ],
])("%s is written and shown again as typed", (typed, written) => {
  expect(writtenHands(typed)).toEqual({ value: written });
  expect(handsText(written)).toBe(typed);
});

test("nothing typed takes the figure out; what is no number of hands is said to be none", () => {
  expect(writtenHands(" ")).toEqual({ value: undefined });
  expect(writtenHands("many")).toBe("“many” is not a number of hands; write 2, or 1 hose, 4 hands.");
  expect(writtenHands("1 hose, some")).toBe("“1 hose, some” is not a number of hands; write 2, or 1 hose, 4 hands.");
});
