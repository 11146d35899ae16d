import { expect, test } from "vitest";
import { cornerAt } from "./pointing";

const strips = [0, 50, 100].map((top) => ({ left: 10, top, bottom: top + 44, width: 320 }));
const cells = { first: 10, count: 32 };
const at = (clientX: number, clientY: number, row: number | null = null) => cornerAt({ clientX, clientY }, strips, cells, row);

test("a point gives the row and the half hour it lies in", () => {
  expect(at(10, 0)).toEqual({ row: 0, cell: 10 });
  expect(at(25, 60)).toEqual({ row: 1, cell: 11 });
  expect(at(329, 143)).toEqual({ row: 2, cell: 41 });
});

test("beyond the ends the nearest cell counts, between two strips none does, and of touch the row stays", () => {
  expect(at(-50, -20)).toEqual({ row: 0, cell: 10 });
  expect(at(900, 400)).toEqual({ row: 2, cell: 41 });
  expect(at(40, 47)).toBeNull();
  expect(at(40, 120, 1)).toEqual({ row: 1, cell: 13 });
  expect(cornerAt({ clientX: 0, clientY: 0 }, [], cells, null)).toBeNull();
});
