import { expect, test } from "vitest";
import { buildOf, documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { keep, plan } from "../../core/plan";
import { againstKept } from "./kept";

const steps = (hours: number) => [
  { id: "a", work: `${hours} h` },
  { id: "b", work: "4 h", after: ["a"] },
];
const first = buildOf({ steps: steps(4) });
const kept = { ...keep(first, plan(first)), on: "2027-03-05" };
const sentence = (hours: number, part: object = kept) => {
  const { build } = readDocument(documentOf({ steps: steps(hours), kept: part }));
  return againstKept(build, build && plan(build))?.sentence;
};

test("without a kept plan, or without a plan, there is nothing to say", () => {
  expect(againstKept(first, plan(first))).toBeNull();
  expect(againstKept(null, null)).toBeNull();
  expect(againstKept(readDocument(documentOf({ steps: steps(4), kept })).build, null)).toBeNull();
});

test("says by how many site days the finish is later or earlier, and than which plan", () => {
  expect(sentence(4)).toBe("As in the plan kept on Fri 5 Mar.");
  expect(sentence(12)).toBe("1 site day later than the plan kept on Fri 5 Mar.");
  expect(sentence(30)).toBe("3 site days later than the plan kept on Fri 5 Mar.");
  expect(sentence(3)).toBe("A little earlier than the plan kept on Fri 5 Mar, on the same site day.");
});

test("a plan that finishes as before but moves steps says so; without its day it is the kept plan", () => {
  const other = { ...kept, on: undefined, steps: { ...kept.steps, a: ["2027-03-06T08:00", "2027-03-06T12:00"] } };
  expect(sentence(4, JSON.parse(JSON.stringify(other)))).toBe("The same finish as in the kept plan; 1 step moved.");
});
