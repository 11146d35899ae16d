import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { read } from "../../src/core/build";
import { plan } from "../../src/core/plan";
import { orderDrawing, orderLayout, sheet } from "../../src/draw";
import { troubles } from "./checks";

describe.each(["bank-cellar", "garden-wall"])("%s", (name) => {
  const build = read(readFileSync(`src/examples/${name}.json`, "utf8")).build!;
  const planned = plan(build);
  const asked = { build, plan: planned, today: 70 * 1440 } as const;

  test.each([26, 32, 46, 64, 110])("its sheet is sound at %i px a day", (dayWidth) => {
    expect(troubles(sheet({ ...asked, scale: "weekends", dayWidth, slack: true }))).toEqual([]);
  });

  test("its sheet is sound unfolded, at phone size and as a whole", () => {
    expect(troubles(sheet({ ...asked, scale: "weekends", unfolded: true }))).toEqual([]);
    expect(troubles(sheet({ ...asked, scale: "weekends", text: 16, elevation: false }), 16)).toEqual([]);
    expect(troubles(sheet({ ...asked, scale: "whole" }))).toEqual([]);
  });

  test("every step stands on its sheet, at its time", () => {
    const { blocks, axis } = sheet({ ...asked, scale: "weekends" });
    expect(blocks.size).toBe(build.steps.length);
    for (const [step, { x0 }] of blocks) expect(x0).toBeCloseTo(axis.x(planned.steps[step]!.start), 6);
  });

  test("lanes that hold nothing in sight are thin, and those in sight are sound", () => {
    const whole = sheet({ ...asked, scale: "weekends" });
    const [from, to] = [whole.axis.t(0), whole.axis.t(800)];
    const part = sheet({ ...asked, scale: "weekends", sight: { from, to } });
    expect(part.height).toBeLessThanOrEqual(whole.height);
    const seen = { ...part.part.body, marks: part.part.body.marks.filter(({ x1 }) => x1 < 800) };
    expect(troubles({ ...part, parts: [seen] })).toEqual([]);
  });

  test("its order is drawn without text on text, every arrow to the right", () => {
    const drawing = orderDrawing(build, planned.access);
    expect(troubles(drawing)).toEqual([]);
    const { arrows } = orderLayout(build, planned.access);
    expect(arrows.length).toBeGreaterThan(build.steps.length / 2);
    for (const { points } of arrows) expect(points[points.length - 1]![0]).toBeGreaterThan(points[0]![0]);
  });
});
