import { mkdirSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { sheet, svgText } from "../../src/draw";
import { porch } from "./porch";

mkdirSync("test/drawings/out", { recursive: true });
test("porch", () => {
  const made = sheet({ ...porch(), scale: "weekends", today: 5 * 1440, dayWidth: 64, slack: true });
  writeFileSync("test/drawings/out/porch.svg", svgText(made));
  writeFileSync("test/drawings/out/porch-whole.svg", svgText(sheet({ ...porch(), scale: "whole", today: 5 * 1440 })));
  writeFileSync("test/drawings/out/porch-unfolded.svg", svgText(sheet({ ...porch(), scale: "weekends", unfolded: true })));
  expect(made.parts.length).toBe(5);
});
