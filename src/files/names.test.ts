import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { namesOnly } from "./names";

const wall = JSON.parse(readFileSync(new URL("../examples/garden-wall.json", import.meta.url), "utf8"));

test("a document that cannot be read still tells the names in it", () => {
  const broken = {
    ...wall,
    usual: "nobody",
    start: "2027-02-30",
    steps: wall.steps.map((step: object) => ({ ...step, work: "three sacks" })),
  };
  const build = namesOnly(broken);
  expect(build?.steps.map((step) => step.name)).toEqual(wall.steps.map((step: { name: string }) => step.name));
  expect(build?.places.length).toBe(wall.places.length);
});

test("what has no names, or the same id twice, is no reason to fail", () => {
  expect(namesOnly(null)).toBeNull();
  expect(namesOnly([1, 2])).toBeNull();
  expect(
    namesOnly({ steps: [{ id: "a", name: "A" }, { id: "a", name: "B" }, { id: 3, name: "C" }, "d"] })?.steps.map((step) => step.name),
  ).toEqual(["A"]);
  fc.assert(fc.property(fc.jsonValue(), (value) => void namesOnly(value)));
});
