import { expect, test } from "vitest";
import { apply } from "../../core/edit";
import { kits, putIn } from "../../core/kits";
import { unknownCodes, unknownSentence } from "./unknown";

/** Every kit with its usual answers, one after the other in one build, so that what joins finds something. */
const made = kits.reduce<{ readonly document: unknown; readonly codes: readonly string[] }>(
  ({ document, codes }, kit) => {
    const { edits, unknown } = putIn(document, kit.id, kit.name, {});
    return { document: apply(document, edits).document, codes: [...codes, ...unknown.map(({ code }) => code)] };
  },
  { document: { site: { units: "us" } }, codes: [] },
);

test("whatever a kit does not know by its usual answers has a sentence of its own", () => {
  expect(made.codes.length).toBeGreaterThan(3);
  expect([...new Set(made.codes)].filter((code) => !unknownCodes.includes(code))).toEqual([]);
});

test("each says what is open and whom to ask, without a code or an id", () => {
  for (const code of unknownCodes) {
    const sentence = unknownSentence(code);
    expect(sentence, code).toMatch(/^[A-Z].*\.$/);
    expect(sentence, code).toMatch(/\b([Aa]sk|office|to say|has to|test|join)\b/);
    expect(sentence, code).not.toMatch(/[a-z]-[a-z]+-|undefined|\b(float|utili[sz]ation|driver)\b/);
  }
});

test("a code that nobody wrote a sentence for still says whom to ask", () => {
  expect(unknownSentence("snow-drift")).toBe("Something about it (snow drift). Ask whoever designs it, or the building office.");
});
