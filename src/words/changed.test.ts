import { expect, test } from "vitest";
import { documentOf } from "../../test/fixtures/make";
import { duplicate, group, split } from "../core/edit";
import { asOneSentence, inTwoSentence, pastedSentences, stepsWords } from "./changed";
import { faultsOf } from "./lint.testing";

const document = documentOf({
  pieces: [{ id: "face-a", name: "Face" }],
  steps: [
    { id: "set", name: "Set", puts: ["face-a"] },
    { id: "strip", takes: ["face-a"], after: ["set"] },
    { id: "pour", name: "Pour", sort: "pour", pour: { strength: "20 MPa" } },
  ],
});

test("what is put in is counted, what stays behind is named", () => {
  expect(pastedSentences(duplicate(document, [{ list: "steps", id: "set" }]))).toEqual(["One piece and one step are put in."]);
  const strip = pastedSentences(duplicate(document, [{ list: "steps", id: "strip" }]));
  expect(strip).toEqual([
    "One step is put in.",
    "Left out, as this build has no such thing or something else does it already: the piece “Face” (of “strip”).",
  ]);
  const many = pastedSentences({
    made: [{ list: "steps", name: "a" }],
    leftBehind: Array.from({ length: 9 }, (_, i) => ({ name: `Step ${i % 4}`, of: "deliveries", what: i < 4 ? "Bars" : `Load ${i}` })),
    datesLeft: true,
  });
  expect(many[1]).toContain("the delivery “Bars” (of “Step 0” and 3 more)");
  expect(many[2]).toBe("Dates that held in the other build are left out.");
  for (const one of [...strip, ...many]) expect(faultsOf(one, null), one).toEqual([]);
});

test("every reason not to split or to make several has a sentence of its own", () => {
  const refusedSplit = split(document, "pour", "x");
  expect("refused" in refusedSplit && inTwoSentence(refusedSplit.refused, "Pour")).toMatch(/^“Pour” is a pour, placed in one go/);
  const refusedGroup = group(document, [{ list: "steps", id: "pour" }], 2, "x");
  expect("refused" in refusedGroup && asOneSentence(refusedGroup.refused, "Pour")).toMatch(/^“Pour” is a pour, which stands for itself/);
  const said = [
    ...["gone", "pour", "inspection", "rounds", "done"].map((code) => inTwoSentence(code, "Dig")),
    ...["nothing", "pour", "grouped", "rounds", "booked", "takes", "count"].map((code) => asOneSentence(code, "Dig")),
  ];
  expect(new Set(said).size).toBe(said.length);
  for (const one of said) expect(faultsOf(one, null), one).toEqual([]);
  expect([1, 3, 14].map(stepsWords)).toEqual(["one step", "three steps", "14 steps"]);
});
