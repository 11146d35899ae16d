import { expect, test } from "vitest";
import { apply } from "../../core/edit";
import { removal } from "./removal";

const document = {
  places: [{ id: "cage" }, { id: "top" }],
  pieces: [
    { id: "panel", heldBy: [["brace"], ["guy", "brace"]] },
    { id: "brace", fills: ["cage"] },
  ],
  steps: [
    { id: "tie", place: "cage", reaches: [{ place: "cage" }, { any: [{ place: "cage" }, { place: "top" }] }] },
    { id: "close", after: ["tie"], puts: ["panel", "brace"], leansOn: [{ piece: "brace" }] },
  ],
  waits: [{ id: "cure", from: "tie", to: "close" }],
  bookings: [{ id: "look", step: "tie" }],
};
const without = (list: "steps" | "pieces" | "places", id: string) =>
  apply(document, removal(document, { list, id })).document as typeof document;

test("a step goes with its waits, its bookings and every mention", () => {
  const after = without("steps", "tie");
  expect(after.steps).toEqual([{ id: "close", puts: ["panel", "brace"], leansOn: [{ piece: "brace" }] }]);
  expect(after.waits).toEqual([]);
  expect(after.bookings).toEqual([]);
});

test("a piece goes out of what puts it up, what it holds and what leans on it", () => {
  const after = without("pieces", "brace");
  expect(after.pieces).toEqual([{ id: "panel", heldBy: [["guy"]] }]);
  expect(after.steps[1]).toEqual({ id: "close", after: ["tie"], puts: ["panel"] });
});

test("a place goes out of reaches; one of several that would do leaves the others", () => {
  const after = without("places", "cage");
  expect(after.steps[0]).toEqual({ id: "tie", reaches: [{ any: [{ place: "top" }] }] });
  expect(after.pieces[1]).toEqual({ id: "brace" });
});
