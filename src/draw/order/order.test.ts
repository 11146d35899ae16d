import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import type { Statement } from "../../core/base";
import { orderDrawing } from "./drawing";
import { layersOf, stepGraph } from "./graph";
import { orderLayout } from "./layout";
import { aroundRing, ringDrawing } from "./ring";

const { build, plan } = porch();

test("every step has a box, none on another, and arrows run from left to right", () => {
  const { boxes, arrows } = orderLayout(build, plan.access);
  expect(boxes.map(({ step }) => step)).toEqual(build.steps.map((_, index) => index));
  for (const a of boxes)
    for (const b of boxes) if (a.step < b.step) expect(a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1).toBe(false);
  expect(arrows.map(({ from, to }) => [from, to])).toEqual(
    [...Array(plan.access.arcs.count).keys()].map((row) => [plan.access.arcs.from[row], plan.access.arcs.to[row]]),
  );
  for (const { points } of arrows) expect(points[0]![0]).toBeLessThan(points[points.length - 1]![0]);
});

test("a step's layer is as late as the longest way from it to the end lets it be, by plain relaxation", () => {
  const { arcs } = plan.access;
  const rows = [...Array(arcs.count).keys()].filter((row) => arcs.redundant[row] === 0 && arcs.orders[row] === 1);
  const toEnd = new Array<number>(build.steps.length).fill(0);
  for (const _ of build.steps)
    for (const row of rows) toEnd[arcs.from[row]!] = Math.max(toEnd[arcs.from[row]!]!, toEnd[arcs.to[row]!]! + 1);
  const most = Math.max(...toEnd);
  expect([...layersOf(stepGraph(build, plan.access))]).toEqual(toEnd.map((far) => most - far));
});

test("for the arrow keys each step knows what it is joined to, whatever it is called", () => {
  const odd = {
    ...build,
    steps: build.steps.map((step, index) => (index === 0 ? { ...step, id: "constructor" as typeof step.id } : step)),
  };
  const { near } = orderDrawing(odd, plan.access);
  const { arrows } = orderLayout(odd, plan.access);
  for (const { from, to } of arrows) {
    expect(near[`s:${odd.steps[from]!.id}`]!.after).toContain(odd.steps[to]!.id);
    expect(near[`s:${odd.steps[to]!.id}`]!.before).toContain(odd.steps[from]!.id);
  }
  expect(Object.values(near).reduce((sum, { after }) => sum + after.length, 0)).toBe(arrows.length);
});

test("without an order there is nothing to lay out", () => {
  expect(orderLayout(build, { ...plan.access, possible: false }).boxes).toEqual([]);
});

const statements: Statement[] = [
  { rule: "reach", step: "oil", place: "inside" },
  { rule: "reach", step: "seal", piece: "panel" },
  { rule: "up", step: "panel-on", piece: "panel" },
  { rule: "reach", step: "seal", place: "inside" },
];

test("reasons that speak of the same thing stand next to each other", () => {
  expect(aroundRing(statements).map((one) => statements.indexOf(one))).toEqual([0, 3, 1, 2]);
});

test.each([3, 4])("a ring of %i reasons has one arrow a reason and closes", (count) => {
  const finding = { code: "x", severity: "stop", where: {}, detail: {}, because: statements.slice(0, count) } as const;
  const { parts } = ringDrawing(finding, {
    title: "blocked",
    say: (one) => `${one.step} needs ${one.piece ?? one.place} to be open when it is done`,
  });
  const arrows = parts[0]!.marks.filter(({ role }) => role === "loop-line");
  expect(arrows.length).toBe(count);
  // Down, across, up, across: it comes back to where it began.
  const boxes = parts[0]!.marks.filter(({ role }) => role === "block");
  const touches = (mark: (typeof arrows)[number], box: (typeof boxes)[number]) =>
    mark.x0 <= box.x1 + 6.5 && mark.x1 >= box.x0 - 6.5 && mark.y0 <= box.y1 + 6.5 && mark.y1 >= box.y0 - 6.5;
  arrows.forEach((arrow, index) => {
    expect(touches(arrow, boxes[index]!)).toBe(true);
    expect(touches(arrow, boxes[(index + 1) % count]!)).toBe(true);
  });
});
