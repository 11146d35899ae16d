import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { addWait, endsText, waitsAt } from "./waits";

const document = documentOf({
  steps: [{ id: "form" }, { id: "cast" }, { id: "strip" }],
  waits: [
    { id: "set", from: "cast", to: "strip", least: "24 h" },
    { id: "wet", from: "form", to: "cast", most: "3 d" },
  ],
  groups: [{ id: "pair", count: 2, members: ["cast", "strip", "set"] }],
});

test("lists what a step waits for, then what waits for it; a copy has those of its member", () => {
  expect(waitsAt(document, "cast#2").map(({ id, side, other }) => [id, side, other])).toEqual([
    ["wet", "before", "form"],
    ["set", "after", "strip"],
  ]);
  expect(waitsAt(document, "nothing")).toEqual([]);
});

test("a wait between two of a group is the group's, any other stands alone; both read", () => {
  const inside = apply(document, addWait(document, "strip#1", "cast#1")).document as typeof document & { groups: { members: string[] }[] };
  expect(inside.groups[0]?.members).toEqual(["cast", "strip", "set", "strip-to-cast"]);
  const across = apply(document, addWait(document, "form", "strip")).document;
  const { build, findings } = readDocument(across);
  expect(findings).toEqual([]);
  const made = build?.waits.filter((wait) => wait.from === "form" && wait.to.startsWith("strip"));
  expect(made?.map(({ to, least }) => [to, least])).toEqual([
    ["strip#1", null],
    ["strip#2", null],
  ]);
});

test("other ends than finish to start are told", () => {
  expect(endsText({})).toBe("");
  expect(endsText({ fromEnd: "start", toEnd: "finish" })).toBe("It counts from the start of the first to the finish of the second.");
});
