import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return path.endsWith(".ts") && !path.endsWith(".test.ts") ? [path] : [];
  });
}

const withoutComments = (text: string) => text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|[^:])\/\/.*$/gm, "$1");

const forbidden: readonly (readonly [RegExp, string])[] = [
  [/\bMath\.random\b/, "an unseeded random number"],
  [/\bDate\.now\b/, "the wall clock"],
  [/\bnew Date\(\s*\)/, "the wall clock"],
  [/\bnew TZDate\(\s*\)/, "the wall clock"],
  [/\bperformance\./, "the wall clock"],
  [/\bsetTimeout\b|\bsetInterval\b|\bqueueMicrotask\b/, "a timer"],
  [/\bIntl\.|\.toLocale\w*\(|\.localeCompare\(/, "the reader's locale"],
  [
    /\bprocess\.|\bglobalThis\.|\bwindow\.(?:add|document|get|inner|location|match|navigator|open|request)|\bdocument\.(?:get|query|create|body)/,
    "its surroundings",
  ],
  [/\bconsole\./, "the console"],
];

function faults(text: string): string[] {
  const code = withoutComments(text);
  return forbidden.filter(([pattern]) => pattern.test(code)).map(([, what]) => what);
}

for (const folder of ["src/core", "src/draw", "src/words"]) {
  test(`${folder} reads no wall clock, timer, locale, console or unseeded random number`, () => {
    const found = sources(folder).flatMap((path) => faults(readFileSync(path, "utf8")).map((what) => `${path} uses ${what}`));
    expect(found).toEqual([]);
  });
}

test("the rule sees what it forbids and nothing in comments", () => {
  expect(faults("const a = Math.random();")).toEqual(["an unseeded random number"]);
  expect(faults("const a = new Date( );")).toEqual(["the wall clock"]);
  expect(faults("a.toLocaleString()")).toEqual(["the reader's locale"]);
  expect(faults("// Math.random() is not used\n/* Date.now() */")).toEqual([]);
  expect(faults("new Date(0)")).toEqual([]);
});
