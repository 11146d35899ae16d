import { expect, test } from "vitest";
import { append, idFrom, memberOf, putKey, quantityOf, withFigure } from "./written";

const document = { steps: [{ id: "dig", name: "Dig" }], places: [{ id: "dig-2" }] };

test("an id is made from the name and is not one that is taken", () => {
  expect(idFrom("Tie column bars", document)).toBe("tie-column-bars");
  expect(idFrom("Dig!", document)).toBe("dig-3");
  expect(idFrom("2 × 4 émboîté", document)).toBe("emboite");
  expect(idFrom("???", document)).toBe("item");
});

test("a new figure keeps its source, its calendar and its spread", () => {
  expect(withFigure({ is: "6 h", from: "drawing" }, "7 h")).toEqual({ is: "7 h", from: "drawing" });
  expect(withFigure("6 h", "4 h / 6 h / 9 h")).toEqual({ low: "4 h", likely: "6 h", high: "9 h" });
  expect(withFigure({ low: "1 h", likely: "2 h", high: "3 h", from: "own guess" }, "2 h / 3 h / 4 h")).toEqual({
    low: "2 h",
    likely: "3 h",
    high: "4 h",
    from: "own guess",
  });
  expect(withFigure("6 h", " ")).toBeUndefined();
});

test("figures are shown as typed", () => {
  expect(quantityOf({ is: "6 h", from: "drawing" })).toBe("6 h");
  expect(quantityOf({ low: "4 h", likely: { is: "6 h" }, high: "9 h" })).toBe("4 h / 6 h / 9 h");
  expect(quantityOf(undefined)).toBe("");
});

test("a copy of a group is written where its member is", () => {
  expect(memberOf(document, "steps", "dig#2")).toEqual({ id: "dig", name: "Dig" });
  expect(putKey("steps", "dig#2", "name", "Dig deep")).toEqual({ path: ["steps", "id=dig", "name"], value: "Dig deep" });
  expect(putKey("steps", "dig", "puts", [])).toEqual({ path: ["steps", "id=dig", "puts"] });
});

test("a member is added at the end of its list", () => {
  expect(append("steps", { id: "form" })).toEqual({ path: ["steps", "id=form"], value: { id: "form" } });
});
