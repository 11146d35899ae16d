import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { read, write } from ".";

describe("write", () => {
  test("what it wrote is read and written to the same bytes, whatever JSON it is", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = write(value);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(write(JSON.parse(text))).toBe(text);
      }),
    );
  });

  test("known keys come in a fixed order, unknown ones stay with their object and keep theirs", () => {
    const written = write(
      documentOf({
        zeta: 1,
        steps: [{ zz: { b: 1, a: 2 }, work: "6 h", aa: [1], name: "Tie", id: "tie", __proto__: null }],
        alpha: { id: 1 },
        places: [{ ways: [{ passes: ["arm"], colour: "red", id: "top" }], id: "cage" }],
      }),
    );
    const { document } = read(written);
    const steps = (document as { steps: object[] }).steps;
    expect(Object.keys(document as object).slice(-2)).toEqual(["zeta", "alpha"]);
    expect(Object.keys(steps[0] ?? {})).toEqual(["id", "name", "work", "zz", "aa"]);
    expect(written).toContain('"zz": { "b": 1, "a": 2 }');
    expect(written).toContain('{ "id": "cage", "ways": [{ "id": "top", "passes": ["arm"], "colour": "red" }] }');
    expect(write(document)).toBe(written);
  });

  test("a key that JavaScript gives a meaning of its own is a key like any other", () => {
    const text =
      '{\n  "batterboard": 1,\n  "steps": [\n    { "id": "a", "__proto__": { "x": 1 }, "constructor": 2 }\n  ],\n  "__proto__": [3]\n}\n';
    expect(write(read(text).document)).toBe(text);
  });

  test("what fits on a line stands on one, a list of objects never does", () => {
    const text = write(documentOf({ steps: [{ id: "a", tools: Array.from({ length: 12 }, (_, i) => `tool number ${i}`) }] }));
    expect(text).toContain('  "steps": [\n    {\n      "id": "a",\n      "tools": [\n        "tool number 0",');
    expect(text.split("\n").every((line) => line.length < 160)).toBe(true);
    expect(text.endsWith("}\n")).toBe(true);
  });

  test("one changed step is one changed line", () => {
    const document = (work: string) => documentOf({ steps: [{ id: "a" }, { id: "b", work }, { id: "c" }] });
    const [before, after] = [write(document("6 h")), write(document("7 h"))].map((text) => text.split("\n"));
    expect(after?.filter((line, i) => line !== before?.[i])).toEqual(['    { "id": "b", "work": "7 h" },']);
  });

  test("half a surrogate pair and other odd texts survive", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (name) => {
        const text = write({ batterboard: 1, name });
        expect(read(text).document).toEqual({ batterboard: 1, name });
      }),
    );
  });
});
