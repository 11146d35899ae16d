import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, group, ownPlaces, type Ref, ungroup } from ".";

const steps = (...ids: string[]): Ref[] => ids.map((id) => ({ list: "steps", id }));
type Doc = Record<string, Record<string, unknown>[]>;
const stops = (made: unknown) => readDocument(made).findings.filter(({ severity }) => severity === "stop");

const document = documentOf({
  places: [
    { id: "hole", ways: [{ id: "top" }] },
    { id: "yard", ways: [{ id: "gate" }] },
  ],
  pieces: [{ id: "tube", closes: ["hole.top"], heldBy: [["stake"]] }, { id: "stake" }],
  steps: [
    { id: "dig", name: "Dig", place: "hole", reaches: [{ place: "hole" }], work: "1 h" },
    { id: "form", name: "Form", place: "yard", puts: ["tube", "stake"], after: ["dig"], work: "2 h" },
    { id: "strip", name: "Strip", takes: ["tube"], place: "yard", work: "1 h" },
    { id: "last", name: "Last", after: ["strip"], reaches: [{ place: "yard" }], work: "1 h" },
    { id: "cast", work: "1 h", pour: { strength: "20 MPa" } },
    { id: "seen", sort: "inspection", work: "1 h", hands: 0 },
    { id: "did", work: "1 h", done: { start: "2027-03-06T08:00", finish: "2027-03-06T09:00" } },
  ],
  waits: [
    { id: "set", from: "form", to: "strip", least: "24 h" },
    { id: "rest", from: "strip", to: "last", least: "2 d" },
  ],
  bookings: [{ id: "visit", step: "seen" }],
});

describe("many alike", () => {
  const made = group(document, [...steps("dig", "form", "strip"), { list: "places", id: "hole" }], 3, "Piers");
  if ("refused" in made) throw new Error(made.refused);
  const grouped = apply(document, made.edits).document as Doc;

  test("has its steps, what they put up, the waits among them and the places chosen, and reads", () => {
    expect(grouped.groups).toEqual([
      { id: "piers", name: "Piers", count: 3, members: ["hole", "tube", "stake", "dig", "form", "strip", "set"] },
    ]);
    expect(stops(grouped)).toEqual([]);
    expect(readDocument(grouped).build?.steps).toHaveLength(7 + 2 * 3);
  });

  test("a place that nothing else speaks of may be each copy's own", () => {
    expect(ownPlaces(document, steps("dig", "form", "strip"))).toEqual(["hole"]);
    expect(ownPlaces(document, steps("dig"))).toEqual([]);
  });

  test.each([
    [["cast"], 2, "pour"],
    [["seen"], 2, "booked"],
    [["did"], 2, "done"],
    [["strip"], 2, "takes"],
    [[], 2, "nothing"],
    [["dig"], 1, "count"],
    [["dig"], 2.5, "count"],
    [["dig"], 201, "count"],
  ])("%j times %d is refused: %s", (ids, count, refused) => expect(group(document, steps(...ids), count, "x")).toMatchObject({ refused }));

  test("what is in a group already is refused", () => {
    expect(group(grouped, steps("dig", "last"), 2, "x")).toMatchObject({ refused: "grouped", step: "dig" });
  });

  test("written out it says the same: as many steps, pieces, places and waits, in the same relations", () => {
    const different = apply(grouped, [
      {
        path: ["groups", "id=piers", "differences"],
        value: { "2": { dig: { work: "5 h", place: null }, strip: { done: { start: "2027-03-06T08:00", finish: "2027-03-06T09:00" } } } },
      },
      { path: ["steps", "id=last", "after"], value: ["strip", "strip#2", "dig#3"] },
      {
        path: ["kept"],
        value: {
          engine: "1",
          rung: 1,
          finish: "2027-06-01",
          steps: { "dig#2": ["2027-03-06", "2027-03-07"], last: ["2027-03-06", "2027-03-07"] },
        },
      },
      { path: ["served"], value: { engine: "1", rung: 1000, steps: ["dig#2", "dig#1", "last"] } },
    ]).document;
    const { document: out, inverse } = apply(different, ungroup(different, "piers"));
    const made = out as Doc;
    expect(JSON.stringify(apply(out, inverse).document)).toBe(JSON.stringify(different));
    const [before, after] = [readDocument(different), readDocument(out)];
    expect(after.findings.filter(({ severity }) => severity === "stop")).toEqual([]);
    const name = (id: string) => id.replace(/#(\d+)$/, (_, copy) => (copy === "1" ? "" : `-${copy}`));
    const pairs = (build: typeof before.build) =>
      build?.waits.map(({ from, to, least }) => [name(from), name(to), least?.text ?? ""].join(" ")).sort();
    expect(pairs(after.build)).toEqual(pairs(before.build));
    const said = (build: typeof before.build) =>
      build?.steps
        .map(({ id, place, puts, takes, work, done }) => [
          name(id),
          place && name(place),
          puts.map(name),
          takes.map(name),
          work.likely_min,
          done,
        ])
        .sort();
    expect(said(after.build)).toEqual(said(before.build));
    expect(made.steps?.map((step) => step.name)).toContain("Dig 3");
    expect(made.groups).toEqual([]);
    expect(Object.keys((out as { kept: { steps: object } }).kept.steps)).toEqual(["dig-2", "last"]);
    expect((out as { served: { steps: unknown } }).served.steps).toEqual(["dig-2", "dig", "last"]);
  });

  test("no group, nothing to write out", () => expect(ungroup(document, "piers")).toEqual([]));
});
