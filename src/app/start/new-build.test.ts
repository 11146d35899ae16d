import { expect, test } from "vitest";
import { readDocument } from "../../core/build";
import { faultsOf, guessOf, type NewBuild, newBuild } from "./new-build";

const good: NewBuild = {
  name: "Garden wall",
  first: "",
  start: "2027-06-26",
  hands: "2",
  latitude: "51,5",
  longitude: "−0.1",
  zone: "Europe/London",
  units: "metric",
};

test("what has no faults is a build that reads, with a decimal comma understood", () => {
  expect(faultsOf(good)).toEqual({});
  const { build, findings } = readDocument(newBuild({ ...good, first: "Dig the footing" }));
  expect(findings).toEqual([]);
  expect(build?.site).toMatchObject({ latitude: 51.5, longitude: -0.1, units: "metric" });
  expect(build?.people.length).toBe(2);
  expect(build?.steps.map((step) => step.name)).toEqual(["Dig the footing"]);
  expect(readDocument(newBuild(good)).build?.steps).toEqual([]);
});

test.each([
  ["name", " ", "Write what it is called, like Garden wall."],
  ["start", "", "Choose the first day, like 2027-06-26."],
  ["hands", "two", "“two” is not a number of hands; write a whole number from 1 to 50, like 2."],
  ["hands", "0", "“0” is not a number of hands; write a whole number from 1 to 50, like 2."],
  ["hands", "", "How many? Write a whole number from 1 to 50, like 2."],
  ["latitude", "north", "Latitude: write a number from −90 to 90, like 51.5."],
  ["longitude", "200", "Longitude: write a number from −180 to 180, like −0.1."],
])("%s %j has its own sentence", (field, typed, sentence) => {
  expect(faultsOf({ ...good, [field]: typed })).toEqual({ [field]: sentence });
});

test("the first day is guessed as the next Saturday, today included", () => {
  expect(guessOf(new Date(2027, 5, 23), "Europe/London").start).toBe("2027-06-26");
  expect(guessOf(new Date(2027, 5, 26), "Europe/London").start).toBe("2027-06-26");
});
