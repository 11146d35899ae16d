import { expect, test } from "vitest";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { putIn } from "../../core/kits";
import type { TextMark } from "../marks/mark";
import { structureDrawing } from "./drawing";

/** Two footings in the ground, as their kit puts them in, both chosen. */
function footings(width: number) {
  const begun = emptyBuild("us");
  const build = readDocument(apply(begun, putIn(begun, "footing", "Footing A", {}).edits).document).build!;
  const lit = new Set(build.solids.map(({ id }) => id as string));
  return { names: build.solids.map(({ name }) => name), drawing: structureDrawing(build, null, null, { width, text: 16, lit, high: 220 }) };
}

test("what is chosen and lies in the ground has broken lines and no wash: it does not look as if it stood on the ground", () => {
  const marks = footings(640).drawing.parts[0]!.marks;
  const roles = new Set(marks.map(({ role }) => role));
  expect(roles.has("body-lit-below")).toBe(true);
  expect(roles.has("body-lit")).toBe(false);
  expect(roles.has("body-lit-wash")).toBe(false);
});

test("on a phone each of a few that are chosen is named where it lies, and no name meets another or a body", () => {
  const { names, drawing } = footings(384);
  const marks = drawing.parts[0]!.marks;
  const texts = marks.filter((mark): mark is TextMark => mark.shape === "text");
  expect(names.length).toBe(2);
  expect(texts.map(({ text }) => text).sort()).toEqual([...names].sort());
  const bodies = marks.filter(({ role }) => role === "body-lit-below");
  for (const name of texts) {
    expect(name.x0).toBeGreaterThanOrEqual(0);
    expect(name.x1).toBeLessThanOrEqual(384);
    for (const other of [...texts.filter((one) => one !== name), ...bodies])
      expect(name.x0 < other.x1 && other.x0 < name.x1 && name.y0 < other.y1 && other.y0 < name.y1).toBe(false);
  }
});
