import { expect, test } from "vitest";
import { newAim, reachesOf, writtenReaches } from "./reach";

test("what is written comes back as written, unknown keys included", () => {
  const written = [
    { place: "cage" },
    { place: "joint", need: "arm", depth: { is: "58 in", from: "drawing" } },
    {
      any: [
        { place: "north", note: "from the ladder" },
        { place: "south", need: "unit", piece: "panel" },
      ],
    },
  ];
  expect(writtenReaches(reachesOf(written))).toEqual(written);
});

test("a depth goes when the need is no longer for a hand or an arm, a piece when it is no longer for a unit", () => {
  const [[arm]] = reachesOf([{ place: "joint", need: "arm", depth: "58 in" }]);
  const [[unit]] = reachesOf([{ place: "door", need: "unit", piece: "panel" }]);
  expect(writtenReaches([[{ ...arm!, need: "sight" }], [{ ...unit!, need: "person" }]])).toEqual([
    { place: "joint", need: "sight" },
    { place: "door" },
  ]);
});

test("a reach whose last aim is taken out goes, one left of several stands alone", () => {
  expect(writtenReaches([[], [newAim("cage")]])).toEqual([{ place: "cage" }]);
});
