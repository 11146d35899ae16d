import { expect, test } from "vitest";
import { read } from "../../core/build";
import { findingSentence } from "..";

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
