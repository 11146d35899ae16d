import { expect, test } from "vitest";
import { buildOf, readOf } from "../../../../test/fixtures/make";
import { step } from "../../../../test/fixtures/small";
import { plan } from "../../plan";

const done = { start: "2027-03-06T08:00", finish: "2027-03-06T10:00" };
const stepsOf = (...steps: object[]) =>
  buildOf({ steps }).steps.map(({ id, work, begun }) => [id, work.likely_min, begun?.whole_min ?? null]);

test("of a step that is begun only what is left is work still to do", () => {
  expect(stepsOf(step("set", { work: "9 h", left: "2 h 30 min" }), step("tie", { work: "9 h" }))).toEqual([
    ["set", 150, 540],
    ["tie", 540, null],
  ]);
});

test("what is done is done, whatever was left of it", () => {
  expect(stepsOf(step("set", { work: "9 h", left: "2 h", done }))).toEqual([["set", 540, null]]);
});

test("of a trial in rounds it is left of the first", () => {
  expect(stepsOf(step("cast", { work: "4 h", left: "1 h", trial: { rounds: 2 } }))).toEqual([
    ["cast#1", 60, 240],
    ["cast#2", 240, null],
  ]);
});

test("a plan takes what is left for it, and counts all of it in the work of the build", () => {
  const minutes = (left: object) => {
    const made = plan(buildOf({ steps: [step("set", { work: "4 h", hands: 2, ...left })] }));
    return [made.steps[0]!.finish - made.steps[0]!.start, made.handMinutes];
  };
  expect(minutes({})).toEqual([240, 480]);
  expect(minutes({ left: "90 min" })).toEqual([90, 480]);
});

test("what is left is said in hours, like work", () => {
  const { build, findings } = readOf({ steps: [step("set", { left: "2 d" })] });
  expect(build).toBeNull();
  expect(findings.map(({ code, where }) => [code, where.key])).toEqual([["build.days-of-work", "left"]]);
});
