import { expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import { Site } from "./site";

const { build } = smallCase({
  places: [
    { id: "yard", ways: [{ id: "gate", passes: ["person"] }] },
    {
      id: "cage",
      ways: [
        { id: "top", passes: ["hose"] },
        { id: "side", passes: ["person"], through: "yard" },
        { id: "slot", passes: ["arm"], depth: "300 mm", through: "pit" },
      ],
    },
    { id: "pit", ways: [{ id: "hole", passes: ["person"], through: "cage" }] },
    { id: "own", ways: [{ id: "loop", passes: ["person"], through: "own" }] },
    { id: "end", ways: [{ id: "door", passes: ["person"], through: "own" }] },
  ],
  pieces: [
    { id: "face", closes: ["cage.side", "pit.hole"], fills: ["yard"] },
    { id: "ladder", makes: ["cage.top", "cage.side"] },
    { id: "concrete", fills: ["cage", "yard"], closes: ["cage.side"] },
  ],
  steps: [step("a")],
});
const site = new Site(build);
const [yard, cage, pit, own, end] = [0, 1, 2, 3, 4] as const;

test("ways are numbered through all places, and pieces stand at what they close, make and fill", () => {
  expect(site.ways.map((w) => w.full)).toEqual(["yard.gate", "cage.top", "cage.side", "cage.slot", "pit.hole", "own.loop", "end.door"]);
  expect([...site.firstWay]).toEqual([0, 1, 4, 5, 6, 7]);
  expect([...site.through]).toEqual([-1, -1, yard, pit, cage, own, own]);
  expect(site.closers).toEqual([[], [], [0, 2], [], [0], [], []]);
  expect(site.makers).toEqual([[], [1], [1], [], [], [], []]);
  expect(site.fillers).toEqual([[0, 2], [2], [], [], []]);
});

test("equal needs are one, and pass the same ways, told by their numbers", () => {
  const person = site.needOf({ kind: "person" });
  const near = site.needOf({ kind: "arm", depth_mm: 200 });
  const far = site.needOf({ kind: "arm", depth_mm: 400 });
  expect([site.needOf({ kind: "person" }), site.needOf({ kind: "arm", depth_mm: 200 })]).toEqual([person, near]);
  expect(new Set([person, near, far]).size).toBe(3);
  expect(site.needs[far]).toEqual({ kind: "arm", depth_mm: 400 });
  expect([person, near, far].map((need) => site.passing(cage, need))).toEqual([[2], [2, 3], [2]]);
  expect([yard, pit, end].map((place) => site.passing(place, person))).toEqual([[0], [4], [6]]);
  expect(site.passing(cage, person)).toBe(site.passing(cage, person));
});

test("places that lead through each other, or through themselves, are in a ring", () => {
  expect([yard, cage, pit, own, end].map((q) => site.inRing(q))).toEqual([false, true, true, true, false]);
  expect([site.inOneRing(cage, pit), site.inOneRing(pit, cage), site.inOneRing(own, own)]).toEqual([true, true, true]);
  expect([site.inOneRing(cage, yard), site.inOneRing(end, own)]).toEqual([false, false]);
});

test("a piece that names a way or a place twice stands there once", () => {
  const twice = new Site(
    smallCase({
      places: [{ id: "yard", ways: [{ id: "gate", passes: ["person"] }] }],
      pieces: [{ id: "face", closes: ["yard.gate", "yard.gate"], makes: ["yard", "yard.gate"], fills: ["yard", "yard"] }],
      steps: [step("a")],
    }).build,
  );
  expect([twice.closers, twice.makers, twice.fillers, twice.needs]).toEqual([[[0]], [[0]], [[0]], []]);
});

test("the ways of the place that comes next in the document are not its own", () => {
  const door = { id: "door", passes: ["person"] };
  const line = new Site(
    smallCase({
      places: [
        { id: "a", ways: [door] },
        { id: "b", ways: [{ ...door, through: "a" }] },
        { id: "c", ways: [{ ...door, through: "e" }] },
        { id: "d", ways: [door] },
        { id: "e", ways: [{ ...door, through: "d" }] },
        { id: "f", ways: [{ ...door, through: "c" }] },
      ],
      steps: [step("a")],
    }).build,
  );
  expect([0, 1, 2, 3, 4, 5].filter((q) => line.inRing(q))).toEqual([]);
});
