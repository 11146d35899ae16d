import { describe, expect, test } from "vitest";
import { buildOf, readOf } from "../../test/fixtures/make";
import { plan } from "../core/plan";
import { findingSentence, gathered, statementSentence } from "./index";

const told = (partial: Parameters<typeof buildOf>[0]): string[] => {
  const build = buildOf(partial);
  return gathered(plan(build).findings).map((finding) => findingSentence(finding, build));
};

describe("what there is none of", () => {
  test("is said so, once, and a longer look is not promised to find any", () => {
    expect(
      told({
        equipment: [{ id: "saw", name: "Band saw", number: 0 }],
        steps: [{ id: "cut", work: "1 h", equipment: [{ of: "saw", number: 1 }] }],
      }),
    ).toEqual(["“cut” asks for one of the band saw, and there are none."]);
    expect(
      told({
        stock: [{ id: "sheets", name: "Sheets", unit: "sheet", inHand: 0 }],
        pieces: [{ id: "form", uses: [{ of: "sheets", number: 2 }] }],
        steps: [{ id: "set", work: "1 h", puts: ["form"] }],
      }),
    ).toEqual(["Two of the sheets are wanted at once, and there are none; order some."]);
    const build = buildOf({ equipment: [{ id: "saw", name: "Band saw", number: 0 }] });
    const detail = { of: "saw", number: 0 };
    expect(statementSentence({ rule: "window.equipment", detail }, build)).toBe("There are none of the band saw.");
    expect(statementSentence({ rule: "window.stock", detail }, build)).toBe("Of the band saw there are none.");
  });

  test("people asked for in vain are told without it too", () => {
    const sentences = told({ steps: [{ id: "lift", work: "1 h", hands: 5 }] });
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toContain("“lift” asks for five people");
  });
});

test("an amount of working time names its calendar", () => {
  const once = { id: "once", name: "Once", week: {}, extra: { "2027-03-08": ["8:00-9:00"] } };
  const steps = [
    { id: "a", work: "1 h" },
    { id: "b", work: "1 h" },
  ];
  const build = buildOf({ calendars: [once], steps, waits: [{ id: "w", from: "a", to: "b", least: { is: "2 h", on: "once" } }] });
  const { because } = plan(build).findings.find(({ code }) => code === "plan.windows")!;
  expect(because!.map((one) => statementSentence(one, build))).toEqual(["“b” comes after “a”, at least 2 h of “Once” later."]);
});

test("the most that work can be is said in hours, that of a wait in days", () => {
  const { build, findings } = readOf({
    steps: [{ id: "a", work: "2001 h" }],
    waits: [{ id: "w", from: "a", to: "a", least: "4000 d" }],
  });
  const sentences = findings.map((finding) => findingSentence(finding, build));
  expect(sentences).toContain("Step “a”, work: “2001 h” cannot be meant; it can be from 0 min to 2000 h.");
  expect(sentences).toContain("Wait “w”, least: “4000 d” cannot be meant; it can be from 0 min to 3660 d.");
});

test("who may not be alone is told to have somebody there, never to ask for fewer", () => {
  expect(told({ people: [{ id: "me", name: "Me" }], steps: [{ id: "lift", work: "1 h", notAlone: true }] })).toEqual([
    "“lift” is not to be done alone, and the build names one person; name somebody else who can be there.",
  ]);
});

test("a day that was promised is told as promised, also when nothing comes on it", () => {
  const sentences = told({
    steps: [{ id: "frame", work: "2 h", needs: ["lumber"] }],
    deliveries: [{ id: "lumber", name: "Lumber", promised: "2027-03-08" }],
  });
  expect(sentences[0]).toContain("the lumber, promised for Mon 8 Mar, when nothing comes by “Weekends”, so it is there on Sat 13 Mar;");
});

test("a date from before the build begins is told as it was written", () => {
  const build = buildOf({ steps: [{ id: "a", work: "1 h", fixed: "2027-01-02T08:00" }] });
  const { because } = plan(build).findings.find(({ code }) => code === "plan.windows")!;
  expect(statementSentence(because![0]!, build)).toBe("“a” is fixed for Sat 2 Jan, 8:00.");
  const { findings } = readOf({ steps: [{ id: "a", work: "1 h", done: { start: "2027-01-03T08:00", finish: "2027-01-03T09:00" } }] });
  expect(findings.map((finding) => findingSentence(finding, build))).toEqual([
    "Step “a”, done: Sun 3 Jan, 8:00 lies before the build begins on Sat 6 Mar, and counts from then; let the build begin by that day, or write a later one.",
  ]);
});
