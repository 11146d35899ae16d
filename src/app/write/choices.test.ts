import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { anotherLike, choicesOf, eitherOrder } from "./choices";

const document = documentOf({ steps: [{ id: "a", name: "Dig" }, { id: "b", name: "Bore" }, { id: "c" }] });

test("two steps in either order: a choice that reads, found at both and at no other", () => {
  const after = apply(document, eitherOrder(document, "a", "b", ["Dig", "Bore"])).document;
  const { build, findings } = readDocument(after);
  expect(findings).toEqual([]);
  expect(build?.choices[0]?.either.map(({ name, waits }) => [name, waits[0]?.from, waits[0]?.to])).toEqual([
    ["Dig first", "a", "b"],
    ["Bore first", "b", "a"],
  ]);
  expect(["a", "b", "c"].map((step) => choicesOf(after, step).length)).toEqual([1, 1, 0]);
  const twice = apply(after, eitherOrder(after, "a", "b", ["Dig", "Bore"])).document;
  expect(choicesOf(twice, "a").map(({ id }) => id)).toEqual(["a-or-b", "a-or-b-2"]);
});

test("another like it has no id of the first", () => {
  expect(anotherLike({ name: "w", waits: [{ id: "x", from: "a", to: "b" }] })).toEqual({ name: "w", waits: [{ from: "a", to: "b" }] });
});
