import fc from "fast-check";
import { expect, test } from "vitest";
import { rect } from "../marks/mark";
import { findMarks, indexMarks } from "./window";

const box = fc.tuple(
  fc.integer({ min: -100, max: 6000 }),
  fc.integer({ min: 0, max: 900 }),
  fc.integer({ min: 0, max: 5000 }),
  fc.integer({ min: 1, max: 60 }),
);

test("a window holds exactly the marks that touch it, in drawing order, and those kept", () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 60 }), box, fc.nat(), (boxes, [wx, wy, ww, wh], kept) => {
      const marks = boxes.map(([x, y, wide, high], index) =>
        rect(`m${index}`, "block", 0, x, y, x + wide, y + high, { list: "steps", id: `s${index % 7}` }),
      );
      const window = { x0: wx, y0: wy, x1: wx + ww, y1: wy + wh };
      const keep = `steps s${kept % 7}`;
      const slow = marks.filter(
        (one) =>
          (one.x1 >= window.x0 && one.x0 <= window.x1 && one.y1 >= window.y0 && one.y0 <= window.y1) || `steps ${one.of?.id}` === keep,
      );
      expect(indexMarks(marks).within(window, new Set([keep]))).toEqual(slow);
      const found = findMarks(marks);
      for (const _ of ["all looked at", "sorted"]) expect(found.within(window, new Set([keep]))).toEqual(slow);
    }),
  );
});
