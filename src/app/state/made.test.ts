import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { plan } from "../../core/plan";
import wall from "../../examples/garden-wall.json";
import { isBlock, movedBetween, nearest } from "./made";

const build = readDocument(wall).build as Build;
const made = { plan: plan(build), of: build };
const after = (value: string) => {
  const of = readDocument(apply(wall, [{ path: ["steps", "id=tie-wall", "work"], value }]).document).build as Build;
  return { plan: plan(of), of };
};

test("nothing moved is nothing to say; what moved is said, the finish first", () => {
  expect(movedBetween(made, made, "us")).toBeNull();
  const moved = movedBetween(made, after("60 h"), "us");
  expect(moved?.comparison.siteDaysLost).toBeGreaterThan(0);
  expect(moved?.sentences[0]).toMatch(/site days? lost/);
});

test("where a change leaves no dates that is said, with what is wrong; taken back, that it is as it was", () => {
  const of = readDocument(apply(wall, [{ path: ["steps", "id=tie-wall", "deadline"], value: "2027-04-10" }]).document).build as Build;
  const now = { plan: plan(of), of };
  expect(now.plan.status).not.toBe("planned");
  expect(movedBetween(made, now, "us")?.sentences).toEqual([expect.stringMatching(/^There are no dates any more\. .*Tie the wall steel/)]);
  expect(movedBetween(made, now, "us", true)?.sentences).toEqual(["Back as it was."]);
  expect(movedBetween(now, made, "us")).toBeNull();
});

test("a build that was empty had no dates to move", () => {
  const of = readDocument(
    apply(
      wall,
      ["steps", "waits", "bookings", "pours", "solids"].map((list) => ({ path: [list], value: [] })),
    ).document,
  ).build as Build;
  expect(of.steps).toEqual([]);
  expect(movedBetween({ plan: plan(of), of }, made, "us")).toBeNull();
});

test("of several findings the one about the edited field is told, not what only follows from it", () => {
  const edits = [{ path: ["steps", "id=tie-wall", "work"], value: "sacks" }];
  const { findings } = readDocument(apply(wall, edits).document);
  expect(nearest([...findings].reverse(), edits)?.where).toMatchObject({ list: "steps", id: "tie-wall", key: "work" });
});

test("a block is a stop with reasons whose ways out nobody has tried", () => {
  const block = { code: "access.ring", severity: "stop", where: {}, detail: {}, because: [] } as const;
  expect(isBlock(block)).toBe(true);
  expect(isBlock({ ...block, waysOut: [] })).toBe(false);
  expect(isBlock({ ...block, severity: "look" })).toBe(false);
});
