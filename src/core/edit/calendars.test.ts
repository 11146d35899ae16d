import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, goesBy, removeMember, replaceCalendar } from ".";

const document = documentOf({
  usual: "evenings",
  calendars: [
    { id: "evenings", name: "Evenings", week: { wed: ["18:00-21:00"] } },
    { id: "other", name: "Other", week: { mon: ["8:00-16:00"] } },
  ],
  people: [{ id: "me", calendar: "evenings" }, { id: "helper" }],
  stock: [{ id: "evenings-sheets" }],
  steps: [
    { id: "form", name: "evenings", work: "2 h", calendar: "evenings", notes: "3 days of evenings", cautions: ["3 days of evenings"] },
    { id: "pour", work: "2 h", pour: { strength: "3000 psi" } },
    { id: "look", work: "1 h", calendar: "other" },
  ],
  pieces: [{ id: "wet", goesAfter: { is: "8 h", on: "evenings", from: "own guess" } }],
  waits: [
    { id: "notice", from: "form", to: "pour", least: "3 days of evenings" },
    { id: "set", from: "pour", to: "look", least: "3 d" },
  ],
  choices: [{ id: "joint", either: [{ waits: [{ from: "form", to: "look", least: { is: "1 day of evenings" } }] }] }],
  deliveries: [{ id: "bars", calendar: "evenings", lead: "2 days of evenings" }],
  bookings: [{ id: "pump", step: "pour", calendar: "other" }],
  groups: [{ id: "two", count: 2, members: ["look"], differences: { "2": { look: { calendar: "evenings" } } } }],
});

test("all that goes by a calendar is found, and words are left alone", () => {
  expect(goesBy(document, "evenings").map(({ list, id, key }) => `${list} ${id} ${key.join(".")}`)).toEqual([
    "usual  usual",
    "people me calendar",
    "steps form calendar",
    "pieces wet goesAfter.on",
    "waits notice least",
    "choices joint either.0.waits.0.least.is",
    "deliveries bars calendar",
    "deliveries bars lead",
    "groups two differences.2.look.calendar",
  ]);
  expect(goesBy(document, "weekends")).toEqual([]);
  expect(goesBy(null, "weekends")).toEqual([]);
});

test("replaced everywhere, the calendar can go and the build still reads; undone it is the same bytes", () => {
  expect(readDocument(document).build).not.toBeNull();
  const edits = [...replaceCalendar(document, "evenings", "other"), ...removeMember(document, "calendars", "evenings")];
  const { document: after, inverse } = apply(document, edits);
  expect(goesBy(after, "evenings")).toEqual([]);
  const { build, findings } = readDocument(after);
  expect(findings.filter(({ severity }) => severity === "stop")).toEqual([]);
  expect(build?.usual).toBe("other");
  expect(build?.waits.find(({ id }) => id === "notice")?.least?.text).toBe("3 days of other");
  expect(build?.steps.find(({ id }) => id === "form")?.notes).toBe("3 days of evenings");
  expect(JSON.stringify(apply(after, inverse).document)).toBe(JSON.stringify(document));
});
