import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { findIn } from "./find";

const build = buildOf({
  people: [{ id: "me", name: "Ruth Tieman" }],
  places: [{ id: "cage", name: "Column cage", ways: [{ id: "top" }] }],
  pieces: [{ id: "tie-rod", name: "Tie rod", fromStart: true }],
  steps: [
    { id: "set", name: "Set the last tie", work: "1 h" },
    { id: "tie", name: "Tie column bars", work: "1 h" },
    { id: "untie", name: "Untie Größe", work: "1 h" },
    { id: "bore", name: "Bore", work: "1 h" },
  ],
  deliveries: [{ id: "ties", name: "Form ties" }],
  groups: [{ id: "g", count: 3, members: ["bore"] }],
});
const names = (typed: string, most = 9) => findIn(build, typed, most).found.map(({ kind, name }) => `${kind}: ${name}`);

test("what begins with it first, then words that do, then the rest, each as it stands in the build", () => {
  expect(names("tie")).toEqual([
    "step: Tie column bars",
    "piece: Tie rod",
    "step: Set the last tie",
    "delivery: Form ties",
    "person: Ruth Tieman",
    "step: Untie Größe",
  ]);
  expect(findIn(build, "tie", 2)).toMatchObject({ more: 4 });
});

test("capitals, accents and the order of words do not matter; of many alike one is listed", () => {
  for (const typed of ["größe", "GROß", "gro"]) expect(names(typed)).toEqual(["step: Untie Größe"]);
  expect(names("bars tie")).toEqual(["step: Tie column bars"]);
  expect(names("bore")).toEqual(["step: Bore (1)"]);
  expect(names("  ")).toEqual([]);
  expect(names("nowhere")).toEqual([]);
});
