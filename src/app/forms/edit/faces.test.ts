import { expect, test } from "vitest";
import { faceAgainst, faceRows, facesWith, faceVisible } from "./faces";

test("a face that is not named is formed, or what is usual of it", () => {
  expect(faceAgainst(undefined, "a")).toBe("form");
  expect(faceAgainst(undefined, "top", "free")).toBe("free");
  expect(faceAgainst([{ face: "a", against: "earth" }], "a")).toBe("earth");
});

test("a face is written only while it says something", () => {
  expect(facesWith(undefined, "b", { against: "earth" })).toEqual([{ face: "b", against: "earth" }]);
  expect(facesWith([{ face: "b", against: "earth" }], "b", { against: "form" })).toBeUndefined();
  expect(facesWith([{ face: "b", against: "earth", visible: true }, { face: "top" }], "b", { against: "form" })).toEqual([
    { face: "b", visible: true },
    { face: "top" },
  ]);
  expect(facesWith(undefined, "a", { against: "form" })).toBeUndefined();
  expect(facesWith(undefined, "soffit", { against: "earth" }, "earth")).toBeUndefined();
  expect(facesWith(undefined, "soffit", { against: "form" }, "earth")).toEqual([{ face: "soffit", against: "form" }]);
});

test("that a face stays visible is said beside what it is cast against", () => {
  const faces = facesWith([{ face: "a", against: "old work" }], "a", { visible: true });
  expect(faces).toEqual([{ face: "a", against: "old work", visible: true }]);
  expect([faceVisible(faces, "a"), faceVisible(faces, "b")]).toEqual([true, false]);
  expect(facesWith([{ face: "b", visible: true }], "b", { visible: false })).toBeUndefined();
});

test("what lies on the ground has its underside on earth", () => {
  const slab = { kind: "slab", long_mm: 3000, wide_mm: 2000, thick_mm: 100 } as const;
  const usual = (kind: "slab" | "deck slab" | "footing") => faceRows({ ...slab, kind }).find(({ face }) => face === "soffit")?.usual;
  expect([usual("slab"), usual("footing"), usual("deck slab")]).toEqual(["earth", "earth", "form"]);
});
