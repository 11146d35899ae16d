import { expect, test } from "vitest";
import { place, small, smallCase, step } from "../../../../test/fixtures/small";
import { Facts } from "./facts";
import { PlaceFacts } from "./place-facts";
import { Site } from "./site";

const { build } = smallCase({
  places: [
    place("yard"),
    place(
      "cage",
      { id: "top", passes: ["arm"], depth: "1 m", through: "yard" },
      { id: "side", passes: ["person"], through: "yard" },
      { id: "end", passes: ["person"], through: "yard" },
    ),
    place("pit", { id: "hole", passes: ["person"], through: "cage" }),
  ],
  pieces: [
    { id: "lid" },
    { id: "panel", closes: ["cage.side"], makes: ["cage.end"], fills: ["cage"] },
    { id: "cover", closes: ["pit.hole"] },
  ],
});

test("facts are made once, and told place by place, then piece by piece, however they come up", () => {
  const [facts, site] = [new Facts(), new Site(build)];
  const told = new PlaceFacts(facts, site);
  const [person, hand, arm] = [
    site.needOf({ kind: "person" }),
    site.needOf({ kind: "hand", depth_mm: 100 }),
    site.needOf({ kind: "arm", depth_mm: 200 }),
  ] as const;
  const make = () => [
    told.onWay("closes", 2, 2, 4),
    told.onWay("makes", 1, 1, 3),
    told.onWay("closes", 1, 1, 2),
    told.fills(1, 1),
    told.ways(2, person),
    told.through(2, 4),
    told.through(1, 3),
    told.through(1, 2),
    told.through(1, 1),
    told.ways(1, arm),
    told.ways(1, hand),
    told.ways(1, person),
    told.ways(0, arm),
  ];
  const made = make();
  expect(make()).toEqual(made);
  expect(facts.count).toBe(made.length);
  const say = (fact: number) => {
    const { rule, piece, place: at, way, need } = facts.statement(fact);
    return [rule, piece, way ?? at, need].filter((x) => x !== undefined).join(" ");
  };
  expect(facts.inOrder(made).map(say)).toEqual([
    "ways yard arm",
    "ways cage person",
    "ways cage hand",
    "ways cage arm",
    "through cage.top",
    "through cage.side",
    "through cage.end",
    "ways pit person",
    "through pit.hole",
    "fills panel cage",
    "closes panel cage.side",
    "makes panel cage.end",
    "closes cover pit.hole",
  ]);
  expect(facts.statement(made[6] as number).detail).toEqual({ through: "yard" });
  expect(facts.statement(made[11] as number).detail).toEqual({ passing: ["cage.side", "cage.end"], narrow: ["cage.top"] });
  expect(facts.statement(made[9] as number).detail).toEqual({ depth_mm: 200, passing: ["cage.top", "cage.side", "cage.end"], narrow: [] });
});

test("that a piece is put up before it is taken down is told with the piece", () => {
  const { blocks } = small({
    places: [place("cage")],
    pieces: [{ id: "prop" }, { id: "panel", closes: ["cage.door"] }, { id: "deck" }],
    steps: [
      step("close", { puts: ["panel"] }),
      step("up", { puts: ["deck"], after: ["close"] }),
      step("down", { takes: ["deck"] }),
      step("tie", { reaches: [{ place: "cage" }], after: ["down"] }),
    ],
  });
  expect(blocks).toEqual([
    [
      "ways(cage person)",
      "closes(panel cage.door)",
      "up-down(up down deck)",
      "reach(tie cage person)",
      "wait(close up close>up)",
      "wait(down tie down>tie)",
    ],
  ]);
});
