import { expect, test } from "vitest";
import { comesOff, goBy, leaveBy } from "./comes-off";

const document = {
  steps: [{ id: "form", puts: ["panel"] }, { id: "strip", takes: ["panel", "brace"] }, { id: "tidy" }],
  pieces: [{ id: "panel" }, { id: "brace" }, { id: "wet-seal", goesAfter: { is: "24 h", from: "product sheet" } }, { id: "footing" }],
};

test("reads off the step that takes a piece down, or that it goes by itself, or that it stays", () => {
  expect(comesOff(document, "panel#2")).toEqual({ how: "taken", step: "strip" });
  expect(comesOff(document, "wet-seal")).toEqual({ how: "by-itself", step: "" });
  expect(comesOff(document, "footing")).toEqual({ how: "stays", step: "" });
});

test("another step takes it down, and only that one", () => {
  expect(leaveBy(document, "panel", "taken", "tidy")).toEqual([
    { path: ["steps", "id=strip", "takes"], value: ["brace"] },
    { path: ["steps", "id=tidy", "takes"], value: ["panel"] },
  ]);
});

test("what is taken down does not go by itself as well", () => {
  expect(leaveBy(document, "wet-seal", "taken", "tidy")).toEqual([
    { path: ["steps", "id=tidy", "takes"], value: ["wet-seal"] },
    { path: ["pieces", "id=wet-seal", "goesAfter"] },
  ]);
});

test("what goes by itself is taken down by no step, and what stays by none either", () => {
  const strip = { path: ["steps", "id=strip", "takes"], value: ["brace"] };
  expect(goBy(document, "panel", "24 h")).toEqual([strip, { path: ["pieces", "id=panel", "goesAfter"], value: "24 h" }]);
  expect(leaveBy(document, "panel", "stays", "")).toEqual([strip]);
});
