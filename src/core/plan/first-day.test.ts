import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { step } from "../../../test/fixtures/small";
import { examples } from "../../examples";
import { type Build, readDocument } from "../build";
import { clocksOf } from "../clock";
import { apply } from "../edit";
import { plan } from "./plan-of";
import { verifyPlan } from "./verify/verify-plan";

const early = (document: unknown) => readDocument(document).findings.filter(({ code }) => code === "build.before-start");

/** By step, its local dates. */
function datesOf(build: Build): Readonly<Record<string, readonly [string, string]>> {
  const made = plan(build);
  expect(made.status).toBe("planned");
  expect(verifyPlan(build, made)).toEqual([]);
  const { momentOf } = clocksOf(build).time;
  return Object.fromEntries(made.ids.map((id, s) => [id, [momentOf(made.steps[s]!.start), momentOf(made.steps[s]!.finish)]]));
}

const written = (more: object = {}): unknown =>
  documentOf({
    steps: [
      step("pour", { done: { start: "2027-03-02T08:00", finish: "2027-03-02T12:00" } }),
      step("clear", { done: { start: "2027-03-01", finish: "2027-03-01" } }),
      step("strip", { after: ["pour"] }),
      step("sweep"),
    ],
    waits: [{ id: "hard", from: "pour", to: "strip", least: "10 d" }],
    ...more,
  });

test("work done before the first day counts from its own day once the build begins by the first of such days", () => {
  const document = written();
  const found = early(document);
  expect(found.map(({ where }) => where.id)).toEqual(["pour", "clear"]);
  for (const { waysOut } of found) {
    expect(waysOut).toEqual([
      {
        kind: "move-date",
        detail: { begins: "2027-03-01", goesOn: "2027-03-06" },
        edits: [
          { path: ["start"], value: "2027-03-01" },
          { path: ["resumes"], value: "2027-03-06" },
        ],
      },
    ]);
  }
  const before = datesOf(readDocument(document).build!);
  const moved = apply(document, found[0]!.waysOut![0]!.edits).document;
  expect(early(moved)).toEqual([]);
  const after = datesOf(readDocument(moved).build!);
  expect(after.pour).toEqual(["2027-03-02T08:00", "2027-03-02T12:00"]);
  // Ten days from Tuesday noon, then the next weekend; from the first day, a Saturday, it would be a week more.
  expect(after.strip![0].slice(0, 10)).toBe("2027-03-13");
  expect(before.strip![0].slice(0, 10)).toBe("2027-03-20");
  expect(after.sweep).toEqual(before.sweep);
});

test("where work was to go on later than the first day it still does", () => {
  const document = written({ resumes: "2027-03-13" });
  expect(early(document)[0]!.waysOut![0]!.detail).toEqual({ begins: "2027-03-01", goesOn: "2027-03-13" });
});

test("a day more than a year back is no day to begin with; a latest date before the first day is another matter", () => {
  const slip = documentOf({ steps: [step("pour", { done: { start: "2017-03-02", finish: "2017-03-02" } })] });
  expect(early(slip)).toMatchObject([{ where: { id: "pour", key: "done" } }]);
  expect(early(slip)[0]!.waysOut).toBeUndefined();
  const late = documentOf({ steps: [step("pour", { deadline: "2027-03-02" })] });
  expect(early(late)[0]!.waysOut).toBeUndefined();
});

test("an earlier first day with work going on from the old one moves nothing", async () => {
  for (const { load } of examples.slice(0, 2)) {
    const document = (await load()) as { readonly start: string };
    const back = new Date(Date.parse(document.start) - 40 * 86_400_000).toISOString().slice(0, 10);
    const moved = apply(document, [
      { path: ["start"], value: back },
      { path: ["resumes"], value: document.start },
    ]).document;
    expect(datesOf(readDocument(moved).build!)).toEqual(datesOf(readDocument(document).build!));
  }
});
