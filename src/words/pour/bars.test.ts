import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import { barSheets } from "../../core/pour";
import { barSentences, barSetSentence, cureSentence } from "../index";

function pour(bars: object, more: object = {}) {
  const written = slabPour(more) as { elements: readonly object[] };
  const [element, ...rest] = written.elements;
  return buildOf({ steps: [{ id: "a" }], pours: [{ ...written, removals: [], elements: [{ ...element, bars: [bars] }, ...rest] }] })
    .pours[0]!;
}

test("a set of bars is told with its number, and what the tables say of it in the units shown", () => {
  const { mix, elements } = pour({
    name: "across",
    size: 5,
    number: 8,
    long: "7 ft 6 in",
    spacing: "12 in",
    cover: "1.5 in",
    supported: "22 in",
  });
  const [element] = elements;
  const set = element!.bars[0]!;
  const [sheet] = barSheets(element!, mix);
  expect(barSetSentence(set, "us")).toBe("Across: 8 of number 5, 7 ft 6 in long, 12 in apart.");
  const said = barSentences(set, sheet!, "us");
  // 8 times 7.5 ft at 1.043 lb/ft (ASTM A615).
  expect(said[0]).toBe("Together they weigh 63 lb.");
  expect(said[1]).toContain("Cover 1 1/2 in, of at least 1 1/2 in");
  expect(said[2]).toMatch(/the lap is \d+ in; .* below them \d+ in/);
  expect(said[3]).toMatch(
    /^Between supports 22 in apart they sag .* under a foot, at \d+ ksi of the 60 ksi they yield at; at most \d+ in does\.$/,
  );
  expect(barSentences(set, sheet!, "metric")[0]).toBe("Together they weigh 28 kg.");
});

test("cover that is not written asks for the least, and ties say how far apart", () => {
  const { mix, elements } = pour({ name: "", size: 3, number: 2, long: "3 ft", sort: "tie" });
  const set = elements[0]!.bars[0]!;
  const said = barSentences(set, barSheets(elements[0]!, mix)[0]!, "us");
  expect(barSetSentence(set, "us")).toMatch(/^Bars without a name: 2 of number 3, .*, ties around the others\.$/);
  expect(said.some((one) => one.startsWith("Cover is not written; "))).toBe(true);
  expect(said.some((one) => one.includes("lapped"))).toBe(false);
});

test("how it is kept wet and warm stands in one line", () => {
  const cure = (how: object) => cureSentence(pour({ size: 4, long: "3 ft" }, { cure: how }).cure, "us");
  expect(cure({ how: "wet", days: 7 })).toBe("Kept wet for 7 days; not held warm; in the weather.");
  expect(cure({ how: "covered", held: "55 °F", heldFor: "3 d", exposed: false })).toBe(
    "Covered; held at 55 °F or warmer for 3 days; indoors.",
  );
  expect(cure({})).toBe("Nothing is said of how it is kept wet or sealed; not held warm; in the weather.");
});

test("a metric bar is told by its diameter", () => {
  const { mix, elements } = pour({ name: "along", size: "12 mm", number: 5, long: "3 m", cover: "40 mm" });
  const set = elements[0]!.bars[0]!;
  expect(barSetSentence(set, "metric")).toBe("Along: 5 of 12 mm, 3 m long.");
  // 5 times 3 m at 0.888 kg/m (ISO 6935-2): 13.3 kg.
  expect(barSheets(elements[0]!, mix)[0]?.mass_kg).toBeCloseTo(15 * 0.888, 6);
});
