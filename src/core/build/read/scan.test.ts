import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lineAndColumn, scan } from "./scan";

const parses = (text: string): boolean => {
  try {
    JSON.parse(text, (_, value) => {
      if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY) throw new Error("cannot be held");
      return value;
    });
    return true;
  } catch {
    return false;
  }
};

describe("scan", () => {
  test("passes what JSON.parse passes", () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), (text) => {
        expect(scan(text)).toBe(null);
      }),
    );
  });

  // The engine's own reader is the second opinion on every damaged text.
  test("refuses what JSON.parse refuses, and nothing else but doubled names", () => {
    const damaged = fc
      .tuple(fc.json(), fc.nat(), fc.constantFrom("", ",", "}", "]", '"', "0", "-", "\\", "\n", "e", ":", "nul", "01", "\u0001"), fc.nat(3))
      .map(([text, at, put, drop]) => text.slice(0, at % (text.length + 1)) + put + text.slice((at % (text.length + 1)) + drop));
    fc.assert(
      fc.property(fc.oneof(damaged, fc.string()), (text) => {
        const fault = scan(text);
        fc.pre(fault?.kind !== "twice");
        expect(fault === null, text).toBe(parses(text));
      }),
      { numRuns: 3000 },
    );
  });

  test.each([
    ["", 0, "value"],
    ["  ", 2, "value"],
    ['{"a" 1}', 5, "colon"],
    ["{a: 1}", 1, "name"],
    ['{"a": 1,}', 8, "name"],
    ["[1,]", 3, "value"],
    ["[1 2]", 3, "comma-or-end"],
    ['{"a": "b', 8, "text"],
    ['["a\nb"]', 3, "text"],
    ['"\\x"', 1, "text"],
    ["01", 0, "number"],
    ["1.", 0, "number"],
    ["-", 0, "number"],
    ["[1e999]", 1, "number"],
    ["[] []", 3, "nothing"],
    ["{} x", 3, "nothing"],
    ["nil", 0, "value"],
  ])("%j goes wrong at %i: %s", (text, at, wanted) => {
    expect(scan(text)).toEqual({ kind: "json", at, wanted });
  });

  test("finds a name that stands twice, escaped or not, but not one in another object", () => {
    expect(scan('{"a": {"a": 1}, "b": [{"c": 1}, {"c": 2}]}')).toBe(null);
    expect(scan('{"a": 1, "\\u0061": 2}')).toEqual({ kind: "twice", at: 9, name: "a" });
    expect(scan('{"__proto__": 1, "__proto__": 2}')).toEqual({ kind: "twice", at: 17, name: "__proto__" });
  });

  test("nesting without end is refused before it costs anything", () => {
    expect(scan("[".repeat(64) + "]".repeat(64))).toBe(null);
    expect(scan("[".repeat(1_000_000))).toEqual({ kind: "nested", at: 64 });
  });
});

test("line and column count characters as an editor does", () => {
  expect(lineAndColumn("a\nb\r\nc\rde", 8)).toEqual({ line: 4, column: 2 });
  expect(lineAndColumn("😀x", 2)).toEqual({ line: 1, column: 2 });
  expect(lineAndColumn("", 0)).toEqual({ line: 1, column: 1 });
});
