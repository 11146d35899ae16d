import { expect, test } from "vitest";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { readDocument } from "../build";
import { addMember, apply } from "../edit";
import { answerAgain, putIn, type RawAnswers, takeOut } from ".";

const own = { id: "pad-inspect", name: "Pad inspect", work: "1 h" };
const again = (document: unknown, answers: RawAnswers): unknown => apply(document, answerAgain(document, "pad", answers).edits).document;
const stepOf = (document: unknown, id: string): unknown =>
  (document as { steps: readonly { readonly id: string }[] }).steps.find((step) => step.id === id);
const bare = apply(emptyBuild("us"), putIn(emptyBuild("us"), "footing", "Pad", { inspected: false }).edits).document;

test("a step of the builder's own with an id that a kit would give is the builder's, whatever is answered again", () => {
  const document = apply(bare, [addMember("steps", own)]).document;
  const asked = again(document, { inspected: true });
  expect(stepOf(asked, own.id)).toEqual(own);
  expect(readDocument(asked).findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  expect(stepOf(again(asked, { inspected: false }), own.id)).toEqual(own);
  expect(stepOf(apply(asked, takeOut(asked, "pad").edits).document, own.id)).toEqual(own);
});

test("what the kit made goes when it is not asked for any more", () => {
  const asked = again(bare, { inspected: true });
  expect(stepOf(asked, own.id)).toMatchObject({ sort: "inspection" });
  expect(stepOf(again(asked, { inspected: false }), own.id)).toBeUndefined();
});

test("the builder's own of another sort under that id stays too, and the build can be read", () => {
  const piece = { id: own.id, name: own.name };
  const document = apply(bare, [addMember("pieces", piece)]).document;
  const asked = again(document, { inspected: true });
  expect(readDocument(asked).findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  const out = apply(asked, takeOut(asked, "pad").edits).document as { pieces: unknown };
  expect(out.pieces).toEqual([piece]);
});
