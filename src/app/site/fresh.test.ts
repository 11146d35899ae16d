import { expect, test } from "vitest";
import { firstWeekday, freshId, momentOf, momentParts, rolesIn, withScale } from "./fresh";

test("an id is one that nothing in any list has", () => {
  const document = { name: "Mixer", stock: [{ id: "mixer" }], steps: [{ id: "mixer-2" }], site: { sides: ["mixer-3"] } };
  expect(freshId(document, "Mixer")).toBe("mixer-3");
  expect(freshId(null, "Mixer")).toBe("mixer");
});

test("roles are those that people have and steps ask for, once", () => {
  const document = {
    people: [{ id: "a", roles: ["vibrator", "hose"] }, { id: "b" }],
    steps: [
      { id: "s", hands: [{ role: "hose", number: 2 }, { role: "hands" }, { role: "finisher" }] },
      { id: "t", hands: 2 },
    ],
  };
  expect(rolesIn(document)).toEqual(["finisher", "hose", "vibrator"]);
  expect(rolesIn(undefined)).toEqual([]);
});

test.each(["2027-06-26", "2027-06-26T07:30", "2027-06-26T14:00"])("%s is taken apart and put together again", (moment) => {
  const { date, time } = momentParts(moment);
  expect(momentOf(date, time)).toBe(moment);
});

test("a time alone says nothing, and one that cannot be read is handed on", () => {
  expect(momentOf("", "7:30")).toBeUndefined();
  expect(momentOf("2027-06-26", "7:30 ")).toBe("2027-06-26T07:30");
  expect(momentOf("2027-06-26", "1:30 pm")).toBe("2027-06-26T13:30");
  expect(momentOf("2027-06-26", "7am")).toBe("2027-06-26T07:00");
  expect(momentOf("2027-06-26", "at noon")).toBe("2027-06-26Tat noon");
});

test.each([
  ["41", "us", "41 °F"],
  ["-3,5", "metric", "-3.5 °C"],
  ["−3", "metric", "-3 °C"],
  ["41 °F", "metric", "41 °F"],
  ["warm", "us", "warm"],
  ["", "us", ""],
] as const)("%j in %s is %j", (typed, units, written) => {
  expect(withScale(typed, units)).toBe(written);
});

test("weeks begin on Sunday where that is the custom", () => {
  expect(firstWeekday("not a language at all")).toBe(1);
  expect([0, 1]).toContain(firstWeekday("en-US"));
});
