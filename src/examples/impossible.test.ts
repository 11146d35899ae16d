import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { waysOut as offered } from "../core/access";
import type { DocumentEdit } from "../core/base";
import { read, readDocument } from "../core/build";
import { apply } from "../core/edit";
import { plan } from "../core/plan";

const document = read(readFileSync("src/examples/impossible.json", "utf8")).document;
/** One way out for each block, written by hand, under the step at which the block is told. */
const waysOut = JSON.parse(readFileSync("test/fixtures/examples/impossible.ways-out.json", "utf8")) as Record<string, DocumentEdit[]>;
/** The block of dates is told only where an order exists. */
const ofOrder = Object.keys(waysOut).filter((id) => id !== "clean-foot");

const planOf = (edits: readonly DocumentEdit[]) => {
  const { build, findings } = readDocument(apply(document, edits).document);
  expect(findings).toEqual([]);
  return plan(build!);
};
const blocksOf = (edits: readonly DocumentEdit[]) =>
  planOf(edits)
    .findings.filter((f) => f.severity === "stop" && f.code.startsWith("access."))
    .map((f) => f.where.id);

describe("the build that cannot be built as written", () => {
  test("has six blocks of order, at the steps where a builder would look", () => {
    expect(blocksOf([]).sort()).toEqual([...ofOrder].sort());
  });

  test.each(ofOrder)("the way out at %s removes that block and no other", (id) => {
    expect(blocksOf(waysOut[id]!).sort()).toEqual(ofOrder.filter((other) => other !== id).sort());
  });

  test.each(ofOrder)("every way out offered at %s removes that block and no other", (id) => {
    const { build } = readDocument(document);
    const finding = plan(build!).findings.find((f) => f.where.id === id)!;
    const ways = offered(build!, finding, (edits) => readDocument(apply(document, edits).document).build);
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) expect(blocksOf(way.edits).sort(), way.kind).toEqual(ofOrder.filter((other) => other !== id).sort());
  });

  test("once there is an order, the window for cleaning is told, and nothing else", () => {
    const planned = planOf(ofOrder.flatMap((id) => waysOut[id]!));
    expect(planned.status).toBe("no-dates");
    const stops = planned.findings.filter((f) => f.severity === "stop");
    expect(stops).toHaveLength(1);
    const because = stops[0]!.because!;
    const named = new Set(because.flatMap((s) => [s.step, s.other, s.id]));
    for (const id of ["clean-foot", "set-stair-face", "pour-stair"]) expect(named.has(id), id).toBe(true);
    expect(because.every((s) => s.place === undefined || s.place === "foot")).toBe(true);
  });

  test("with a way out for each it can be built, on dates", () => {
    const planned = planOf(Object.values(waysOut).flat());
    expect(planned.status).toBe("planned");
    expect(planned.findings.filter((f) => f.severity === "stop")).toEqual([]);
  });
});
