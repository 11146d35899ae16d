import { expect, test } from "vitest";
import { buildOf } from "../../test/fixtures/make";
import { faultsOf } from "./lint.testing";
import { goesByWords, lostSentences } from "./lost";

const build = buildOf({
  people: [
    { id: "me", name: "Ruth" },
    { id: "helper", name: "Owen" },
  ],
  stock: [{ id: "form-sheets", name: "Sheets", inHand: 9 }],
  pieces: [{ id: "front-face", name: "Front face", uses: [{ of: "form-sheets", number: 2 }] }],
  steps: ["a", "b", "c", "d", "e", "f", "g"].map((id) => ({ id: `step-${id}`, name: `Step ${id}`, work: "1 h" })),
  deliveries: [{ id: "form-timber", name: "Timber", brings: [{ of: "form-sheets", number: 4 }] }],
  bookings: [{ id: "pump-it", name: "Pump", step: "step-a" }],
});

test("what goes and what stays is named, and much of it is counted", () => {
  expect(
    lostSentences(
      "Sheets",
      [
        { list: "pieces", id: "front-face", goes: false },
        { list: "deliveries", id: "form-timber", goes: false },
      ],
      build,
    ),
  ).toEqual(["The front face and the delivery of timber stay, without “Sheets”."]);
  expect(lostSentences("Step a", [{ list: "bookings", id: "pump-it", goes: true }], build)).toEqual([
    "With “Step a” goes the booking of pump.",
  ]);
  const steps = build.steps.map(({ id }) => ({ list: "steps", id, goes: false }));
  const [said = ""] = lostSentences("Mixer", steps, build);
  expect(said).toBe("“Step a”, “Step b”, “Step c”, “Step d”, “Step e” and 2 more stay, without “Mixer”.");
  expect(faultsOf(said, build)).toEqual([]);
  expect(lostSentences("Mixer", [], build)).toEqual([]);
});

test("what goes by a calendar is told in one line", () => {
  expect(
    goesByWords(
      [
        { list: "usual", id: "" },
        { list: "people", id: "me" },
        { list: "people", id: "me" },
        ...build.steps.map(({ id }) => ({ list: "steps", id })),
        { list: "waits", id: "w" },
      ],
      build,
    ),
  ).toBe("all steps that name no other, Ruth, 7 steps and 1 wait");
  expect(goesByWords([], build)).toBe("");
});
