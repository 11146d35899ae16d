import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { cleanOut } from "./clean-out";

const shut = [
  { id: "panel", closes: ["yard.door"] },
  { id: "old", fills: ["cage"], fromStart: true },
  { id: "concrete", fills: ["cage"] },
];
const reach = (step: string, at: string, need: string): Statement => ({ rule: "reach", step, id: "1", place: at, need });
const madeOf = (partial: Parameters<typeof smallCase>[0], ...because: Statement[]) => {
  const { build } = smallCase(partial);
  return cleanOut({ build, because });
};
const paths = (way: ReturnType<typeof cleanOut>[number] | undefined) => way?.edits.map(({ path }) => path.join(" "));

describe("a way in for what must pass", () => {
  test("at the very place, though the step needs the same elsewhere", () => {
    const steps = [
      step("wash", {
        reaches: [
          { place: "yard", need: "arm", depth: "1 m" },
          { place: "cage", need: "arm", depth: "200 mm" },
        ],
      }),
      step("pour", { puts: ["concrete"] }),
    ];
    const [way] = madeOf({ places: [place("yard"), place("cage")], pieces: shut, steps }, reach("wash", "cage", "arm"));
    expect(way?.edits[0]?.value).toEqual({ id: "clean-out", name: "by the clean-out", passes: ["arm"], depth: "200 mm" });
    expect(paths(way)?.filter((path) => path.includes("leansOn"))).toEqual(["steps id=pour leansOn +999"]);
  });

  test("closed again before any that fill the place are placed, the first step of the build too", () => {
    const steps = [
      step("pour", { puts: ["concrete"] }),
      step("wash", { reaches: [{ place: "cage", need: "arm", depth: "200 mm" }] }),
      step("top-up", { puts: ["more"] }),
    ];
    const pieces = [shut[2] as object, { id: "more", fills: ["cage"] }];
    const [way] = madeOf({ places: [place("cage")], pieces, steps }, reach("wash", "cage", "arm"));
    expect(paths(way)?.filter((path) => path.includes("leansOn"))).toEqual(["steps id=pour leansOn +999", "steps id=top-up leansOn +999"]);
  });

  test("of another name where one of its ways has that name already", () => {
    const ways = [
      { id: "door", passes: ["person"] },
      { id: "clean-out", passes: ["sight"] },
    ];
    const steps = [step("wash", { reaches: [{ place: "cage", need: "hose" }] })];
    const [way] = madeOf({ places: [place("cage", ...ways)], pieces: [shut[2] as object], steps }, reach("wash", "cage", "hose"));
    expect(way?.edits[0]).toEqual({
      path: ["places", "id=cage", "ways", "id=clean-out-3"],
      value: { id: "clean-out-3", name: "by the clean-out", passes: ["hose"] },
    });
  });

  test("for sight only where an inspection stops the work, and for nothing that its step does not need", () => {
    const partial = {
      places: [place("cage")],
      pieces: [shut[2] as object],
      steps: [step("look", { sort: "inspection", holdPoint: { places: ["cage"] } }), step("wash")],
    };
    expect(madeOf(partial, reach("look", "cage", "sight"))).toHaveLength(1);
    expect(madeOf(partial, reach("look", "cage", "arm"))).toEqual([]);
    expect(madeOf(partial, reach("wash", "cage", "sight"))).toEqual([]);
  });

  test("not for a piece as one: neither through what closes, nor by another way", () => {
    const steps = [step("bring", { puts: ["unit"], reaches: [{ place: "cage", need: "unit", piece: "unit" }] })];
    const unit = { id: "unit", size: { long: "2 m", wide: "1 m", thick: "1 m" }, weight: "50 kg" };
    const says = reach("bring", "cage", "unit");
    expect(madeOf({ places: [place("cage")], pieces: [unit], steps }, says)).toEqual([]);
    expect(madeOf({ places: [place("cage")], pieces: [unit, { id: "lid", closes: ["cage.door"] }], steps }, says)).toEqual([]);
  });

  test("belongs to the group of the step it is for, else to that of the place", () => {
    const groups = (id: string, ...members: string[]) => [{ id, count: 2, members }];
    const partial = {
      places: [place("cage"), place("pit", { id: "slit", passes: ["sight"] })],
      pieces: [{ id: "lid", closes: ["cage.door"] }],
      steps: [step("wash", { reaches: [{ place: "cage", need: "hose" }] }), step("dig", { reaches: [{ place: "pit" }] })],
    };
    const added = (group: object[], says: Statement) =>
      paths(madeOf({ ...partial, groups: group }, says)[0])?.filter((path) => path.startsWith("groups"));
    expect(added(groups("g", "wash"), reach("wash#1", "cage", "hose"))).toEqual(["groups id=g members id=cage-clean-out-shut"]);
    expect(added(groups("g", "dig"), reach("dig#1", "pit", "person"))).toEqual(["groups id=g members id=pit-way-in-up"]);
    expect(added([], reach("wash", "cage", "hose"))).toEqual([]);
  });
});
