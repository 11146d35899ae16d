import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { usualSentence } from "../../words";
import { faultsOf } from "../../words/lint.testing";
import { suggestedFor, withSuggested } from "./suggested";
import { usualOf, usuals } from "./verbs";

const document = documentOf({
  places: [{ id: "cage", name: "Column cage", ways: [{ id: "north" }, { id: "south" }] }],
  pieces: [
    { id: "face", name: "Column form", sort: "form", closes: ["cage.north"], fromStart: true },
    { id: "deck", name: "Deck", sort: "form", fromStart: true },
  ],
  steps: [{ id: "old", name: "Old" }],
});
type Doc = Record<string, Record<string, unknown>[]>;
function added(name: string, to: unknown = document): { step: Record<string, unknown>; after: Doc } {
  const { edits, id } = withSuggested(to, name, suggestedFor(to, name)!);
  const after = apply(to, edits).document as Doc;
  expect(readDocument(after).findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  return { step: after.steps!.find((step) => step.id === id)!, after };
}

describe("what such a step usually has", () => {
  test.each([
    ["Tie the column bars", { place: "cage", reaches: [{ place: "cage", need: "arm" }], hands: 2 }],
    ["Strip columns", { place: "cage", takes: ["face"] }],
    ["Photograph column steel", { sort: "photograph", reaches: [{ place: "cage", need: "sight" }] }],
    ["Inspection of the columns", { sort: "inspection", hands: 0, holdPoint: { places: ["cage"] } }],
    ["Order the bars", { sort: "office" }],
  ])("%s", (name, has) => expect(added(name).step).toMatchObject({ name, ...has }));

  test("what closes takes a way in that is open, what is poured fills the place", () => {
    const { step, after } = added("Set the column panel");
    expect(after.pieces!.at(-1)).toEqual({ id: "column-panel-form", name: "Column panel form", sort: "form", closes: ["cage.south"] });
    expect(step.puts).toEqual(["column-panel-form"]);
    const poured = added("Pour column").after.pieces!.at(-1);
    expect(poured).toMatchObject({ name: "Column concrete", sort: "concrete", fills: ["cage"] });
  });

  test("in an empty build the place is a new one, called by what the step is about", () => {
    const empty = documentOf({});
    const { step, after } = added("Seal the footing joint", empty);
    expect(after.places).toEqual([
      { id: "footing-joint", name: "Footing joint", ways: [{ id: "in", name: "way in", passes: ["person"] }] },
    ]);
    expect(step.place).toBe("footing-joint");
    expect(added("Set footing", empty).after.pieces).toEqual([
      { id: "footing-form", name: "Footing form", sort: "form", closes: ["footing"] },
    ]);
  });

  test("nothing is said of a step nobody knows, or where it would add nothing", () => {
    expect(suggestedFor(document, "Lunch")).toBeNull();
    expect(suggestedFor(document, "")).toBeNull();
    expect(suggestedFor(documentOf({}), "Tie")).toBeNull();
  });

  test("the first word counts before others; each verb means one thing", () => {
    expect(usualOf("Oil and set the form")?.verb).toBe("oil");
    expect(usualOf("The pour of the slab")?.verb).toBe("pour");
    const verbs = usuals.flatMap((usual) => usual.verbs);
    expect(new Set(verbs).size).toBe(verbs.length);
  });
});

test("it is offered in one sentence", () => {
  const say = {
    sort: undefined,
    need: "arm",
    place: "Column cage",
    isNewPlace: false,
    piece: "",
    does: "nothing",
    takes: [],
    holdPoint: false,
  } as const;
  const said = [
    usualSentence(say),
    usualSentence({ ...say, need: "person", piece: "Column form", does: "closes" }),
    usualSentence({ ...say, place: "Footing", isNewPlace: true, sort: "pour", need: "hose", piece: "Footing concrete", does: "fills" }),
    usualSentence({ ...say, sort: "inspection", need: "sight", holdPoint: true }),
    usualSentence({ ...say, need: "person", takes: ["Column form"] }),
  ];
  expect(said[0]).toBe("A step like this usually gets an arm with a tool to “Column cage”.");
  expect(said[2]).toBe(
    "A step like this usually is a pour, gets a hose to a new place, “Footing” and puts up “Footing concrete”, which fills it.",
  );
  for (const one of said) expect(faultsOf(one, null), one).toEqual([]);
});
