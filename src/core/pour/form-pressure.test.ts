import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { columnOf, deckOf, formDocument, readForms, wallOf } from "../../../test/fixtures/form-documents";
import { part, sheetOf } from "../../../test/fixtures/judged-forms";
import type { Pour, PourElement } from "../build";
import { uprightOf } from "./element";
import { headAt, headOf } from "./form-head";
import { judgeForm } from "./form-judge";

describe("the lowest bands matter most", () => {
  // Common practice, no source.
  test("under full head no band of an even layout carries more than the lowest ones", () => {
    const at = ["6 in", "18 in", "30 in", "42 in", "54 in", "66 in"];
    const loads = part(sheetOf(columnOf({}, { bands: { stuff: "2x4", at, bolt: { carries: "2000 lb" } } })), "bands").each.map(
      ({ load_kN }) => load_kN,
    );
    expect([...loads].sort((a, b) => b - a)).toEqual(loads);
  });

  // Common practice, no source: 3/4 in form plywood on joists at 12 in carries a suspended slab with stiffness to spare.
  test("plywood of 3/4 in on joists at 12 in under 6 in of concrete", () => {
    expect(part(sheetOf(deckOf()), "sheathing").of100).toBeLessThan(50);
  });

  test("a band at its limit is a stop that names where", () => {
    const sheet = sheetOf(
      columnOf(
        {},
        { bands: { stuff: { size: "2x4", grade: "DF-L No 2" }, at: ["10 in", "60 in"], bolt: { carries: "2000 lb", from: "code" } } },
      ),
    );
    expect(sheet.ready).toBe(false);
    expect(sheet.found.find(({ code, detail: d }) => code === "form.over" && d.part === "bands")).toMatchObject({
      severity: "stop",
      detail: { at_mm: 254 },
    });
  });
});

test("what any member carries of what it may grows with the pressure", () => {
  const build = readForms(
    formDocument([
      columnOf(),
      wallOf(),
      wallOf(
        {},
        { ties: undefined, strongbacks: { stuff: "2x6", spacing: "2 ft", top: { carries: "900 lb" }, foot: { carries: "2000 lb" } } },
        { id: "tieless" },
      ),
    ]),
  );
  const pour = build.pours[0] as Pour;
  fc.assert(
    fc.property(fc.constantFrom(...pour.elements), fc.double({ min: 0.1, max: 0.95, noNaN: true }), (element: PourElement, share) => {
      const upright = uprightOf(element.shape)!;
      const full = headOf(upright.high_mm, { most_kPa: 43.1, hydrostatic_mm: upright.high_mm });
      const at = (most_kPa: number) =>
        judgeForm({ pour, element, upright, head: headAt(full, most_kPa) }, element.form).members.map(({ sheet }) => sheet.of100);
      const [less, more] = [at(43.1 * share), at(43.1 * share * 1.05)];
      expect(less.length).toBeGreaterThan(3);
      less.forEach((one, i) => {
        expect(more[i]).toBeGreaterThanOrEqual(one - 1e-9);
      });
    }),
    { numRuns: 60 },
  );
});
