import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { bench } from "./bench";
import type { Maker } from "./candidate";
import { cleanOut } from "./clean-out";
import { downBetween } from "./down-between";
import { later, leaveFaceOff } from "./face-off";
import { dropWait, secondInspection, untick } from "./others";

const hour = { is: "1 h", from: "own guess" };
const one = { hands: [{ role: "hands", number: 1 }] };

const { build } = smallCase({
  places: [
    place("cage", { id: "side", passes: ["person"] }),
    place("pit", { id: "other-way", passes: ["sight"] }),
    place("yard", { id: "clean-out", passes: ["sight"] }),
  ],
  pieces: [
    { id: "panel", name: "Panel", closes: ["cage.side"] },
    { id: "concrete", fills: ["cage"] },
    { id: "plug", closes: ["yard.clean-out"], fills: ["yard"] },
    { id: "old", closes: ["cage.side"], fromStart: true },
  ],
  steps: [
    step("set", { puts: ["panel"], hands: 2, place: "yard", reaches: [{ place: "yard", need: "person" }] }),
    step("wash", { place: "cage", reaches: [{ place: "cage" }], after: ["set"] }),
    step("strip", { takes: ["panel"] }),
    step("pour", { puts: ["concrete"] }),
    step("look", { sort: "inspection", reaches: [{ place: "cage", need: "sight" }], holdPoint: { places: ["cage", "yard"] } }),
    step("mend", { reaches: [{ place: "cage", need: "arm", depth: "200 mm" }] }),
    step("dig", { reaches: [{ place: "pit" }] }),
    step("plug-in", { puts: ["plug"] }),
    step("try", { trial: { decides: ["pour", "dig"], what: "mix" }, after: ["set"] }),
  ],
  waits: [{ id: "cure", from: "pour", to: "strip", least: "2 d", why: "" }],
});
const made = (maker: Maker, ...because: Statement[]) => maker({ build, because });

const closes: Statement = { rule: "closes", piece: "panel", place: "cage", way: "cage.side" };
const fills: Statement = { rule: "fills", piece: "concrete", place: "cage" };
const reach: Statement = { rule: "reach", step: "wash", id: "1", place: "cage", need: "person" };
const point: Statement = { rule: "hold-point", step: "look", place: "cage" };
const plain: Statement = { rule: "wait", id: "set>wash", step: "set", other: "wash", detail: { plain: true } };

describe("taking a piece down in between", () => {
  test("two new steps and a second piece; who took the first down takes the second", () => {
    expect(made(downBetween, closes, reach)).toEqual([
      {
        kind: "down-between",
        detail: { piece: "panel", step: "wash" },
        edits: [
          {
            path: ["steps", "id=panel-off"],
            value: {
              id: "panel-off",
              name: "Take the panel down",
              place: "yard",
              hands: [{ role: "hands", number: 2 }],
              work: hour,
              takes: ["panel"],
              after: ["set"],
            },
          },
          { path: ["pieces", "id=panel-again"], value: { id: "panel-again", name: "Panel, again", sort: "other", closes: ["cage.side"] } },
          {
            path: ["steps", "id=panel-on-again"],
            value: {
              id: "panel-on-again",
              name: "Put the panel up again",
              place: "yard",
              hands: [{ role: "hands", number: 2 }],
              work: hour,
              reaches: [{ place: "yard", need: "person" }],
              puts: ["panel-again"],
              after: ["wash", "panel-off"],
            },
          },
          { path: ["steps", "id=wash", "after", "id=panel-off"], value: "panel-off" },
          { path: ["steps", "id=strip", "takes", "id=panel"] },
          { path: ["steps", "id=strip", "takes", "id=panel-again"], value: "panel-again" },
        ],
      },
    ]);
  });

  test("not for who puts it up or takes it down, nor of what fills a place or nobody puts up", () => {
    expect(made(downBetween, closes, { ...reach, step: "set" })).toEqual([]);
    expect(made(downBetween, closes, { ...reach, step: "strip" })).toEqual([]);
    expect(made(downBetween, fills, reach)).toEqual([]);
    expect(made(downBetween, { ...closes, piece: "plug" }, reach)).toEqual([]);
    expect(made(downBetween, { ...closes, piece: "old" }, reach)).toEqual([]);
    expect(made(downBetween, { ...closes, piece: "nothing" }, reach)).toEqual([]);
    expect(made(downBetween, closes, { ...reach, step: "nobody" })).toEqual([]);
  });
});

describe("leaving a face off, and putting it up later", () => {
  test("the new step gets where the old one had to, with its hands", () => {
    const [way, ...more] = made(leaveFaceOff, closes, reach);
    expect(more).toEqual([]);
    expect(way?.edits[1]?.value).toEqual({
      id: "panel-later",
      name: "Put up the panel",
      place: "yard",
      hands: [{ role: "hands", number: 2 }],
      work: hour,
      reaches: [{ place: "yard", need: "person" }],
      puts: ["panel"],
      after: ["set", "wash"],
    });
    expect(way?.detail).toEqual({ piece: "panel", step: "set", other: "wash" });
  });

  test("what was asked of the step by name is told when the piece is taken from it", () => {
    const asked: Statement = { rule: "asked", step: "set", other: "wash" };
    expect(made(leaveFaceOff, closes, reach, asked)[0]?.detail).toEqual({ piece: "panel", step: "set", other: "wash", emptied: ["panel"] });
    expect(made(leaveFaceOff, closes, reach, { ...asked, step: "pour" })[0]?.detail).toEqual({
      piece: "panel",
      step: "set",
      other: "wash",
    });
  });

  test("later takes a link of the block away, one candidate each", () => {
    const wait: Statement = { rule: "wait", id: "cure", step: "pour", other: "strip" };
    expect(made(later, closes, reach, plain, wait).map(({ edits }) => edits)).toEqual([
      [{ path: ["steps", "id=wash", "after", "id=set"] }, { path: ["steps", "id=set", "after", "id=wash"], value: "wash" }],
      [{ path: ["waits", "id=cure"] }, { path: ["steps", "id=set", "after", "id=wash"], value: "wash" }],
    ]);
    expect(made(later, fills, reach, plain)[0]?.detail).toEqual({ piece: "concrete", step: "pour", other: "wash" });
    expect(made(later, closes, { ...reach, step: "set" }, plain)).toEqual([]);
    expect(made(leaveFaceOff, fills, reach)).toEqual([]);
    expect(made(leaveFaceOff, closes, { ...reach, step: "set" })).toEqual([]);
  });
});

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

describe("one more way in", () => {
  test("a clean-out where something closes or fills the place, with its cover, on which leans what fills it", () => {
    const arm: Statement = { rule: "reach", step: "mend", id: "1", place: "cage", need: "arm" };
    expect(made(cleanOut, arm)).toEqual([
      {
        kind: "clean-out",
        detail: { place: "cage", step: "mend" },
        edits: [
          {
            path: ["places", "id=cage", "ways", "id=clean-out"],
            value: { id: "clean-out", name: "by the clean-out", passes: ["arm"], depth: "200 mm" },
          },
          {
            path: ["pieces", "id=cage-clean-out-cover"],
            value: { id: "cage-clean-out-cover", name: "Clean-out cover at the cage", sort: "cover", closes: ["cage.clean-out"] },
          },
          {
            path: ["steps", "id=cage-clean-out-shut"],
            value: {
              id: "cage-clean-out-shut",
              name: "Close the clean-out at the cage",
              place: "cage",
              ...one,
              work: hour,
              puts: ["cage-clean-out-cover"],
              after: ["mend"],
            },
          },
          { path: ["steps", "id=pour", "leansOn", "+999"], value: { piece: "cage-clean-out-cover" } },
        ],
      },
    ]);
    expect(made(cleanOut, reach)).toEqual([]);
  });

  test("for an inspection's look too, by a name that is free", () => {
    const [way] = made(cleanOut, { ...point, place: "yard" });
    expect(way?.edits[0]).toEqual({
      path: ["places", "id=yard", "ways", "id=clean-out-2"],
      value: { id: "clean-out-2", name: "by the clean-out", passes: ["sight"] },
    });
    expect(way?.edits.at(-1)).toEqual({ path: ["steps", "id=plug-in", "leansOn", "+999"], value: { piece: "yard-clean-out-2-cover" } });
  });

  test("where nothing closes or fills the place: another way, put up before the work", () => {
    expect(made(cleanOut, { rule: "reach", step: "dig", id: "1", place: "pit", need: "person" })).toEqual([
      {
        kind: "clean-out",
        detail: { place: "pit", step: "dig", open: true },
        edits: [
          {
            path: ["places", "id=pit", "ways", "id=other-way-2"],
            value: { id: "other-way-2", name: "by another way in", passes: ["person"] },
          },
          {
            path: ["pieces", "id=pit-way-in"],
            value: { id: "pit-way-in", name: "Way in to the pit", sort: "scaffold", makes: ["pit.other-way-2"] },
          },
          {
            path: ["steps", "id=pit-way-in-up"],
            value: { id: "pit-way-in-up", name: "Put up a way in to the pit", ...one, work: hour, puts: ["pit-way-in"] },
          },
          { path: ["steps", "id=dig", "after", "id=pit-way-in-up"], value: "pit-way-in-up" },
        ],
      },
    ]);
    expect(made(cleanOut, { rule: "reach", step: "dig", id: "1" })).toEqual([]);
    expect(made(cleanOut, { rule: "reach", step: "dig", id: "1", place: "pit", need: "arm" })).toEqual([]);
  });
});

test("on the bench: what another step closes off must be got to no more, and is done before", () => {
  expect(made(bench, closes, reach)).toEqual([
    {
      kind: "bench",
      detail: { step: "wash", place: "cage", piece: "panel", other: "set" },
      edits: [{ path: ["steps", "id=wash", "reaches", "0"] }, { path: ["steps", "id=set", "after", "id=wash"], value: "wash" }],
    },
  ]);
  expect(made(bench, fills, reach)).toEqual([]);
  expect(made(bench, closes, { ...reach, step: "set" })).toEqual([]);
  expect(made(bench, closes, { ...reach, rule: "off" })).toEqual([]);
  expect(made(bench, closes, { ...point })).toEqual([]);
});
