import { expect, test } from "vitest";
import { walkFrom } from "./walk";

const box = (id: string, x: number, y: number) => ({ x0: x, y0: y, x1: x + 10, y1: y + 10, of: { id } });
const boxes = [box("dig", 0, 0), box("form", 40, 30), box("tie", 40, 0), box("pour", 80, 15)];

test.each([
  [null, "ArrowRight", "dig"],
  ["dig", "ArrowRight", "tie"],
  ["tie", "ArrowDown", "form"],
  ["form", "ArrowUp", "tie"],
  ["tie", "ArrowRight", "pour"],
  ["pour", "ArrowRight", null],
  ["dig", "End", "pour"],
  ["pour", "Home", "dig"],
  ["dig", "x", null],
])("from %s by %s to %s", (from, key, to) => {
  expect(walkFrom(boxes, from, key)).toBe(to);
});

test("every box is reached from the first by arrow keys alone", () => {
  const seen = new Set<string>(["dig"]);
  const line = ["dig"];
  for (const from of line) {
    for (const key of ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"]) {
      const to = walkFrom(boxes, from, key);
      if (to && !seen.has(to)) {
        seen.add(to);
        line.push(to);
      }
    }
  }
  expect(seen.size).toBe(boxes.length);
});

test("left and right follow the arrows, and what lies that way where there are none", () => {
  expect(walkFrom(boxes, "dig", "ArrowRight", { before: [], after: ["form"] })).toBe("form");
  expect(walkFrom(boxes, "pour", "ArrowLeft", { before: ["form"], after: [] })).toBe("form");
  expect(walkFrom(boxes, "dig", "ArrowRight", { before: [], after: [] })).toBe("tie");
  expect(walkFrom(boxes, "tie", "ArrowDown", { before: ["dig"], after: ["pour"] })).toBe("form");
});
