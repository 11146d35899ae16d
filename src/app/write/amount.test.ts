import { expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../../core/build";
import { amountChoices, amountText, partsOf, typedParts, writtenAmount } from "./amount";

const document = {
  calendars: [{ id: "weekends" }, { id: "county", name: "County office" }],
  steps: [
    { id: "dig", name: "Dig" },
    { id: "pour-pad", name: "Pour the pad", pour: { strength: "3000 psi" } },
    { id: "cast", pour: { strength: "20 MPa" } },
    { id: "vault" },
  ],
  pours: [{ id: "barrel", step: "vault", mix: { strength: "4000 psi" } }],
};
const choices = amountChoices(document);

test("only pours of a stated strength and calendars are offered, by name", () => {
  expect(choices.pours).toEqual([
    { id: "pour-pad", name: "Pour the pad" },
    { id: "cast", name: "cast" },
    { id: "vault", name: "vault" },
  ]);
  expect(choices.calendars.map((one) => one.name)).toEqual(["weekends", "County office"]);
});

test.each([
  "24 h",
  "70 % of pour-pad",
  "75 % of vault",
  "28 warm days of vault",
  "3 days of county",
  { is: "8 h", on: "weekends" },
  { is: "500 psi of cast", from: "engineer" },
])("%j is shown in two fields and written back as it was", (value) => {
  expect(writtenAmount(value, partsOf(value), choices)).toEqual({ value });
});

test("a pour or an office can be typed by its name", () => {
  expect(typedParts("70 % of Pour the pad", "", choices)).toEqual({ figure: "70 %", of: "pour-pad" });
  expect(typedParts("3 days of “county office”", "", choices)).toEqual({ figure: "3 days", of: "county" });
  expect(typedParts("70 %", "cast", choices)).toEqual({ figure: "70 %", of: "cast" });
  expect(typedParts("70 % of the roof", "", choices)).toBe("No pour and no calendar is called “the roof”; choose one from the list.");
});

test("what does not go together is said, and an empty figure writes nothing", () => {
  expect(writtenAmount("24 h", { figure: "", of: "" }, choices)).toEqual({ value: undefined });
  expect(writtenAmount("", { figure: "70 %", of: "" }, choices)).toBe("“70 %” is a strength: choose the pour that it is of.");
  expect(writtenAmount("", { figure: "3 warm days", of: "" }, choices)).toBe("“3 warm days” counts from a pour: choose which.");
  expect(writtenAmount("", { figure: "24 h", of: "cast" }, choices)).toBe("“24 h” is no strength; write 70 %, 500 psi or 10 MPa.");
  expect(writtenAmount("", { figure: "70 %", of: "" }, { pours: [], calendars: [] })).toMatch(/^No step here pours/);
});

test("of a single pour the strength is meant without being told", () => {
  const one = amountChoices({ steps: [{ id: "cast", pour: { strength: "20 MPa" } }] });
  expect(writtenAmount(undefined, { figure: "5 MPa", of: "" }, one)).toEqual({ value: "5 MPa of cast" });
});

test("what is written so is read, and told by name", () => {
  const written = writtenAmount({ is: "1 d", from: "drawing" }, { figure: "70 %", of: "pour-pad" }, choices) as { value: unknown };
  const built = readDocument(
    documentOf({
      steps: [{ id: "pour-pad", pour: { strength: "3000 psi" } }, { id: "strip" }],
      waits: [{ id: "w", from: "pour-pad", to: "strip", least: written.value }],
    }),
  );
  expect(built.findings).toEqual([]);
  expect(built.build?.waits[0]?.least).toMatchObject({ amount: 700, from: "drawing" });
  expect(amountText(written.value, choices)).toBe("70 % of Pour the pad");
});
