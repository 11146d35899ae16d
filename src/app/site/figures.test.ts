import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { withSource } from "../parts/source";
import { figureEdits, figuresOf, sourcesOf, valuesOf } from "./figures";
import { usesOf } from "./uses";

const guess = "own guess";
const month = { low: { is: "30 °F", from: guess }, high: "40 °F" };
const document = documentOf({
  site: { zone: "America/New_York", latitude: 42.4, longitude: -76.5, usualTemperatures: Array.from({ length: 12 }, () => month) },
  equipment: [{ id: "mixer", name: "Mixer", number: 1 }],
  stock: [{ id: "sheets", name: "Sheets", inHand: 2, yields: { is: "9 L", from: "product sheet" } }],
  places: [{ id: "pit", ways: [{ id: "north", name: "from the north", depth: { is: "20 in", from: guess }, passes: ["arm"] }] }],
  pieces: [
    { id: "face", name: "Front face", weight: { is: "90 lb", from: guess }, uses: [{ of: "sheets", number: 2 }] },
    { id: "prop", from: guess },
  ],
  steps: [
    { id: "form", name: "Set the form", work: { low: "1 h", likely: "2 h", high: "4 h", from: guess }, equipment: [{ of: "mixer" }] },
    { id: "strip", work: { is: "1 h", from: "drawing" }, leansOn: [{ piece: "face", once: { is: "2 d", from: guess } }] },
  ],
  waits: [{ id: "dry", name: "Dry", from: "form", to: "strip", least: { is: "24 h", from: guess } }],
  deliveries: [{ id: "timber", name: "Timber", lead: { is: "2 wk", from: "supplier" }, brings: [{ of: "sheets", number: 4 }] }],
  groups: [{ id: "two", count: 2, members: ["form"], differences: { "2": { form: { work: { is: "3 h", from: guess } } } } }],
});

test("every figure that says where it comes from is found, with what it is a figure of", () => {
  const figures = figuresOf(document);
  expect(figures.slice(1).map(({ name, what, value, from }) => [name, what, value, from])).toEqual([
    ["Sheets", "concrete of one", "9 L", "product sheet"],
    ["pit", "ways, from the north, depth", "20 in", guess],
    ["Front face", "weight", "90 lb", guess],
    ["prop", "all of it", "", guess],
    ["Set the form", "work", "1 h / 2 h / 4 h", guess],
    ["strip", "work", "1 h", "drawing"],
    ["strip", "leans on, may be leaned on after", "2 d", guess],
    ["Dry", "waits at least", "24 h", guess],
    ["Timber", "lead time", "2 wk", "supplier"],
    ["Set the form (2)", "work", "3 h", guess],
  ]);
  expect(figures[0]).toMatchObject({ list: "site", what: "usual temperatures of the months", value: "12 figures" });
  expect(new Set(figures.map(({ key }) => key)).size).toBe(figures.length);
  expect(figuresOf(null)).toEqual([]);
});

test("sources are counted, most first", () => {
  expect(sourcesOf(figuresOf(document))).toEqual([
    { from: guess, count: 8 },
    { from: "drawing", count: 1 },
    { from: "product sheet", count: 1 },
    { from: "supplier", count: 1 },
  ]);
});

test("another source is written where the figure stands, in each of them", () => {
  let now: unknown = document;
  for (const figure of figuresOf(document)) {
    const values = valuesOf(now, figure).map((value) => withSource(value, "measured"));
    now = apply(now, figureEdits(figure, values)).document;
  }
  expect(sourcesOf(figuresOf(now))).toEqual([{ from: "measured", count: 11 }]);
  expect(figuresOf(now).map(({ value }) => value)).toEqual(figuresOf(document).map(({ value }) => value));
  expect(readDocument(now).build).not.toBeNull();
});

test("what uses, holds and brings a thing is listed", () => {
  expect(usesOf(document, "sheets")).toEqual([
    { list: "pieces", id: "face", name: "Front face", number: 2 },
    { list: "deliveries", id: "timber", name: "Timber", number: 4 },
  ]);
  expect(usesOf(document, "mixer")).toEqual([{ list: "steps", id: "form", name: "Set the form", number: 1 }]);
  expect(usesOf({ pours: [{ id: "pad", sacks: "bags" }] }, "bags")).toEqual([{ list: "pours", id: "pad", name: "pad", number: null }]);
});
