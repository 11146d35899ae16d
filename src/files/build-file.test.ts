import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildFileName, buildFileText, openBuildFile } from "./build-file";

const text = readFileSync(new URL("../examples/garden-wall.json", import.meta.url), "utf8");

describe("opening a build file", () => {
  test("a text with a byte order mark in front opens; what is written of it opens to the same", () => {
    const opened = openBuildFile(`\uFEFF${text}`);
    expect("document" in opened && opened.newer).toBe(false);
    const written = buildFileText((opened as { document: unknown }).document);
    const again = openBuildFile(written);
    expect("document" in again && buildFileText(again.document)).toBe(written);
  });

  test.each([
    ["nothing at all", "", /Line 1/],
    ["a picture", "\u0089PNG\r\n", /Line 1/],
    ["another program's list", "[1, 2, 3]", /batterboard/i],
    ["a step that takes sacks", text.replace(/"work": "[^"]*"/, '"work": "two sacks"'), /two sacks/],
  ])("%s is refused by name, says that nothing is lost, and why", (_what, broken, why) => {
    const refused = openBuildFile(broken, "plan.json");
    expect(refused).not.toHaveProperty("document");
    const { refusal } = refused as { refusal: readonly string[] };
    expect(refusal[0]).toBe("plan.json was not opened; what was open stays as it is.");
    expect(refusal.slice(1).join(" ")).toMatch(why);
  });

  test("what is wrong is named as its author named it, not by its id", () => {
    const refused = openBuildFile(text.replace(/"id": "trial-block",/, '"id": "trial-block", "hands": -2,')) as {
      refusal: readonly string[];
    };
    expect(refused.refusal[1]).toMatch(/^Step “Cast a corner block, two oils”, hands: “-2” cannot be meant/);
  });

  test("of many faults the first five are told, and how many more there are", () => {
    const refused = openBuildFile(text.replaceAll('"place": "', '"place": "no-such-')) as { refusal: readonly string[] };
    expect(refused.refusal.length).toBe(7);
    expect(refused.refusal.at(-1)).toMatch(/^\d+ more like these\.$/);
  });

  test("one of a newer program that cannot be read says so before what is missing in it", () => {
    const { refusal } = openBuildFile('{ "batterboard": 99, "id": "x", "name": "X" }') as { refusal: readonly string[] };
    expect(refusal[1]).toBe("A newer version of this program wrote it, and only that can open it. This one finds:");
    expect(refusal.length).toBeGreaterThan(2);
  });

  test("a little too long is not told as just as long as may be, and a version in quotes as what it is", () => {
    const said = (file: string) => (openBuildFile(file) as { refusal: readonly string[] }).refusal[1];
    expect(said(`${" ".repeat(5_000_001)}{}`)).toBe("The file is too long: 5.1 million characters, where 5 million are read at most.");
    expect(said('{ "batterboard": "1" }')).toBe(
      'This is no build: a build begins with its format\'s version, "batterboard": 1, and here that is a text; write it without quotes.',
    );
  });

  test("a file of a newer program opens to be looked at, and says so", () => {
    const opened = openBuildFile(text.replace('"batterboard": 1', '"batterboard": 7'));
    expect(opened).toMatchObject({ newer: true });
    expect((opened as { remarks: readonly string[] }).remarks.length).toBe(1);
  });
});

test.each([
  ["Garden wall with a planter", "garden-wall-with-a-planter.json"],
  ["Mühle: Bögen & Gewölbe", "muhle-bogen-gewolbe.json"],
  ["???", "build.json"],
])("a file for “%s” is called %s", (name, file) => {
  expect(buildFileName(name)).toBe(file);
});
