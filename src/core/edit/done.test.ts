import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, partly, resume, tick } from ".";

const document = documentOf({
  steps: [{ id: "dig" }, { id: "set" }],
  groups: [{ id: "two", count: 2, members: ["set"] }],
});
const done = { start: "2027-03-06T08:00", finish: "2027-03-06T10:00" };
const doneOf = (now: unknown) => Object.fromEntries(readDocument(now).build!.steps.map((step) => [step.id, step.done]));

test("a tick marks one step or one copy, and is taken off again byte for byte", () => {
  const { build } = readDocument(document);
  for (const id of ["dig", "set#2"]) {
    const ticked = apply(document, tick(build!, id, done));
    expect(doneOf(ticked.document)).toEqual({ dig: null, "set#1": null, "set#2": null, [id]: done });
    expect(JSON.stringify(apply(ticked.document, ticked.inverse).document)).toBe(JSON.stringify(document));
    const off = apply(ticked.document, tick(readDocument(ticked.document).build!, id, null));
    expect(doneOf(off.document)[id]).toBeNull();
  }
});

test("a tick that a member of a group says for all its copies is taken off one of them alone", () => {
  const written = documentOf({
    steps: [{ id: "dig" }, { id: "set", done }],
    groups: [{ id: "two", count: 3, members: ["set"] }],
  });
  expect(doneOf(written)).toEqual({ dig: null, "set#1": done, "set#2": done, "set#3": done });
  const off = apply(written, tick(readDocument(written).build!, "set#2", null, written));
  expect(doneOf(off.document)).toEqual({ dig: null, "set#1": done, "set#2": null, "set#3": done });
  expect(JSON.stringify(apply(off.document, off.inverse).document)).toBe(JSON.stringify(written));
  const again = apply(off.document, tick(readDocument(off.document).build!, "set#2", done, off.document));
  expect(doneOf(again.document)).toEqual(doneOf(written));
});

test("what is left of one step or one copy is written down, and goes with a tick, byte for byte back", () => {
  const { build } = readDocument(document);
  const leftOf = (now: unknown) =>
    Object.fromEntries(readDocument(now).build!.steps.map(({ id, begun, work }) => [id, begun && work.likely_min]));
  for (const id of ["dig", "set#2"]) {
    const begun = apply(document, partly(build!, id, "3 h"));
    expect(leftOf(begun.document)).toEqual({ dig: null, "set#1": null, "set#2": null, [id]: 180 });
    const ticked = apply(begun.document, tick(readDocument(begun.document).build!, id, done, begun.document));
    expect(JSON.stringify(ticked.document)).not.toContain("left");
    expect(doneOf(ticked.document)[id]).toEqual(done);
    expect(JSON.stringify(apply(ticked.document, ticked.inverse).document)).toBe(JSON.stringify(begun.document));
    const never = apply(begun.document, partly(readDocument(begun.document).build!, id, null));
    expect(leftOf(never.document)).toEqual({ dig: null, "set#1": null, "set#2": null });
  }
});

test("the rest goes on from a moment, or from the start again", () => {
  const later = apply(document, resume("2027-04-01"));
  expect(readDocument(later.document).build!.resumes).toBe("2027-04-01");
  expect(readDocument(apply(later.document, resume(null)).document).build!.resumes).toBeNull();
});
