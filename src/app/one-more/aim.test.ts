import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { chosenOf, noAim, withAim, writtenAim } from "./aim";

const document = documentOf({ steps: [{ id: "a", work: "1 h" }] });

test("an aim is written as briefly as it can be and read back as it was chosen", () => {
  const chosen = { for: "pours", months: ["9", "4"], coldest: " 45 °F ", weeksLater: "2" } as const;
  expect(writtenAim(chosen)).toEqual({ for: "pours", months: [4, 9], coldest: "45 °F", weeksLater: 2 });
  expect(writtenAim({ ...chosen, for: "visits", weeksLater: "0" })).toEqual({ for: "visits" });
  expect(chosenOf({ ...document, aim: writtenAim(chosen) })).toEqual({ ...chosen, months: ["4", "9"], coldest: "45 °F" });
  expect(chosenOf(document)).toEqual(noAim);
});

test("what cannot be read is told in a sentence", () => {
  const made = withAim(document, { ...noAim, for: "pours", coldest: "warm" });
  expect(made).toMatch(/^[^\n]+\.$/);
  const read = withAim(document, { ...noAim, for: "pours", coldest: "41 °F" });
  expect(typeof read === "string" ? null : read.aim).toEqual({ for: "pours", months: [], coldest_C: 5, weeksLater: 0 });
});
