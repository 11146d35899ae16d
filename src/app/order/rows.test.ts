import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import { plan } from "../../core/plan";
import wall from "../../examples/garden-wall.json";
import { around } from "../why/around";
import { triesFor } from "../why/tries";
import { closingRows } from "./closing-rows";
import { stepRows } from "./step-rows";

const build = readDocument(wall).build as Build;
const made = plan(build);

test("closings come by date and agree with the plan they are read from", () => {
  const rows = closingRows(build, made);
  const told = made.closings.filter((closing) => closing.before.length > 0);
  expect(rows.length).toBe(told.length);
  const at = told.map((closing) => closing.at);
  expect(at).toEqual([...at].sort((a, b) => a - b));
  for (const [index, row] of rows.entries()) {
    expect(row.piece.name).toBe(build.pieces[told[index]?.piece ?? -1]?.name);
    expect(row.before.flatMap((group) => group.steps).length).toBe(told[index]?.before.length);
    expect(row.closes).toMatch(/^(closes|fills) /);
  }
});

test("every step stands in the list once, by start; one on the chain is marked", () => {
  const rows = stepRows(build, made);
  expect(rows.map((row) => row.id).sort()).toEqual(build.steps.map((step) => step.id).sort());
  const starts = rows.map((row) => made.steps[build.at.step.get(row.id) ?? -1]?.start ?? -1);
  expect(starts).toEqual([...starts].sort((a, b) => a - b));
  expect(
    rows
      .filter((row) => row.onChain)
      .map((row) => row.id)
      .sort(),
  ).toEqual(made.chain.flatMap((link) => build.steps[link.job]?.id ?? []).sort());
});

test("without a plan the steps stand as written, without dates", () => {
  const rows = stepRows(build, null);
  expect(rows.map((row) => row.id)).toEqual(build.steps.map((step) => step.id));
  expect(rows.every((row) => row.day === "")).toBe(true);
});

test("what is before a step for one is after it for the other", () => {
  for (const step of build.steps) {
    for (const other of around(build, made.access, step.id).before) {
      expect(other.reasons.length).toBeGreaterThan(0);
      expect(around(build, made.access, other.id).after.map((back) => back.id)).toContain(step.id);
    }
  }
});

test("what is offered to try can be read, and a week later starts at least a week later", () => {
  const id = build.steps[made.chain.find((link) => link.job < build.steps.length)?.job ?? -1]?.id ?? "";
  const tries = triesFor(wall, build, made, { list: "steps", id });
  expect(tries.map((one) => one.words)).toContain("a week later");
  const start = made.steps[build.at.step.get(id) ?? -1]?.start ?? 0;
  expect(tries[0]?.edits[0]?.path).toEqual(["steps", `id=${id.split("#")[0]}`, "notBefore"]);
  const date = String(tries[0]?.edits[0]?.value);
  expect((Date.parse(date) - Date.parse(build.start)) / 60_000).toBeGreaterThanOrEqual(start + 6 * 1440);
});
