import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { aloneOnWeekends } from "../../../test/fixtures/alone";
import { unforced } from "../../../test/fixtures/could-stay";
import { smallEdit } from "../../../test/fixtures/small-edits";
import { type Build, readDocument } from "../build";
import { clocksOf } from "../clock";
import { apply } from "../edit";
import { keep } from "./keep";
import { perMoved_min } from "./near";
import { plan } from "./plan-of";
import { verifyPlan } from "./verify/verify-plan";

type Raw = Record<string, unknown>;
const written = (steps: readonly Raw[], more: Raw = {}): Raw =>
  aloneOnWeekends({ steps: steps.map((step) => ({ name: step.id, ...step })), ...more });
const read = (document: unknown): Build => readDocument(document).build!;
const keptOf = (document: unknown): Raw => {
  const build = read(document);
  return { ...keep(build, plan(build)), on: build.start };
};
const startsOf = (document: unknown): string[] =>
  Object.values(keep(read(document), plan(read(document))).steps).map(([start]) => start.slice(5));

const three = (work: string, more: Raw = {}) =>
  written(
    [
      { id: "sort", work },
      { id: "cut", work: "6 h" },
      { id: "set", work: "6 h", after: ["cut"] },
    ],
    more,
  );

test("a kept plan is kept to: a change serves its steps in the same order, where by themselves they would be served in another", () => {
  const kept = {
    ...keptOf(three("2 h")),
    steps: {
      sort: ["2027-03-06T08:00", "2027-03-06T10:00"],
      cut: ["2027-03-06T10:00", "2027-03-06T16:00"],
      set: ["2027-03-07T08:00", "2027-03-07T14:00"],
    },
  };
  expect(startsOf(three("2 h"))).not.toEqual(startsOf(three("2 h", { kept })));
  expect(startsOf(three("3 h", { kept }))).toEqual(["03-06T08:00", "03-06T11:00", "03-07T09:00"]);
});

test("what could come earlier for nothing stays where it was kept, and says so; what brings the finish forward does not wait", () => {
  const two = (first: string, more: Raw = {}) =>
    written(
      [
        { id: "tie", work: first },
        { id: "sweep", work: "1 h", after: ["tie"] },
        { id: "pour", work: "4 h", after: ["tie"], fixed: "2027-03-13T08:00" },
      ],
      more,
    );
  const kept = keptOf(two("6 h"));
  const document = two("4 h", { kept });
  expect(startsOf(two("4 h"))[1]).toBe("03-06T12:00");
  expect(startsOf(document)[1]).toBe("03-06T14:00");
  const build = read(document);
  const made = plan(build);
  expect(made.steps[1]!.holder).toEqual({ kind: "kept", date: 14 * 60 });
  expect(verifyPlan(build, made)).toEqual([]);
  const one = (work: string, more: Raw = {}) =>
    written(
      [
        { id: "tie", work },
        { id: "pour", work: "4 h", after: ["tie"] },
      ],
      more,
    );
  expect(startsOf(one("2 h", { kept: keptOf(one("3 h")) }))[1]).toBe("03-06T10:00");
});

test("the best anew, taken over from a search, goes before the kept plan", () => {
  const kept = keptOf(three("2 h"));
  const served = { engine: "x", rung: 1000, steps: ["cut", "set", "sort"] };
  expect(startsOf(three("2 h", { kept, served }))).toEqual(startsOf(three("2 h", { served })));
});

test("over fifty changes of each example fewer steps move for nothing, and no plan ends later than that is worth", () => {
  for (const name of ["garden-wall", "bank-cellar"]) {
    const document: unknown = JSON.parse(readFileSync(`src/examples/${name}.json`, "utf8"));
    const before = read(document);
    const keptPart = keep(before, plan(before));
    const kept = { ...keptPart, on: before.start };
    const sums = { near: 0, fresh: 0 };
    for (let n = 1; n <= 50; n++) {
      const changed = apply(document, smallEdit(before, n)).document;
      const build = read(apply(changed, [{ path: ["kept"], value: kept }]).document);
      const near = plan(build);
      const fresh = plan({ ...build, kept: null });
      expect([near.status, fresh.status]).toEqual(["planned", "planned"]);
      const moved = { near: unforced(build, keptPart, near), fresh: unforced(build, keptPart, fresh) };
      sums.near += moved.near.forNothing;
      sums.fresh += moved.fresh.forNothing;
      const usual = clocksOf(build).work(build.usual);
      const later = usual.reading(near.finish) - usual.reading(fresh.finish);
      expect(later).toBeLessThanOrEqual(perMoved_min * Math.max(0, moved.fresh.moved - moved.near.moved));
    }
    expect(sums.near).toBeLessThan(sums.fresh);
  }
});
