import { describe, expect, test } from "vitest";
import { type Drawing, dark, orderDrawing, sheet, svgText } from "../../src/draw";
import { troubles } from "./checks";
import { keepForLooking } from "./gallery";
import { porch } from "./porch";

/** Writes the drawing where one can look at it, checks its lettering, and compares it with the one that was looked at and kept. */
async function drawn(name: string, drawing: Drawing, svg = svgText(drawing)): Promise<void> {
  keepForLooking(name, svg);
  expect(troubles(drawing)).toEqual([]);
  await expect(svg).toMatchFileSnapshot(`./${name}.svg`);
}

const thursday = 5 * 1440 + 600;

describe("the Dates sheet of the porch", () => {
  test("ten weekends, folded, with slack and today", async () => {
    const made = sheet({ ...porch(), scale: "weekends", today: thursday, dayWidth: 64, slack: true });
    await drawn("porch", made);
    // Idle days are narrow: Monday to Friday take less than half of one site day.
    const [friday, sunday] = [made.axis.x(6 * 1440 + 1000), made.axis.x(1 * 1440 + 1010)];
    expect(friday - sunday).toBeLessThan(32);
  });

  test("dense: ten weekends on a desk", async () => {
    await drawn("porch-dense", sheet({ ...porch(), scale: "weekends", today: thursday, dayWidth: 27, flagRows: 4 }));
  });

  test("in the dark palette", async () => {
    const made = sheet({ ...porch(), scale: "weekends", today: thursday, dayWidth: 64 });
    await drawn("porch-dark", made, svgText(made, { palette: dark }));
  });

  test("roomy: closings carry day and time", async () => {
    const made = sheet({ ...porch(), scale: "weekends", dayWidth: 120 });
    await drawn("porch-roomy", made);
    expect(made.part.body.marks.some((mark) => mark.shape === "text" && mark.text === "closes Sat 19, 11:00")).toBe(true);
  });

  test("unfolded: every day as wide as every other", async () => {
    const made = sheet({ ...porch(), scale: "weekends", unfolded: true, dayWidth: 64 });
    await drawn("porch-unfolded", made);
    const wide = made.axis.columns.map(({ x0, x1 }) => x1 - x0);
    expect(new Set(wide).size).toBe(1);
  });

  test("the whole build: a weekend about 20 px", async () => {
    const made = sheet({ ...porch(), scale: "whole", today: thursday });
    await drawn("porch-whole", made);
    const weekend = made.axis.x(14 * 1440 + 600) - made.axis.x(7 * 1440 + 600);
    expect(weekend).toBeGreaterThan(15);
    expect(weekend).toBeLessThan(26);
  });

  test("16 px text without the elevation, for a phone held sideways", async () => {
    const made = sheet({ ...porch(), scale: "weekends", dayWidth: 56, text: 16, elevation: false });
    await drawn("porch-phone", made);
    expect(troubles(made, 16)).toEqual([]);
  });

  test("a trial shows where things stood before", async () => {
    const before = porch();
    const now = porch();
    const roof = now.build.at.step.get("roof")!;
    const week = 7 * 1440;
    const later = now.plan.steps[roof]!;
    const steps = now.plan.steps.map((dates, index) =>
      index === roof
        ? {
            ...later,
            start: (later.start + week) as typeof later.start,
            finish: (later.finish + week) as typeof later.finish,
            pieces: later.pieces.map(([a, b]) => [a + week, b + week] as unknown as (typeof later.pieces)[number]),
          }
        : dates,
    );
    const made = sheet({ build: now.build, plan: { ...now.plan, steps }, before, scale: "weekends", dayWidth: 64 });
    await drawn("porch-trial", made);
    const ghosts = made.part.body.marks.filter((mark) => mark.role === "ghost");
    expect(ghosts.map((mark) => mark.of?.id)).toEqual(["roof"]);
  });

  test("the same build gives the same drawing", () => {
    const asked = { scale: "weekends", today: thursday } as const;
    expect(svgText(sheet({ ...porch(), ...asked }))).toBe(svgText(sheet({ ...porch(), ...asked })));
  });
});

describe("the order", () => {
  test("of the porch, in layers from left to right", async () => {
    const { build, plan } = porch();
    await drawn("porch-order", orderDrawing(build, plan.access));
  });
});
