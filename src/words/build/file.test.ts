import { expect, test } from "vitest";
import { read, readDocument } from "../../core/build";
import { findingSentence } from "..";
import { wall } from "../wall.testing";

const cut = "; it may have been cut off on its way, so fetch or send it again.";
test.each([
  ['{"batterboard": 1, "name": "a', `Line 1, column 30: the file ends inside a text, before its closing quote${cut}`],
  ['{"batterboard": 1, "name": ', `Line 1, column 28: the file ends where a value should be${cut}`],
  [
    '{"batterboard": 1, "name": "a\nb"}',
    "Line 1, column 30: a text goes over the end of its line; close its quote before, or write \\n for a new line.",
  ],
  [
    '{"batterboard": 1, "name": "a\\q"}',
    "Line 1, column 30: a backslash stands alone in a text; write it twice where a backslash is meant.",
  ],
  ['{"batterboard": 1, "name": x}', "Line 1, column 28: there is “x}” where a value should be."],
  ['{"batterboard": 1}}', "Line 1, column 19: there is “}” where nothing more should be."],
])("%j is refused in one sentence that says what is wrong and where", (text, says) => {
  const { findings } = read(text);
  expect(findings.map((finding) => findingSentence(finding, null))).toEqual([says]);
});

test.each([
  ["work", "six hours", "“six hours” is not a time; write it with its unit, like 90 min or 6 h."],
  ["work", "3 d", "“3 d” of work can be read two ways; write working time in hours, like 16 h."],
  ["notBefore", "2027-06-26Tat noon", "“at noon” is not a time of day; write it like 07:30 or 14:00."],
  ["notBefore", "2027-13-26T07:30", "“2027-13-26T07:30” is not a date of the calendar; write it like 2027-06-26."],
])("what is written for %s as %j is answered with what would be right there", (key, value, says) => {
  const { findings } = readDocument(wall({ steps: [{ id: "a", name: "A", work: "6 h", [key]: value }] }));
  expect(findings.map((finding) => findingSentence(finding, null)).join("\n")).toContain(says);
});

test("days of a calendar are asked for by their word, not as working time", () => {
  const document = wall({ steps: [{ id: "a", name: "A", work: "6 h" }] });
  const bookings = [{ id: "visit", name: "visit", step: "a", lead: { is: "2 d", on: "weekends" } }];
  const { findings } = readDocument({ ...document, bookings });
  expect(findings.map((finding) => findingSentence(finding, null)).join("\n")).toContain(
    "write “days” for days of that calendar, like 2 days",
  );
});

test.each([
  ["few", "“few” stands where a number should be."],
  ["4", "“4” stands where a number without quotes should be."],
])("a number written as the text %j is answered with what is wrong about it", (number, says) => {
  const { findings } = readDocument(wall({ over: { equipment: [{ id: "mixer", number }] } }));
  const said = findings.filter(({ code, where }) => code === "build.type" && where.list === "equipment");
  expect(said.map((finding) => findingSentence(finding, null))).toEqual([expect.stringContaining(says)]);
});
