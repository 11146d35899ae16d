import { expect, test } from "vitest";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { holidayTables } from "../../core/clock";
import { apply } from "../../core/edit";
import { putIn } from "../../core/kits";
import { guessedHolidays, holidayPlaces } from "./holiday-tables";

test("every table is called by its place", () => {
  expect(Object.keys(holidayPlaces).sort()).toEqual([...holidayTables].sort());
});

test("the table that a kit takes by the time zone is a guess, calendar by calendar; where nothing came from kits nothing is guessed", () => {
  const begun = emptyBuild("us");
  expect(guessedHolidays(begun)).toEqual([]);
  const { document } = apply(begun, putIn(begun, "footing", "Footing", {}).edits);
  const guessed = guessedHolidays(document);
  expect(guessed.map(({ id }) => id)).toContain("inspector");
  expect(new Set(guessed.map(({ place }) => place))).toEqual(new Set(["United States, federal"]));
  expect(guessedHolidays(null)).toEqual([]);
});
