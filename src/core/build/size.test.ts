import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { limits } from "../base";
import { apply } from "../edit";
import { read, readDocument, write } from ".";

/** A plain build of so many steps, each with a piece, two reaches and a step before it. */
function large(count: number) {
  const ids = Array.from({ length: count }, (_, i) => i);
  return documentOf({
    places: ids.slice(0, 50).map((i) => ({ id: `p-${i}`, ways: [{ id: "north" }, { id: "top", passes: ["arm"], depth: "26 in" }] })),
    pieces: ids.map((i) => ({
      id: `c-${i}`,
      closes: [`p-${i % 50}.north`],
      heldBy: i > 3 ? [[`c-${i - 2}`]] : [],
      size: { long: "8 ft", wide: "4 ft", thick: "3/4 in" },
    })),
    steps: ids.map((i) => ({
      id: `s-${i}`,
      name: `Step ${i}`,
      work: "6 h",
      hands: 2,
      reaches: [{ place: `p-${i % 50}`, need: "arm", depth: "20 in" }, { place: `p-${(i + 7) % 50}` }],
      puts: [`c-${i}`],
      leansOn: i > 3 ? [{ piece: `c-${i - 3}`, once: "6 h" }] : [],
      after: i > 0 ? [`s-${i - 1}`] : [],
    })),
  });
}

describe("size", () => {
  test("5,000 steps read, and are written to the same bytes", () => {
    const text = write(large(5000));
    expect(text.length).toBeLessThan(limits.fileCharacters.most);
    const { build, findings, document } = read(text);
    expect(findings).toEqual([]);
    expect([build?.steps.length, build?.waits.length, build?.pieces.length]).toEqual([5000, 4999, 5000]);
    expect(write(document)).toBe(text);
  });

  test("an edit of one among 1,000 steps reads that one again and keeps all others as they were", () => {
    let document: unknown = large(1000);
    let before = readDocument(document).build?.steps ?? [];
    for (let i = 0; i < 21; i += 1) {
      document = apply(document, [{ path: ["steps", `id=s-${i * 7}`, "work"], value: `${i + 7} h` }]).document;
      const after = readDocument(document).build?.steps ?? [];
      expect(after[i * 7]?.work.likely_min).toBe((i + 7) * 60);
      expect(after.filter((step, at) => step !== before[at]).length).toBe(1);
      before = after;
    }
  });

  test("a file above the limit is refused before it is looked at", () => {
    const text = `{"batterboard": 1, "notes": "${"x".repeat(5 * 1024 * 1024)}"}`;
    expect(read(text).findings).toEqual([
      { code: "build.too-long", severity: "stop", where: {}, detail: { characters: text.length, most: 5_000_000 } },
    ]);
  });

  test("five megabytes of nothing but brackets are refused too", () => {
    expect(read("[".repeat(4_999_999)).findings[0]).toMatchObject({ code: "build.nested", detail: { line: 1, column: 65 } });
  });

  const many = (count: number, make: (i: number) => string): string => Array.from({ length: count }, (_, i) => make(i)).join(",");
  const around = (inner: string): string => `${JSON.stringify(documentOf({})).slice(0, -1)},${inner}}`;
  const hundred = Array.from({ length: 100 }, (_, i) => i);
  const copies = {
    steps: [...hundred.map((i) => ({ id: `a-${i}`, after: hundred.map((j) => `b-${j}`) })), ...hundred.map((i) => ({ id: `b-${i}` }))],
    groups: [
      { id: "g", count: 100, members: hundred.map((i) => `a-${i}`) },
      { id: "h", count: 100, members: hundred.map((i) => `b-${i}`) },
    ],
  };

  // Each would take minutes or gigabytes if every wrong thing in it were looked into.
  test.each<[string, () => string, string]>([
    ["a list of a million wrong entries", () => around(`"steps":[{"id":"a","tools":[${many(1_000_000, () => "1")}]}]`), "build.type"],
    [
      "300,000 unknown ids",
      () => around(`"steps":[{"id":"a","after":[${many(300_000, (i) => `"s-${i}"`)}]},${many(5000, (i) => `{"id":"t-${i}"}`)}]`),
      "build.unknown-id",
    ],
    [
      "150,000 wrong entries of a kept plan",
      () => around(`"kept":{"engine":"1","rung":1,"finish":"2027-01-01","steps":{${many(150_000, (i) => `"s-${i}":1`)}}}`),
      "build.type",
    ],
    ["300,000 unknown keys", () => around(`"steps":[{"id":"a",${many(300_000, (i) => `"not${i}":1`)}}]`), ""],
    ["40,000 steps", () => around(`"steps":[${many(40_000, (i) => `{"id":"s-${i}"}`)}]`), "build.too-many"],
    ["groups of copies that refer to each other", () => write(documentOf(copies)), "build.too-many"],
    [
      "waits between groups of copies",
      () =>
        write(
          documentOf({
            ...copies,
            steps: copies.steps.map(({ id }) => ({ id })),
            waits: Array.from({ length: 5000 }, (_, i) => ({ id: `w-${i}`, from: "a-1", to: "b-1" })),
          }),
        ),
      "build.too-many",
    ],
  ])("%s", (_, text, code) => {
    const long = text();
    expect(long.length).toBeLessThanOrEqual(limits.fileCharacters.most);
    const { findings } = read(long);
    if (code === "") expect(findings).toEqual([]);
    else expect(findings.map((finding) => finding.code)).toContain(code);
    expect(findings.length).toBeLessThanOrEqual(201);
  });
});
