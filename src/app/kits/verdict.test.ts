import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { putIn } from "../../core/kits";
import { plan } from "../../core/plan";
import wall from "../../examples/garden-wall.json";
import impossible from "../../examples/impossible.json";
import { datesOf, pouredIn } from "./days";
import { planVerdict } from "./verdict";

const of = (document: unknown): { readonly build: Build; readonly plan: ReturnType<typeof plan> } => {
  const build = readDocument(document).build as Build;
  return { build, plan: plan(build) };
};
const before = of(wall);
const withFooting = apply(wall, putIn(wall, "footing", "Pad A", { number: 1 }).edits).document;

test("what there is an order for says its finish, and the finish now where that is another day", () => {
  const alone = planVerdict(before.build, before.plan, null, "us");
  expect(alone.kind).toBe("yes");
  expect(alone.sentences).toHaveLength(1);
  expect(alone.sentences[0]).toMatch(/^An order was found\. It finishes \w{3} \d+ \w{3} \d{4}\.$/);
  expect(planVerdict(before.build, before.plan, before, "us").sentences[0]).toMatch(/The finish stays \w{3} \d+ \w{3} \d{4}\.$/);
  const long = of(apply(wall, [{ path: ["steps", "id=tie-wall", "work"], value: "90 h" }]).document);
  expect(planVerdict(long.build, long.plan, before, "us").sentences[0]).toMatch(/It finishes .+ \d{4} instead of .+ \d{4}\.$/);
});

test("what cannot be built is a no, with its reasons in sentences", () => {
  const blocked = of(impossible);
  const verdict = planVerdict(blocked.build, blocked.plan, before, "us");
  expect(verdict.kind).toBe("no");
  expect(verdict.sentences[0]).toBe("With this it cannot be built in any order.");
  expect(verdict.sentences.length).toBeGreaterThan(1);
});

test("what has no dates is a no that says so", () => {
  const late = of(apply(wall, [{ path: ["steps", "id=tie-wall", "deadline"], value: before.build.start }]).document);
  expect(late.plan.status).toBe("no-dates");
  expect(planVerdict(late.build, late.plan, before, "us").sentences[0]).toBe("An order was found, but with this the dates cannot be met.");
});

test("the months of the pours are told in their order, and none without dates", () => {
  expect(pouredIn(before.build, before.plan)).toEqual([4, 5]);
  expect(pouredIn(before.build, { ...before.plan, status: "no-order" })).toBeUndefined();
  const late = of({ ...wall, start: "2027-11-06" });
  const months = pouredIn(late.build, late.plan) ?? [];
  expect(months[0]).toBe(11);
  expect(months.length).toBeGreaterThan(0);
});

test("a part says on which days it is built; with nothing of it left it says nothing", () => {
  const { build, plan: planned } = of(withFooting);
  const part = build.parts[0];
  if (!part) throw new Error("a part was put in");
  expect(datesOf(build, planned, part)).toMatch(
    /^(From \w{3} \d+ \w{3} to|On) \w{3} \d+ \w{3}; the build finishes \w{3} \d+ \w{3} \d{4}\.$/,
  );
  expect(datesOf(build, planned, { ...part, made: {} })).toBe("");
  expect(datesOf(build, { ...planned, status: "no-order" }, part)).toBe("");
});
