import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { newElementEdits, newPourEdits } from "./make";

const document = documentOf({
  steps: [{ id: "cast", name: "Cast the wall", sort: "pour", pour: { strength: "3500 psi" } }],
});

test("a pour for a step takes its strength over, so that it is written once", () => {
  const { id, edits } = newPourEdits(document, "Cast the wall", "cast", "wall", "us");
  const { build, findings } = readDocument(apply(document, edits).document);
  expect(findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  expect(build?.pours[0]?.id).toBe(id);
  expect(build?.pours[0]?.mix.strength_MPa).toBeCloseTo(24.13, 2);
  expect(build?.steps[0]?.pour?.strength_MPa).toBeCloseTo(24.13, 2);
});

test("a pour without a step brings its own, and elements of one kind are told apart", () => {
  const { id, edits } = newPourEdits(document, "Porch", null, "column", "metric");
  const once = apply(document, edits).document as { pours: { elements: { id: string; name: string }[] }[] };
  const again = newElementEdits(once.pours[0] as never, ["pours", `id=${id}`], "column", "metric");
  const { build } = readDocument(apply(once, again.edits).document);
  expect(build?.steps.map(({ name, sort }) => [name, sort])).toContainEqual(["Porch", "pour"]);
  expect(build?.pours[0]?.elements.map(({ id: one, name }) => [one, name])).toEqual([
    ["column", "Column"],
    ["column-2", "Column 2"],
  ]);
});
