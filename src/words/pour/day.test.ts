import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import { formatWork } from "../../core/base";
import { pourSheet } from "../../core/pour";
import { daySentences } from "./day";

const said = (helpers?: number): string => {
  const build = buildOf({ steps: [{ id: "a" }], pours: [slabPour({ removals: [], ...(helpers === undefined ? {} : { helpers }) })] });
  return daySentences(pourSheet(build, 0).day!, "us").join(" ");
};

test("helpers who come for the pour alone are told among its hands, and nobody is where none come", () => {
  expect(said()).not.toContain("helper");
  expect(said(1)).toContain("One of them comes as a helper for this pour alone.");
  expect(said(3)).toContain("Three of them come as helpers for this pour alone.");
});

test("the stretches told of a pour that is floated add up to what it takes, the wait for the float with them", () => {
  const build = buildOf({ steps: [{ id: "a" }], pours: [slabPour({ removals: [] })] });
  const day = pourSheet(build, 0).day!;
  expect(day.floatAfter_min).toBeGreaterThan(0);
  expect(day.total_min).toBe(day.placing_min + day.pause_min + day.floatAfter_min + day.finishing_min + day.clearing_min);
  expect(daySentences(day, "us").join(" ")).toContain(`${formatWork(Math.round(day.floatAfter_min))} until it takes the float`);
});
