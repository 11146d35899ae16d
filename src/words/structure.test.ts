import { describe, expect, test } from "vitest";
import { faultsOf } from "./lint.testing";
import { type BodyChange, bodiesSentence, carryingCaution, stateWords, structureSentence } from "./structure";

const change = (name: string, state: BodyChange["state"], more: Partial<BodyChange> = {}): BodyChange => ({
  name,
  state,
  hole: false,
  form: null,
  isState: true,
  ...more,
});

describe("what changes on a day", () => {
  test("is told by what becomes of it, each name once", () => {
    expect(
      structureSentence("Sat 1 May 2027", [
        change("Side walls", "poured"),
        change("Side walls", "poured"),
        change("Back wall", "poured"),
        change("Footing", "carrying"),
      ]),
    ).toBe("Sat 1 May 2027. Poured: Side walls and Back wall. Carrying: Footing.");
  });

  test("a form that comes or goes is told where nothing else changes", () => {
    expect(
      structureSentence("Sat 1 May 2027", [
        change("Back wall", "bars in", { form: "up", isState: false }),
        change("Vault", "curing", { form: "off", isState: false }),
        change("Porch", "stripped", { form: "off" }),
      ]),
    ).toBe("Sat 1 May 2027. Form up: Back wall. Form off: Vault. Stripped: Porch.");
  });

  test("of a hole: what has become of the earth", () => {
    expect(structureSentence("Sat 1 May 2027", [change("Trench", "stands", { hole: true })])).toBe("Sat 1 May 2027. Dug: Trench.");
    expect([stateWords("not yet", true), stateWords("under way", true), stateWords("stands", false)]).toEqual([
      "not dug yet",
      "being dug",
      "stands",
    ]);
  });

  test("nothing is said as nothing", () => {
    expect(structureSentence("Sun 2 May 2027", [])).toBe("As it stands on Sun 2 May 2027.");
  });
});

test("every sentence is fit to be read", () => {
  const all = [
    carryingCaution,
    ...Object.values(bodiesSentence).filter((one) => one !== ""),
    structureSentence("Sat 1 May", [change("Wall", "poured")]),
  ];
  expect(all.flatMap((one) => faultsOf(one, null))).toEqual([]);
});
