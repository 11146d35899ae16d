import { describe, expect, test } from "vitest";
import { closes, fills, hour, made, plain, point, reach } from "../../../../test/fixtures/shut-cage";
import type { Statement } from "../../base";
import { bench } from "./bench";
import { downBetween } from "./down-between";
import { later, leaveFaceOff } from "./face-off";

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
