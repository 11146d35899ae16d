import { describe, expect, test } from "vitest";
import { hour, made, one, point, reach } from "../../../../test/fixtures/shut-cage";
import type { Statement } from "../../base";
import { cleanOut } from "./clean-out";

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
