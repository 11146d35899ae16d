import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, split } from ".";

const document = documentOf({
  places: [{ id: "pit", ways: [{ id: "top" }] }],
  pieces: [
    { id: "cover", closes: ["pit.top"], size: { long: "1 m", wide: "1 m", thick: "18 mm" } },
    { id: "old", fromStart: true },
  ],
  deliveries: [{ id: "boards" }],
  steps: [
    { id: "dig", work: "1 h" },
    {
      id: "lid",
      name: "Make and set the lid",
      work: { is: "5 h 1 min", from: "own guess" },
      place: "pit",
      reaches: [
        { place: "pit", need: "unit", piece: "cover" },
        { place: "pit", need: "arm" },
      ],
      after: ["dig"],
      needs: ["boards"],
      puts: ["cover"],
      takes: ["old"],
      notBefore: "2027-04-01",
      deadline: "2027-05-01",
      zz: { own: 1 },
    },
    { id: "fill", after: ["lid", "dig"], work: "2 h" },
    { id: "pour", work: "2 h", pour: { strength: "20 MPa" } },
    { id: "rounds", work: "2 h", trial: { rounds: 2, decides: ["fill"] } },
    { id: "did", work: "2 h", done: { start: "2027-03-06T08:00", finish: "2027-03-06T10:00" } },
    { id: "look", sort: "inspection", work: "1 h", hands: 0 },
    { id: "many", name: "Bore", work: { low: "1 h", likely: "2 h", high: "5 h" } },
  ],
  waits: [
    { id: "w1", from: "lid", to: "fill", least: "1 d" },
    { id: "w2", from: "lid", fromEnd: "start", to: "fill", most: "60 d" },
    { id: "w3", from: "dig", to: "lid", toEnd: "finish", least: "1 h" },
    { id: "w4", from: "dig", to: "lid" },
  ],
  choices: [{ id: "c", either: [{ waits: [{ from: "lid", to: "fill" }] }, { waits: [{ from: "fill", to: "lid" }] }] }],
  groups: [{ id: "g", count: 2, members: ["many"], differences: { "2": { many: { work: "3 h", deadline: "2027-06-01" } } } }],
});
type Doc = Record<string, Record<string, unknown>[]>;

describe("a step in two", () => {
  const result = split(document, "lid", "Set the lid");
  if ("refused" in result) throw new Error(result.refused);
  const { document: after, inverse } = apply(document, result.edits);
  const made = after as Doc;
  const step = (id: string) => made.steps?.find((one) => one.id === id);

  test("reads and comes back whole", () => {
    const { findings } = readDocument(after);
    expect(findings.filter(({ severity }) => severity === "stop")).toEqual([]);
    expect(JSON.stringify(apply(after, inverse).document)).toBe(JSON.stringify(document));
  });

  test("the second comes after the first; work is shared, its end has what it puts up and takes down", () => {
    expect(step("lid")).toEqual({
      id: "lid",
      name: "Make and set the lid",
      work: { is: "2 h 30 min", from: "own guess" },
      place: "pit",
      reaches: [{ place: "pit", need: "arm" }],
      after: ["dig"],
      needs: ["boards"],
      notBefore: "2027-04-01",
      zz: { own: 1 },
    });
    expect(step("lid-second")).toEqual({
      id: "lid-second",
      name: "Set the lid",
      work: { is: "2 h 31 min", from: "own guess" },
      place: "pit",
      reaches: [
        { place: "pit", need: "unit", piece: "cover" },
        { place: "pit", need: "arm" },
      ],
      after: ["lid"],
      puts: ["cover"],
      takes: ["old"],
      deadline: "2027-05-01",
      zz: { own: 1 },
    });
  });

  test("what waits for its end waits for the second, what counts from its start stays with the first", () => {
    expect(step("fill")?.after).toEqual(["lid-second", "dig"]);
    expect(made.waits?.map(({ from, to }) => [from, to])).toEqual([
      ["lid-second", "fill"],
      ["lid", "fill"],
      ["dig", "lid-second"],
      ["dig", "lid"],
    ]);
    const either = made.choices?.[0]?.either as { waits: { from: string; to: string }[] }[];
    expect(either.map(({ waits }) => [waits[0]?.from, waits[0]?.to])).toEqual([
      ["lid-second", "fill"],
      ["fill", "lid"],
    ]);
  });

  test("every copy of a group is split, with what one has of its own", () => {
    const many = split(document, "many#2", "Bore, second part");
    if ("refused" in many) throw new Error(many.refused);
    const whole = apply(document, many.edits).document as Doc;
    expect(whole.groups?.[0]).toEqual({
      id: "g",
      count: 2,
      members: ["many", "many-second"],
      differences: { "2": { many: { work: "1 h 30 min" }, "many-second": { work: "1 h 30 min", deadline: "2027-06-01" } } },
    });
    const { build } = readDocument(whole);
    const work = (id: string) => build?.steps[build.at.step.get(id as never) ?? -1]?.work;
    expect(work("many#1")).toEqual({ low_min: 30, likely_min: 60, high_min: 150 });
    expect(work("many-second#2")?.likely_min).toBe(90);
  });

  test.each([
    ["pour", "pour"],
    ["rounds", "rounds"],
    ["did", "done"],
    ["look", "inspection"],
    ["nobody", "gone"],
  ])("%s is not split: %s", (id, refused) => expect(split(document, id, "x")).toEqual({ refused }));
});
