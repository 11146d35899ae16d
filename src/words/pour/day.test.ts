import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
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
