import { expect, test } from "vitest";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { type Build, readDocument } from "../build";
import { apply, setField, tick } from "../edit";
import { answerAgain, putIn } from ".";

const done = { start: "2027-04-03T08:00", finish: "2027-04-03T09:00" };
const footings = (number: number): unknown => apply(emptyBuild("us"), putIn(emptyBuild("us"), "footing", "Pad", { number }).edits).document;
const again = (document: unknown, number: number): unknown => apply(document, answerAgain(document, "pad", { number }).edits).document;
const read = (document: unknown): Build => {
  const { build, findings } = readDocument(document);
  expect(findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  return build as Build;
};
const ticked = (document: unknown, ...steps: readonly string[]): unknown =>
  steps.reduce((now, step) => apply(now, tick(read(now), step, done)).document, document);
const doneIn = (document: unknown): readonly string[] => read(document).steps.flatMap((step) => (step.done === null ? [] : [step.id]));

test("of one that becomes several, what is done is done of the first only, and can be taken off there", () => {
  const several = again(ticked(footings(1), "pad-dig"), 3);
  expect(doneIn(several)).toEqual(["pad-dig#1"]);
  expect(doneIn(apply(several, tick(read(several), "pad-dig#1", null)).document)).toEqual([]);
});

test("of several that become one, the first keeps what it has of its own", () => {
  const several = ticked(footings(3), "pad-dig#1", "pad-dig#2");
  const own = apply(several, [{ path: ["groups", "id=pad-all", "differences", "1", "pad-dig", "name"], value: "Dig by the oak" }]).document;
  const one = again(own, 1);
  expect(doneIn(one)).toEqual(["pad-dig"]);
  expect(read(one).steps.find(({ id }) => id === "pad-dig")?.name).toBe("Dig by the oak");
});

test("of several that become fewer, what the last ones had of their own goes with them", () => {
  expect(doneIn(again(ticked(footings(4), "pad-dig#2", "pad-dig#4"), 2))).toEqual(["pad-dig#2"]);
});

test("a count that the builder set himself stays, with all its copies", () => {
  const own = apply(ticked(footings(2), "pad-dig#2"), [setField("groups", "pad-all", "count", 5)]).document;
  const five = ticked(own, "pad-dig#5");
  expect(doneIn(again(five, 3))).toEqual(["pad-dig#2", "pad-dig#5"]);
});

test("there and back again is what it was", () => {
  const one = ticked(footings(1), "pad-dig");
  expect(read(again(again(one, 3), 1)).steps).toEqual(read(one).steps);
});
