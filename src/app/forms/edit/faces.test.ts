import { expect, test } from "vitest";
import { faceAgainst, facesWith } from "./faces";

test("a face that is not named is formed", () => {
  expect(faceAgainst(undefined, "a")).toBe("form");
  expect(faceAgainst([{ face: "a", against: "earth" }], "a")).toBe("earth");
});

test("a face is written only while it says something", () => {
  expect(facesWith(undefined, "b", "earth")).toEqual([{ face: "b", against: "earth" }]);
  expect(facesWith([{ face: "b", against: "earth" }], "b", "form")).toBeUndefined();
  expect(facesWith([{ face: "b", against: "earth", visible: true }, { face: "top" }], "b", "form")).toEqual([
    { face: "b", visible: true },
    { face: "top" },
  ]);
  expect(facesWith(undefined, "a", "form")).toBeUndefined();
});
