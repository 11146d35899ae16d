import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import type { Statement } from "../../core/base";
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

test("a ring has one arrow a reason and closes", () => {
  const finding = { code: "x", severity: "stop", where: {}, detail: {}, because: statements } as const;
  const { parts } = ringDrawing(finding, {
    title: "blocked",
    say: (one) => `${one.step} needs ${one.piece ?? one.place} to be open when it is done`,
  });
  const arrows = parts[0]!.marks.filter(({ role }) => role === "loop-line");
  expect(arrows.length).toBe(4);
  // Down, across, up, across: it comes back to where it began.
  const boxes = parts[0]!.marks.filter(({ role }) => role === "block");
  const touches = (mark: (typeof arrows)[number], box: (typeof boxes)[number]) =>
    mark.x0 <= box.x1 + 6.5 && mark.x1 >= box.x0 - 6.5 && mark.y0 <= box.y1 + 6.5 && mark.y1 >= box.y0 - 6.5;
  arrows.forEach((arrow, index) => {
    expect(touches(arrow, boxes[index]!)).toBe(true);
    expect(touches(arrow, boxes[(index + 1) % 4]!)).toBe(true);
  });
});
