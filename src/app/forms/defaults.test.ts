import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { heightsUpTo, newBrace, newElement, newForm, newHeld, newHoldDown, newMix, newMudsills, newShape, shapeKinds } from "./defaults";

const readWith = (element: object) =>
  readDocument(
    documentOf({
      steps: [{ id: "cast", sort: "pour" }],
      pours: [{ id: "p", step: "cast", mix: newMix("us", ""), elements: [{ id: "e", ...element }] }],
    } as never),
  );

describe.each(["us", "metric"] as const)("in %s units", (units) => {
  test.each(shapeKinds.map(({ id }) => id))("what a new %s begins with is read without a word against it", (kind) => {
    const { build, findings } = readWith({ ...newElement("e", "It", kind, units), held: newHeld(units) });
    expect(findings.filter(({ severity }) => severity === "stop")).toEqual([]);
    expect(build?.pours[0]?.elements[0]?.shape.kind).toBe(kind);
  });

  test("a brace, hold-downs and mudsills that are added can be read", () => {
    const column = { ...newForm("column", units, 1800), brace: newBrace(units, 1800), holdDown: newHoldDown(units) };
    const deck = { ...newForm("deck", units, 150), mudsills: newMudsills(units) };
    expect(readWith({ shape: newShape("column", units), form: column }).build).not.toBeNull();
    expect(readWith({ shape: newShape("deck slab", units), form: deck }).build).not.toBeNull();
  });

  test("heights rise, begin near the foot, end below the top and stand closer at the foot", () => {
    for (const kind of ["bands", "wales"] as const) {
      const high = units === "us" ? 72 : 1800;
      const at = heightsUpTo(high, units, kind).map((text) => Number(text.split(" ")[0]));
      const gaps = at.slice(1).map((one, index) => one - at[index]!);
      expect(Math.min(...gaps)).toBeGreaterThan(0);
      expect(at[0]).toBeLessThan(high / 8);
      expect(at.at(-1)).toBeLessThan(high);
      expect([...gaps].sort((a, b) => a - b)).toEqual(gaps);
    }
  });

  test("even the lowest form has one band", () => {
    expect(heightsUpTo(units === "us" ? 2 : 50, units, "bands")).toHaveLength(1);
  });
});
