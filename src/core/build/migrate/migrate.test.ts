import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { read, version, write } from "..";
import { migrate, migrations } from ".";

const old = (file: string): string => readFileSync(new URL(`./old/${file}`, import.meta.url), "utf8");

describe("migrations", () => {
  test("there is one for each older version, numbered without a gap, and a file of each", () => {
    const files = readdirSync(new URL(".", import.meta.url)).filter((name) => /^\d{4}-/.test(name));
    expect(files.map((name) => Number(name.slice(0, 4)))).toEqual(migrations.map((_, i) => i + 1));
    expect(migrations).toHaveLength(version);
    expect(readdirSync(new URL("./old", import.meta.url))).toEqual(migrations.map((_, i) => `version-${i}.json`));
  });

  test("a file of version 0 opens as what it meant", () => {
    const { build, findings, document, readOnly } = read(old("version-0.json"));
    expect(findings.map((finding) => finding.code)).toEqual(["build.brought-up"]);
    expect(readOnly).toBe(false);
    expect(build?.usual).toBe("saturdays");
    expect(build?.pieces[0]?.heldBy).toEqual([["brace-north", "brace-west"]]);
    expect(build?.pieces[2]?.heldBy).toEqual([]);
    expect(document).toMatchObject({ batterboard: version, pieces: [{ "colour of string": "red" }, {}, {}] });
    expect(document).not.toHaveProperty("calendar");
    expect(read(write(document)).findings).toEqual([]);
  });

  test("the older document stays as it is", () => {
    const before = JSON.parse(old("version-0.json"));
    const copy = structuredClone(before);
    migrate(before, 0);
    expect(before).toEqual(copy);
  });

  test("what is not as it should be is handed on as it is, for the reader to refuse", () => {
    expect(migrate({ pieces: [3, null, { heldBy: "x" }, { heldBy: [["a"]] }], usual: "u", calendar: "c" }, 0)).toEqual({
      pieces: [3, null, { heldBy: "x" }, { heldBy: [["a"]] }],
      usual: "u",
      calendar: "c",
    });
  });
});
