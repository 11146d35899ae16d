import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { siteTime } from "../../core/clock";
import { apply } from "../../core/edit";
import { plan } from "../../core/plan";
import { laneAt, laneNext, moveStep, type StepAim } from "./step-move";

const document = documentOf({
  places: [
    { id: "pit", name: "Pit", ways: [{ id: "top" }] },
    { id: "yard", name: "Yard", ways: [{ id: "gate" }] },
    { id: "hole", ways: [{ id: "top" }] },
  ],
  steps: [
    { id: "dig", name: "Dig", place: "pit", work: "4 h" },
    { id: "held", name: "Held", work: "2 h", notBefore: "2027-04-03" },
    { id: "fixed", name: "Fixed", work: "2 h", fixed: "2027-04-10T13:00" },
    { id: "did", work: "2 h", done: { start: "2027-03-06T08:00", finish: "2027-03-06T10:00" } },
    { id: "bore", name: "Bore", place: "hole", work: "2 h", notBefore: "2027-05-01" },
  ],
  groups: [{ id: "piers", count: 2, members: ["hole", "bore"] }],
});
const build = readDocument(document).build!;
const time = siteTime(build.site.zone, build.start);
const made = plan(build);
const move = (id: string, aim: Partial<StepAim>) => moveStep(build, made, time, id, { date: null, place: null, fixed: false, ...aim });

describe("to another day", () => {
  test("later: not before it", () => {
    expect(move("dig", { date: "2027-03-14" })).toMatchObject({
      edits: [{ path: ["steps", "id=dig", "notBefore"], value: "2027-03-14" }],
      words: "move Dig to Sun 14 Mar or later",
    });
  });

  test("earlier: as far as a date of its own holds it, down to as early as it can be", () => {
    expect(move("held", { date: "2027-03-20" })?.edits).toEqual([{ path: ["steps", "id=held", "notBefore"], value: "2027-03-20" }]);
    expect(move("held", { date: "2027-01-01" })).toMatchObject({
      edits: [{ path: ["steps", "id=held", "notBefore"] }],
      words: "move Held to as early as it can be",
    });
    expect(move("dig", { date: "2027-03-01" })?.edits).toEqual([]);
  });

  test("where nothing of its own holds it, it stays and that is told", () => {
    const late = plan(readDocument(apply(document, [{ path: ["steps", "id=dig", "after"], value: ["held"] }]).document).build!);
    const other = readDocument(apply(document, [{ path: ["steps", "id=dig", "after"], value: ["held"] }]).document).build!;
    expect(moveStep(other, late, time, "dig", { date: "2027-03-07", place: null, fixed: false })).toEqual({
      edits: [],
      words: "leave Dig",
      asEarlyAsItCan: true,
    });
  });

  test("fixed to the day, on purpose or because it is; its time of day stays", () => {
    expect(move("dig", { date: "2027-03-20", fixed: true })?.edits).toEqual([{ path: ["steps", "id=dig", "fixed"], value: "2027-03-20" }]);
    expect(move("fixed", { date: "2027-04-17" })).toMatchObject({
      edits: [{ path: ["steps", "id=fixed", "fixed"], value: "2027-04-17T13:00" }],
      words: "move Fixed to Sat 17 Apr exactly",
    });
    expect(move("held", { date: "2027-03-20", fixed: true })?.edits).toEqual([
      { path: ["steps", "id=held", "fixed"], value: "2027-03-20" },
      { path: ["steps", "id=held", "notBefore"] },
    ]);
  });

  test("a done step, a step that is not there, a date that is none", () => {
    expect(move("did", { date: "2027-03-20" })).toBeNull();
    expect(move("nothing", { date: "2027-03-20" })).toBeNull();
    expect(move("dig", { date: "2027-02-30" })?.edits).toEqual([]);
  });
});

test("to another place, of one copy only, and both at once; each reads", () => {
  expect(move("dig", { place: "yard", date: "2027-03-13" })).toMatchObject({
    edits: [
      { path: ["steps", "id=dig", "notBefore"], value: "2027-03-13" },
      { path: ["steps", "id=dig", "place"], value: "yard" },
    ],
    words: "move Dig to Sat 13 Mar or later, to Yard",
  });
  const { edits } = move("bore#2", { place: "yard", date: "2027-01-01" })!;
  const moved = readDocument(apply(document, edits).document).build!;
  const bore = (id: string) => moved.steps[moved.at.step.get(id as never)!];
  expect([bore("bore#1")?.place, bore("bore#1")?.notBefore]).toEqual(["hole#1", "2027-05-01"]);
  expect([bore("bore#2")?.place, bore("bore#2")?.notBefore]).toEqual(["yard", null]);
  expect(move("dig", { place: "" })?.words).toBe("move Dig to no one place");
  expect(move("dig", { place: "pit" })?.edits).toEqual([]);
});

test("lanes by where they stand, whatever their order", () => {
  const lanes = [
    { key: "low", place: 0, y0: 50, y1: 90 },
    { key: "none", place: -1, y0: 90, y1: 99 },
    { key: "high", place: 1, y0: 0, y1: 50 },
  ];
  expect(laneAt(lanes, 50)?.place).toBe("low");
  expect(laneAt(lanes, 95)?.place).toBe("");
  expect(laneAt(lanes, 99)).toBeNull();
  expect(laneNext(lanes, "low", -1)?.key).toBe("high");
  expect(laneNext(lanes, "high", -1)).toBeNull();
});
