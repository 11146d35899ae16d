import { expect, test } from "vitest";
import { isSeveral } from "./several";

test.each([
  ["Shores and joists", true],
  ["Striking wedges", true],
  ["Seven ribs in halves", true],
  ["Bars", true],
  ["Scaffold with ladder to the deck", false],
  ["Truss", false],
  ["Trench for the pipes", false],
  ["Form, sides and front", false],
  ["Abacus", false],
  ["Gravel bed", false],
])("%s", (name, several) => {
  expect(isSeveral(name)).toBe(several);
});
