import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, moveTo, putUpBy, removeMany } from ".";

const document = documentOf({
  places: [{ id: "pit", ways: [{ id: "top" }] }],
  pieces: [
    { id: "lid", closes: ["pit.top"] },
    { id: "prop", fromStart: true },
    { id: "board", heldBy: [["lid"], ["prop"]] },
  ],
  steps: [
    { id: "dig", place: "pit" },
    { id: "set", puts: ["lid"], after: ["dig"], leansOn: [{ piece: "prop" }] },
    { id: "lift", takes: ["lid"], after: ["set"] },
    { id: "nail", puts: ["board"] },
  ],
  waits: [
    { id: "w", from: "dig", to: "set" },
    { id: "v", from: "set", to: "lift" },
  ],
});

test("names what others lose, once, and not what goes anyway", () => {
  const { edits, lost } = removeMany(document, [
    ["pieces", "lid"],
    ["steps", "dig"],
    ["steps", "set#2"],
    ["steps", "nothing"],
  ]);
  expect(lost).toEqual([
    { list: "waits", id: "w", goes: true },
    { list: "steps", id: "lift", goes: false },
    { list: "waits", id: "v", goes: true },
    { list: "pieces", id: "board", goes: false },
  ]);
  const { document: after, inverse } = apply(document, edits);
  expect(readDocument(after).findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  expect((after as { steps: { id: string }[] }).steps.map(({ id }) => id)).toEqual(["lift", "nail"]);
  expect(JSON.stringify(apply(after, inverse).document)).toBe(JSON.stringify(document));
});

test("the same whatever the order they are given in", () => {
  const members = [
    ["steps", "set"],
    ["pieces", "lid"],
    ["places", "pit"],
  ] as const;
  const [one, two] = [removeMany(document, members), removeMany(document, members.toReversed())];
  expect(apply(document, two.edits).document).toEqual(apply(document, one.edits).document);
});

test("pieces that steps put up; another place for several", () => {
  expect(putUpBy(document, ["set", "nail", "dig"])).toEqual(["lid", "board"]);
  const moved = apply(document, moveTo(["set", "set#2", "dig"], "pit")).document as { steps: { place?: string }[] };
  expect(moved.steps.map(({ place }) => place)).toEqual(["pit", "pit", undefined, undefined]);
  expect(apply(moved, moveTo(["set"], "")).document).toMatchObject({ steps: [{ place: "pit" }, {}, {}, {}] });
});
