import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, clip, duplicate, goesBy, group, ownPlaces, type Ref, removeMember, split, ungroup } from ".";

const dig: readonly Ref[] = [{ list: "steps", id: "dig" }];
const names = ["constructor", "__proto__", "toString", "hasOwnProperty"];

test.each(names)("a list called %s that the document holds beside the known ones is left alone", (name) => {
  const document = JSON.parse(
    JSON.stringify(documentOf({ steps: [{ id: "dig", place: "hole" }, { id: "fill" }], places: [{ id: "hole" }] })).replace(
      /^\{/,
      `{${JSON.stringify(name)}:[{"id":"a","name":"b","length":["dig"]}],`,
    ),
  );
  const grouped = apply(document, [{ path: ["groups"], value: [{ id: "two", count: 2, members: ["dig"] }] }]).document;
  expect(ownPlaces(document, dig)).toEqual(["hole"]);
  expect(clip(document, dig)?.members.steps).toHaveLength(1);
  expect(group(document, dig, 2, "Holes")).toMatchObject({ group: "holes" });
  expect(split(document, "dig", "Rest")).toMatchObject({ second: "dig-second" });
  expect(duplicate(document, dig).made).toMatchObject([{ list: "steps" }]);
  expect(goesBy(document, "b")).toEqual([]);
  for (const edits of [ungroup(grouped, "two"), removeMember(grouped, "steps", "dig")]) {
    const after = apply(grouped, edits).document;
    expect(Object.getOwnPropertyDescriptor(after, name)?.value).toEqual([{ id: "a", name: "b", length: ["dig"] }]);
    expect(readDocument(after).build).not.toBeNull();
  }
});

test("members may be called as what every object has", () => {
  const document = documentOf({
    steps: [{ id: "constructor", puts: ["valueof"] }, { id: "fill" }],
    pieces: [{ id: "valueof" }],
    groups: [{ id: "two", count: 2, members: ["constructor", "valueof"], differences: { "1": {}, "2": { valueof: { name: "Short" } } } }],
  });
  const after = apply(document, ungroup(document, "two")).document;
  expect(readDocument(after).build?.steps.map(({ id }) => id)).toEqual(["constructor", "fill", "constructor-2"]);
  expect(readDocument(after).build?.pieces.map(({ name }) => name)).toEqual(["valueof", "Short"]);
});
