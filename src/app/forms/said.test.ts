import { expect, test } from "vitest";
import { withoutPlace } from "./said";

test("a sentence leaves out the pour and the element that stand above it, and nothing else", () => {
  expect(withoutPlace("Pour “Porch”, the columns: its foot is not sealed.", "Columns")).toBe("Its foot is not sealed.");
  expect(withoutPlace("Pour “Porch”, the columns, the ties: what one carries is a guess.", "Columns")).toBe(
    "The ties: what one carries is a guess.",
  );
  expect(withoutPlace("Pour “Porch”: it wants five people.", null)).toBe("It wants five people.");
  expect(withoutPlace("The wall leans.", "Wall")).toBe("The wall leans.");
});
