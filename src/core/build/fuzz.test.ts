import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { whole } from "../../../test/fixtures/whole";
import { apply } from "../edit";
import { bars, codes, read, readDocument, write } from ".";

/** All paths of the whole document, for damage to strike. */
function pathsOf(value: unknown, path: readonly string[] = []): string[][] {
  const inner =
    typeof value === "object" && value !== null ? Object.entries(value).flatMap(([key, one]) => pathsOf(one, [...path, key])) : [];
  return [[...path], ...inner];
}
const paths = pathsOf(whole);

const odd = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    true,
    -1,
    1.5,
    1e308,
    "",
    "a",
    "__proto__",
    "constructor",
    "-3 h",
    "999999 h",
    "2 wk",
    "9 % of tie",
    "tie#2",
    "tie#9",
    "cage.top",
    [],
    {},
    [[]],
    [{}],
    [null],
  ),
  fc.constantFrom(
    ...[
      "yard",
      "cage",
      "face",
      "brace",
      "wet",
      "tie",
      "set",
      "pour",
      "try",
      "strip",
      "weekends",
      "sheets",
      "2027-02-30",
      "24:00-1:00",
      "200",
      "0",
    ],
  ),
  fc.jsonValue({ maxDepth: 3 }),
  fc.dictionary(
    fc.constantFrom("__proto__", "constructor", "toString", "id", "is", "any", "place", "length"),
    fc.jsonValue({ maxDepth: 1 }),
  ),
);
const damage = fc.array(fc.record({ path: fc.constantFrom(...paths), value: odd }), { minLength: 1, maxLength: 4 });

/** Milder damage, which most often leaves a build: a text put where another one was, or a member or key left out. */
const leaves = paths.filter(
  (path) => typeof path.reduce<unknown>((value, key) => (value as Record<string, unknown>)?.[key], whole) === "string",
);
const leafText = fc
  .constantFrom(...leaves)
  .map((path) => path.reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], whole));
const mild = fc.array(
  fc.oneof(
    fc.record({ path: fc.constantFrom(...leaves), value: leafText }),
    fc.record({ path: fc.constantFrom(...paths.filter((path) => path.length > 2)) }),
    fc.record({
      path: fc.constantFrom(...paths.filter((path) => /puts|takes|after|heldBy|below|closes|members/.test(path.at(-2) ?? ""))),
      value: leafText,
    }),
  ),
  { minLength: 1, maxLength: 2 },
);

/** Every number anywhere in what was read. */
function figuresOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(figuresOf) : [];
}

function check(result: ReturnType<typeof readDocument>): void {
  const { build, findings } = result;
  if (build === null) expect(findings.some(bars)).toBe(true);
  else expect(findings.filter(bars)).toEqual([]);
  for (const finding of findings) {
    expect(typeof finding.code).toBe("string");
    if (finding.code.startsWith("build.")) expect(codes).toHaveProperty([finding.code]);
    for (const value of Object.values(finding.detail)) expect(["string", "number", "boolean", "object"]).toContain(typeof value);
  }
  if (!build) return;
  for (const figure of figuresOf([build.pours, build.site.days_C])) expect(Number.isFinite(figure)).toBe(true);
  for (const [list, index] of [
    ["steps", build.at.step],
    ["pieces", build.at.piece],
    ["places", build.at.place],
  ] as const) {
    expect(index.size).toBe(build[list].length);
  }
  for (const wait of build.waits) expect([build.at.step.has(wait.from), build.at.step.has(wait.to)]).toEqual([true, true]);
  for (const step of build.steps) {
    for (const piece of [...step.puts, ...step.takes]) expect(build.at.piece.has(piece)).toBe(true);
    expect(build.at.calendar.has(step.calendar)).toBe(true);
    for (const { any } of step.reaches) for (const aim of any) expect(build.at.place.has(aim.place)).toBe(true);
  }
  expect(new Set(build.waits.map((wait) => wait.id)).size).toBe(build.waits.length);
}

describe("whatever is read", () => {
  test("the whole document is sound to begin with", () => {
    expect(readDocument(whole).findings.map((finding) => finding.code)).toEqual([]);
    expect(paths.length).toBeGreaterThan(300);
  });

  test("any JSON is read without an exception, and says why it is no build", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => check(readDocument(value))),
      { numRuns: 500 },
    );
  });

  test("so is any text", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.json()), (text) => check(read(text))),
      { numRuns: 500 },
    );
  });

  test("and a sound document that damage has struck, which is written and read to the same bytes", () => {
    let builds = 0;
    fc.assert(
      fc.property(fc.oneof(damage, mild, mild), (edits) => {
        const document = apply(whole, edits).document;
        const result = readDocument(document);
        if (result.build) builds++;
        check(result);
        const text = write(document);
        expect(write(read(text).document ?? JSON.parse(text))).toBe(text);
      }),
      { numRuns: 1000 },
    );
    expect(builds).toBeGreaterThan(40);
  });

  /** Without groups, so that nearly everything is taken over from the reading before. */
  const alone = JSON.parse(JSON.stringify({ ...whole, groups: [] }).replace(/#\d/g, "")) as unknown;

  test("reading what changed only gives the same as reading all of it afresh", () => {
    fc.assert(
      fc.property(
        fc.constantFrom<unknown>(whole, alone),
        fc.array(fc.oneof(damage, mild), { minLength: 1, maxLength: 4 }),
        (first, changes) => {
          let document = first;
          for (const edits of changes) {
            readDocument(document);
            document = apply(document, edits).document;
            const again = readDocument(document);
            expect(again).toEqual(readDocument(structuredClone(document)));
            expect(readDocument(first)).toEqual(readDocument(structuredClone(first)));
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test("what an edit does not touch is the same object in the build", () => {
    const before = readDocument(alone).build;
    const after = readDocument(apply(alone, [{ path: ["steps", "id=tie", "hands"], value: 0 }]).document).build;
    expect(after?.steps[0]?.hands).toEqual([]);
    expect(after?.steps.slice(1).every((step, i) => step === before?.steps[i + 1])).toBe(true);
    expect(after?.pieces.slice(0, 3).every((piece, i) => piece === before?.pieces[i])).toBe(true);
  });
});
