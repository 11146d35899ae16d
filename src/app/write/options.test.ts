import { expect, test } from "vitest";
import { namesake } from "./options";

test("a name typed again finds what goes by it, and no other", () => {
  const options = [
    { id: "trench", name: "Footing trench" },
    { id: "wall", name: "Behind the wall" },
  ];
  expect(namesake(options, " footing  Trench ")?.id).toBe("trench");
  expect(namesake(options, "footing")).toBeUndefined();
});
