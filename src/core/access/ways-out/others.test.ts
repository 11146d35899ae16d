import { describe, expect, test } from "vitest";
import { build, closes, hour, made, one, plain, point, reach } from "../../../../test/fixtures/shut-cage";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { dropWait, secondInspection, tick, untick } from "./others";

describe("a second inspection", () => {
  test("looks after the work, those first that the block speaks of; the first stops other places still", () => {
    const ways = made(secondInspection, point, { rule: "wait", id: "look>mend", step: "look", other: "mend" });
    expect(ways.map(({ detail }) => detail)).toEqual([
      { step: "look", place: "cage", other: "mend" },
      { step: "look", place: "cage", other: "wash" },
    ]);
    expect(ways[0]?.edits).toEqual([
      { path: ["steps", "id=look", "holdPoint", "places"], value: ["yard"] },
      {
        path: ["steps", "id=look-second"],
        value: {
          id: "look-second",
          name: "look, once more",
          sort: "inspection",
          place: "cage",
          ...one,
          work: hour,
          reaches: [{ place: "cage", need: "sight" }],
          holdPoint: { places: ["cage"] },
          after: ["look", "mend"],
        },
      },
    ]);
    expect(made(secondInspection, { rule: "hold-point", step: "look" })).toEqual([]);
    expect(made(secondInspection, { rule: "hold-point", step: "nobody", place: "cage" })).toEqual([]);
  });

  test("a hold point of one place goes from the first altogether; whoever inspects does not come back to its own work", () => {
    const alone = smallCase({
      places: [place("pit")],
      steps: [
        step("look", { sort: "inspection", reaches: [{ place: "pit" }], holdPoint: { places: ["pit"] } }),
        step("mend", { reaches: [{ place: "pit" }] }),
      ],
    }).build;
    const ways = secondInspection({ build: alone, because: [{ rule: "hold-point", step: "look", place: "pit" }] });
    expect(ways.map(({ detail }) => detail)).toEqual([{ step: "look", place: "pit", other: "mend" }]);
    expect(ways[0]?.edits[0]).toEqual({ path: ["steps", "id=look", "holdPoint"] });
  });
});

test("what a block says comes too late may have been done before: ticked when the other was begun", () => {
  const ticked = smallCase({
    places: [place("pit")],
    steps: [
      step("look", { reaches: [{ place: "pit" }] }),
      step("set", { done: { start: "2027-03-06T08:00", finish: "2027-03-06T10:00" } }),
    ],
  }).build;
  expect(tick({ build: ticked, because: [{ rule: "done", step: "set", other: "look" }] })).toEqual([
    {
      kind: "tick",
      detail: { step: "look", other: "set" },
      edits: [{ path: ["steps", "id=look", "done"], value: { start: "2027-03-06T08:00", finish: "2027-03-06T08:00" } }],
    },
  ]);
  expect(made(tick, { rule: "done", step: "set" }, plain)).toEqual([]);
});

test("ticks of the block are taken back, each once", () => {
  const done: Statement = { rule: "done", step: "set", other: "wash" };
  expect(made(untick, done, { ...done, other: "mend" }, { ...done, step: "pour" }, plain)).toEqual([
    { kind: "untick", detail: { step: "set" }, edits: [{ path: ["steps", "id=set", "done"] }] },
    { kind: "untick", detail: { step: "pour" }, edits: [{ path: ["steps", "id=pour", "done"] }] },
  ]);
});

describe("dropping what is written down", () => {
  test("a wait, a plain link, what a trial decides, a choice", () => {
    const trial: Statement = { rule: "wait", id: "try>pour", step: "try", other: "pour", detail: { plain: true } };
    expect(made(dropWait, { rule: "wait", id: "cure", step: "pour", other: "strip" }, plain, trial, { rule: "choice", id: "c" })).toEqual([
      { kind: "drop-wait", detail: { wait: "cure", step: "pour", other: "strip" }, edits: [{ path: ["waits", "id=cure"] }] },
      {
        kind: "drop-wait",
        detail: { wait: "set>wash", step: "set", other: "wash" },
        edits: [{ path: ["steps", "id=wash", "after", "id=set"] }],
      },
      {
        kind: "drop-wait",
        detail: { wait: "try>pour", step: "try", other: "pour" },
        edits: [{ path: ["steps", "id=pour", "after", "id=try"] }, { path: ["steps", "id=try", "trial", "decides", "id=pour"] }],
      },
      { kind: "drop-wait", detail: { choice: "c" }, edits: [{ path: ["choices", "id=c"] }] },
    ]);
    expect(made(dropWait, reach, closes)).toEqual([]);
    // What concrete has to carry is never proposed to be done without.
    for (const kind of ["strength", "warm"] as const) {
      const cure = {
        ...build.waits[0]!,
        id: "cure" as never,
        least: { on: { kind, pour: "pour" as never }, amount: 700, text: "", from: null },
      };
      expect(
        dropWait({ build: { ...build, waits: [cure] }, because: [{ rule: "wait", id: "cure", step: "pour", other: "strip" }] }),
      ).toEqual([]);
    }
    const written: Statement = { rule: "wait", id: "try>strip", step: "try", other: "strip", detail: { plain: true } };
    expect(made(dropWait, written)[0]?.edits).toEqual([{ path: ["steps", "id=strip", "after", "id=try"] }]);
  });
});
