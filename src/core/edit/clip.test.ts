import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, clip, clipText, duplicate, paste, type Ref, readClip } from ".";

const steps = (...ids: string[]): Ref[] => ids.map((id) => ({ list: "steps", id }));

const document = documentOf({
  equipment: [{ id: "mixer", name: "Mixer" }],
  places: [
    { id: "yard", name: "Yard", ways: [{ id: "gate" }] },
    { id: "cage", name: "Column cage", ways: [{ id: "north", through: "yard" }, { id: "south" }] },
  ],
  pieces: [
    { id: "face", name: "Face", sort: "form", closes: ["cage.north"], heldBy: [["brace"], ["guy"]] },
    { id: "brace", name: "Brace" },
    { id: "guy", name: "Guy", fromStart: true },
  ],
  steps: [
    { id: "tie", name: "Tie bars", place: "cage", reaches: [{ place: "cage", need: "arm" }], work: "3 h", needs: ["bars"] },
    {
      id: "set",
      name: "Set face 2",
      place: "cage",
      puts: ["face", "brace"],
      after: ["tie"],
      work: "2 h",
      calendar: "crew",
      fixed: "2027-04-03",
      notBefore: "2027-04-03",
      equipment: [{ of: "mixer" }],
    },
    { id: "strip", name: "Strip face", takes: ["face"], work: "1 h", done: { start: "2027-05-01T08:00", finish: "2027-05-01T09:00" } },
  ],
  waits: [
    { id: "set-to-strip", from: "set", to: "strip", least: "24 h" },
    { id: "tie-to-set", from: "tie", to: "set", most: "9 d" },
  ],
  calendars: [{ id: "crew", name: "Crew", week: { sat: ["8:00-12:00"] } }],
  deliveries: [{ id: "bars", name: "Bars" }],
});

type Doc = Record<string, Record<string, unknown>[]>;
const docOf = (result: { edits: Parameters<typeof apply>[1] }, into: unknown = document) => apply(into, result.edits).document as Doc;
const member = (made: Doc, list: string, id: string) => made[list]?.find((one) => one.id === id);
const stops = (made: unknown) => readDocument(made).findings.filter(({ severity }) => severity === "stop");

describe("the same once more", () => {
  const result = duplicate(document, steps("tie", "set"));
  const made = docOf(result);

  test("the fixture reads", () => expect(stops(document)).toEqual([]));

  test("reads, comes back whole, and touches nothing that was there", () => {
    expect(stops(made)).toEqual([]);
    const { inverse } = apply(document, result.edits);
    expect(JSON.stringify(apply(made, inverse).document)).toBe(JSON.stringify(document));
    expect(made.steps?.slice(0, 3)).toEqual(document.steps);
  });

  test("new ids and names with a number; what is spoken of inside follows, what is outside stays", () => {
    expect(result.made.map(({ list, id, name }) => [list, id, name])).toEqual([
      ["pieces", "face-2", "Face 2"],
      ["pieces", "brace-2", "Brace 2"],
      ["steps", "tie-2", "Tie bars 2"],
      ["steps", "set-2", "Set face 3"],
      ["waits", "tie-to-set-2", "tie-to-set-2"],
    ]);
    expect(member(made, "steps", "tie-2")).toEqual({ ...member(made, "steps", "tie"), id: "tie-2", name: "Tie bars 2" });
    expect(member(made, "steps", "set-2")).toMatchObject({
      puts: ["face-2", "brace-2"],
      after: ["tie-2"],
      place: "cage",
      calendar: "crew",
    });
    expect(member(made, "pieces", "face-2")).toMatchObject({ closes: ["cage.north"], heldBy: [["brace-2"], ["guy"]] });
    expect(member(made, "waits", "tie-to-set-2")).toEqual({ id: "tie-to-set-2", from: "tie-2", to: "set-2", most: "9 d" });
    expect(result.leftBehind).toEqual([]);
  });

  test("what happened once, or is fixed to one day, is not said of the second", () => {
    expect(member(made, "steps", "set-2")).not.toHaveProperty("fixed");
    expect(member(made, "steps", "set-2")).toHaveProperty("notBefore");
    expect(member(docOf(duplicate(document, steps("strip"))), "steps", "strip-2")).toEqual({
      id: "strip-2",
      name: "Strip face 2",
      takes: [],
      work: "1 h",
    });
  });

  test("a piece comes down once: what a second step would take down is told", () => {
    expect(duplicate(document, steps("strip")).leftBehind).toEqual([{ list: "steps", name: "Strip face", of: "pieces", what: "Face" }]);
  });

  test("a place is filled once: what is poured again is poured into another one like it", () => {
    const poured = documentOf({
      places: [{ id: "cage", ways: [{ id: "top" }] }],
      pieces: [{ id: "slab", fills: ["cage"] }],
      steps: [
        { id: "tie", place: "cage", reaches: [{ place: "cage" }] },
        { id: "cast", place: "cage", puts: ["slab"], after: ["tie"] },
      ],
    });
    const again = docOf(duplicate(poured, steps("tie", "cast")), poured);
    expect(member(again, "pieces", "slab-2")?.fills).toEqual(["cage-2"]);
    expect(member(again, "steps", "tie-2")).toMatchObject({ place: "cage-2", reaches: [{ place: "cage-2" }] });
    expect(docOf(duplicate(poured, steps("tie")), poured).places).toHaveLength(1);
  });

  test("nothing chosen, nothing made", () => {
    expect(duplicate(document, steps("nothing")).edits).toEqual([]);
    expect(clip(document, [])).toBe(null);
  });
});

describe("into another build", () => {
  const other = documentOf({ id: "other-build", steps: [{ id: "tie", name: "Tie the mat" }] });
  const part = readClip(clipText(clip(document, steps("tie", "set"))!))!;
  const result = paste(other, part);
  const made = docOf(result, other);

  test("goes through text unchanged", () => expect(part).toEqual(clip(document, steps("tie", "set"))));

  test("reads; places come along with the places their ways lead through, the rest is told by name", () => {
    expect(stops(made)).toEqual([]);
    expect(made.places?.map(({ id }) => id)).toEqual(["cage", "yard"]);
    expect(member(made, "steps", "tie-2")).toMatchObject({ name: "Tie bars", place: "cage", needs: [] });
    expect(result.leftBehind.map(({ name, of, what }) => [name, of, what])).toEqual([
      ["Face", "pieces", "Guy"],
      ["Tie bars", "deliveries", "Bars"],
      ["Set face 2", "calendars", "Crew"],
      ["Set face 2", "equipment", "Mixer"],
    ]);
    expect(member(made, "pieces", "face")).toMatchObject({ heldBy: [["brace"]] });
  });

  test("dates of their own stay behind, and that is said", () => {
    expect(member(made, "steps", "set")).not.toHaveProperty("notBefore");
    expect(result.datesLeft).toBe(true);
  });

  test("a place the build has is used, not made twice", () => {
    const again = paste(made, part);
    expect(again.made.filter(({ list }) => list === "places")).toEqual([]);
  });
});

describe("groups and pours", () => {
  const grouped = documentOf({
    places: [{ id: "hole", name: "Hole", ways: [{ id: "top" }] }],
    pieces: [{ id: "tube", name: "Tube", closes: ["hole.top"] }],
    steps: [
      { id: "dig", name: "Dig", place: "hole", work: "1 h" },
      { id: "form", name: "Form", puts: ["tube"], work: "1 h", after: ["dig"] },
      { id: "cast", name: "Cast", work: "1 h", after: ["form"] },
      { id: "load", name: "Load", work: "1 h", after: ["cast#2"] },
    ],
    waits: [{ id: "cure", from: "cast", to: "load", least: "70 % of cast#1" }],
    groups: [
      {
        id: "piers",
        name: "Piers",
        count: 2,
        members: ["hole", "tube", "dig", "form", "cast"],
        differences: { "2": { dig: { work: "5 h" } } },
      },
    ],
    pours: [1, 2].map((copy) => ({
      id: `pour-${copy}`,
      step: `cast#${copy}`,
      mix: { strength: "3000 psi" },
      elements: [{ id: "pier", shape: { kind: "pier", long: "1 ft", wide: "1 ft", high: "3 ft" }, pieces: [`tube#${copy}`] }],
      breaks: [{ at: "2027-06-01", strength: "2500 psi" }],
    })),
  });

  test("the fixture reads", () => expect(stops(grouped)).toEqual([]));

  test("one of a group's steps joins the group", () => {
    const made = docOf(duplicate(grouped, steps("form#2")), grouped);
    expect(stops(made)).toEqual([]);
    expect(made.groups?.[0]?.members).toEqual(["hole", "tube", "dig", "form", "cast", "tube-2", "form-2"]);
  });

  test("all of its steps are a second group, with what each copy has of its own and a pour each", () => {
    const result = duplicate(grouped, steps("dig", "form", "cast"));
    const made = docOf(result, grouped);
    expect(stops(made)).toEqual([]);
    expect(member(made, "groups", "piers-2")).toEqual({
      id: "piers-2",
      name: "Piers 2",
      count: 2,
      members: ["hole-2", "tube-2", "dig-2", "form-2", "cast-2"],
      differences: { "2": { "dig-2": { work: "5 h" } } },
    });
    const pours = made.pours?.slice(2).map(({ step, elements, breaks }) => [step, (elements as { pieces: string[] }[])[0]?.pieces, breaks]);
    expect(pours).toEqual([
      ["cast-2#1", ["tube-2#1"], undefined],
      ["cast-2#2", ["tube-2#2"], undefined],
    ]);
    expect(member(made, "places", "hole-2")).toBeDefined();
  });

  test("some of them stand alone in another build, with one pour", () => {
    const made = docOf(paste(documentOf({ id: "elsewhere" }), clip(grouped, steps("cast"))!), documentOf({ id: "elsewhere" }));
    expect(stops(made)).toEqual([]);
    expect(made.pours?.map(({ step }) => step)).toEqual(["cast"]);
  });
});

describe("any text", () => {
  test.each([
    ["no JSON", "batterboard-part"],
    ["a number", "7"],
    ["a build", JSON.stringify(document)],
    ["another kind", JSON.stringify({ "batterboard-part": 2, members: {} })],
    ["nothing in it", JSON.stringify({ "batterboard-part": 1, members: { steps: [{ name: "no id" }, { id: "Not An Id" }] } })],
    ["no lists", JSON.stringify({ "batterboard-part": 1, members: [1] })],
    ["too long", `{"batterboard-part":1,"members":{"steps":[{"id":"a","notes":"${"x".repeat(5_000_001)}"}]}}`],
  ])("%s is no part", (_, text) => expect(readClip(text)).toBe(null));

  test("members of the same id count once, keys of JavaScript's own are keys like any other", () => {
    const part = readClip(
      '{"batterboard-part":1,"members":{"steps":[{"id":"a","__proto__":{"x":1}},{"id":"a"}],"__proto__":[{"id":"b"}]},"within":7}',
    )!;
    expect(part.members.steps).toHaveLength(1);
    const made = docOf(paste(document, part));
    expect(JSON.stringify(member(made, "steps", "a"))).toBe('{"id":"a","__proto__":{"x":1}}');
    expect(({} as { x?: unknown }).x).toBeUndefined();
  });
});
