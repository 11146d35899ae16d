import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { split } from "./split";

const { build } = smallCase({
  places: [place("cage"), place("yard")],
  pieces: [{ id: "panel" }, { id: "lid" }, { id: "prop" }, { id: "slab" }, { id: "gate" }],
  steps: [
    step("set", { work: "3 h", puts: ["panel", "lid"], reaches: [{ place: "yard" }, { place: "cage" }] }),
    step("strip", { work: "3 h", takes: ["panel"], puts: ["prop"], reaches: [{ place: "yard" }] }),
    step("only", { takes: ["lid"] }),
    step("pour", { sort: "pour", work: "3 h", puts: ["slab"], reaches: [{ place: "cage", need: "hose" }], takes: ["prop"] }),
    step("shut", { puts: ["gate"], reaches: [{ place: "cage" }] }),
    step("look", { sort: "inspection", holdPoint: { places: ["cage"] } }),
  ],
});
const made = (...because: Statement[]) => split({ build, because });
const half = { is: "90 min", from: "own guess" };
const one = { hands: [{ role: "hands", number: 1 }] };
const closes = (piece: string): Statement => ({ rule: "closes", piece, place: "cage", way: "cage.door" });

describe("a step that does several things at once", () => {
  test("leaves one of the pieces it puts up, or takes down, to a new step with half of the work", () => {
    expect(made(closes("panel"))).toEqual([
      {
        kind: "split",
        detail: { step: "set", piece: "panel" },
        edits: [
          { path: ["steps", "id=set", "puts", "id=panel"] },
          {
            path: ["steps", "id=set-part"],
            value: {
              id: "set-part",
              name: "set, other part",
              sort: "work",
              place: "yard",
              ...one,
              work: half,
              reaches: [
                { place: "yard", need: "person" },
                { place: "cage", need: "person" },
              ],
              puts: ["panel"],
            },
          },
          { path: ["steps", "id=set", "work"], value: half },
        ],
      },
      {
        kind: "split",
        detail: { step: "strip", piece: "panel" },
        edits: [
          { path: ["steps", "id=strip", "takes", "id=panel"] },
          {
            path: ["steps", "id=strip-part"],
            value: {
              id: "strip-part",
              name: "strip, other part",
              sort: "work",
              place: "yard",
              ...one,
              work: half,
              reaches: [{ place: "yard", need: "person" }],
              takes: ["panel"],
            },
          },
          { path: ["steps", "id=strip", "work"], value: half },
        ],
      },
    ]);
  });

  test("not a pour, which keeps what it places; the part of one that takes a piece down is work", () => {
    expect(made(closes("slab"))).toEqual([]);
    const { build: two } = smallCase({ pieces: [{ id: "a" }, { id: "b" }], steps: [step("pour", { sort: "pour", puts: ["a", "b"] })] });
    expect(split({ build: two, because: [closes("a")] })).toEqual([]);
    const [way] = made(closes("prop")).filter(({ detail }) => detail.step === "pour");
    expect(way?.edits[1]?.value).toMatchObject({ sort: "work", takes: ["prop"] });
  });

  test("not one that does a single thing, unless the block asks something else of it besides", () => {
    expect(made(closes("lid")).map(({ detail }) => detail.step)).toEqual(["set"]);
    expect(made(closes("gate"))).toEqual([]);
    for (const rule of ["reach", "off", "leans", "up-down"]) {
      const ways = made(closes("gate"), { rule, step: "shut", id: "1" });
      expect(ways.map(({ detail }) => detail)).toEqual([{ step: "shut", piece: "gate" }]);
    }
    expect(made(closes("gate"), { rule: "reach", step: "only", id: "1" })).toEqual([]);
    expect(made(closes("gate"), { rule: "wait", step: "shut", other: "look", id: "w" })).toEqual([]);
  });

  test("work at an inspected place stays with the step: the part only sets what closes it", () => {
    const point: Statement = { rule: "hold-point", step: "look", place: "cage" };
    const [way] = made(closes("gate"), point);
    expect(way?.edits[1]?.value).toEqual({
      id: "shut-part",
      name: "shut, other part",
      sort: "work",
      place: "cage",
      ...one,
      work: { is: "30 min", from: "own guess" },
      puts: ["gate"],
    });
    expect(made(closes("gate"), { ...point, place: "yard" })).toEqual([]);
    const [set] = made(closes("panel"), point);
    expect(set?.edits[1]?.value).toMatchObject({ reaches: [{ place: "yard", need: "person" }] });
  });

  test("an inspected place that is only one of several the step may get to counts as inspected", () => {
    const { build: either } = smallCase({
      places: [place("cage"), place("yard"), place("pit")],
      pieces: [{ id: "gate" }, { id: "lid" }],
      steps: [
        step("look", { sort: "inspection", holdPoint: { places: ["cage"] } }),
        step("shut", { sort: "check", puts: ["gate"], reaches: [{ any: [{ place: "yard" }, { place: "cage" }] }, { place: "pit" }] }),
      ],
    });
    const because: Statement[] = [closes("gate"), { rule: "hold-point", step: "look", place: "cage" }];
    const [way, ...more] = split({ build: either, because });
    expect([way?.detail, more]).toEqual([{ step: "shut", piece: "gate" }, []]);
    expect(way?.edits[1]?.value).toMatchObject({ id: "shut-part", sort: "check", reaches: [{ place: "pit", need: "person" }] });
  });

  test("a part that had to get nowhere still must not", () => {
    const { build: bare } = smallCase({
      pieces: [
        { id: "a", fromStart: true },
        { id: "b", fromStart: true },
      ],
      steps: [step("off", { takes: ["a", "b"] })],
    });
    const [way] = split({ build: bare, because: [closes("a")] });
    expect(Object.keys(way?.edits[1]?.value as object)).toEqual(["id", "name", "sort", "hands", "work", "takes"]);
  });

  test("leaves one of its places to the new step; who waits at the far end is told", () => {
    const reach: Statement = { rule: "reach", step: "set", id: "2", place: "cage", need: "person" };
    expect(made(reach)).toEqual([
      {
        kind: "split",
        detail: { step: "set", other: "" },
        edits: [
          { path: ["steps", "id=set", "reaches", "1"] },
          {
            path: ["steps", "id=set-part"],
            value: {
              id: "set-part",
              name: "set, other part",
              sort: "work",
              place: "yard",
              ...one,
              work: half,
              reaches: [{ place: "cage", need: "person" }],
            },
          },
          { path: ["steps", "id=set", "work"], value: half },
        ],
      },
    ]);
    expect(made(reach, { rule: "wait", id: "w", step: "set", other: "look" })[0]?.detail).toEqual({ step: "set", other: "look" });
    expect(made(reach, { rule: "wait", id: "w", step: "pour", other: "set" })[0]?.detail).toEqual({ step: "set", other: "pour" });
    expect(made(reach, { rule: "wait", id: "w", step: "pour", other: "look" })[0]?.detail).toEqual({ step: "set", other: "" });
    expect(made({ ...reach, id: "3" })).toEqual([]);
    expect(made({ ...reach, rule: "off" })).toEqual([]);
    expect(made({ ...reach, step: "strip", id: "1" })).toEqual([]);
  });

  test("is not split where it was asked about by name", () => {
    expect(made(closes("panel"), { rule: "asked", step: "set", other: "look" }).map(({ detail }) => detail.step)).toEqual(["strip"]);
    expect(made(closes("panel"), { rule: "asked", step: "look", other: "strip" }).map(({ detail }) => detail.step)).toEqual(["set"]);
  });

  test("is told once for each piece, also where the block names it among the holders", () => {
    const held: Statement = { rule: "held", piece: "slab", pieces: ["panel", "panel"] };
    expect(made(held, closes("panel")).map(({ detail }) => `${detail.step} ${detail.piece}`)).toEqual(["set panel", "strip panel"]);
    expect(made(closes("nothing"))).toEqual([]);
  });
});
