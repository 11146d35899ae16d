import { expect, test } from "vitest";
import { timeTyped } from "./time-typed";

test.each([
  ["7am", "7:00"],
  ["7:30 PM", "19:30"],
  ["12:15 am", "0:15"],
  ["12 p.m.", "12:00"],
  ["7.30", "7:30"],
  [" 07:30 ", "7:30"],
  ["13", "13:00"],
  ["13 pm", null],
  ["0:30 am", null],
  ["7:75", null],
  ["noon", null],
  ["", null],
])("%j is %j", (typed, written) => {
  expect(timeTyped(typed)).toBe(written);
});
