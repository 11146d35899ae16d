import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cutLengths, inRuns } from "./cut-lengths";
import { cutSheets, type Part, type PlacedPart, type Sheet, tiles } from "./cut-list";

const ft = 304.8;
const sheet: Sheet = { long_mm: 8 * ft, wide_mm: 4 * ft, kerf_mm: 3 };
const part = (long_mm: number, wide_mm: number, number = 1, turns = true): Part => ({
  name: `${long_mm}`,
  long_mm,
  wide_mm,
  number,
  turns,
});

/** Whether a saw can free every part by cuts from edge to edge: some cut parts them in two sets, and so on. */
function sawable(parts: readonly PlacedPart[]): boolean {
  if (parts.length <= 1) return true;
  for (const [from, size] of [
    ["x_mm", "long_mm"],
    ["y_mm", "wide_mm"],
  ] as const) {
    for (const at of parts.map((p) => p[from] + p[size])) {
      const below = parts.filter((p) => p[from] + p[size] <= at + 1e-5);
      const above = parts.filter((p) => p[from] >= at - 1e-5);
      if (above.length > 0 && below.length + above.length === parts.length) return sawable(below) && sawable(above);
    }
  }
  return false;
}

describe("sheets", () => {
  test("two halves of a sheet are one sheet but for the width of the cut", () => {
    expect(cutSheets([part(8 * ft, 2 * ft - 1.5, 2)], sheet).sheets).toHaveLength(1);
    expect(cutSheets([part(8 * ft, 2 * ft, 2)], sheet).sheets).toHaveLength(2);
  });

  test("a part as large as the sheet fits it, a larger one is named", () => {
    const cut = cutSheets([part(8 * ft, 4 * ft), part(8 * ft + 10, 4 * ft), part(4 * ft, 8 * ft, 1, false)], sheet);
    expect(cut.sheets).toHaveLength(1);
    expect(cut.tooLarge).toEqual([`${8 * ft + 10}`, `${4 * ft}`]);
  });

  test("parts turn where their grain may", () => {
    expect(cutSheets([part(4 * ft, 8 * ft)], sheet).sheets[0]?.[0]).toMatchObject({ turned: true, long_mm: 8 * ft });
  });

  test("four sides of two columns come out of two sheets", () => {
    const sides = [part(6 * ft, 12 * 25.4, 4), part(6 * ft, 13.5 * 25.4, 4)];
    const cut = cutSheets(sides, sheet);
    expect(cut.sheetsAtLeast).toBe(2);
    expect(cut.sheets.length).toBeLessThanOrEqual(3);
    expect(cut.sheets.flat()).toHaveLength(8);
  });

  test("a face of 16 by 6 ft is two sheets and two halves, which come out of one", () => {
    const parts = tiles(part(16 * ft, 6 * ft, 1, false), sheet);
    expect(parts.map((p) => [Math.round(p.long_mm / ft), Math.round((p.wide_mm / ft) * 10) / 10, p.number])).toEqual([
      [8, 4, 2],
      [8, 2, 2],
    ]);
    expect(cutSheets(parts, sheet).sheets).toHaveLength(3);
    expect(tiles(part(3 * ft, 2 * ft, 4), sheet)).toEqual([part(3 * ft, 2 * ft, 4)]);
  });

  test("nothing to cut needs no sheet", () => {
    expect(cutSheets([], sheet)).toEqual({ sheets: [], sheetsAtLeast: 0, tooLarge: [] });
  });

  test("every part lies inside, apart by a cut, each freed by cuts from edge to edge, and area is never beaten", () => {
    const size = fc.double({ min: 60, max: 1200, noNaN: true });
    const some = fc.array(fc.record({ long: size, wide: size, number: fc.integer({ min: 1, max: 5 }), turns: fc.boolean() }), {
      minLength: 1,
      maxLength: 9,
    });
    fc.assert(
      fc.property(some, (list) => {
        const parts = list.map((p, i) => ({ name: `${i}`, long_mm: p.long, wide_mm: p.wide, number: p.number, turns: p.turns }));
        const cut = cutSheets(parts, sheet);
        expect(cut.tooLarge).toEqual([]);
        expect(cut.sheets.flat()).toHaveLength(parts.reduce((sum, p) => sum + p.number, 0));
        expect(cut.sheets.length).toBeGreaterThanOrEqual(cut.sheetsAtLeast);
        for (const placed of cut.sheets) {
          expect(placed.length).toBeGreaterThan(0);
          for (const p of placed) {
            expect(p.x_mm + p.long_mm).toBeLessThanOrEqual(sheet.long_mm + 1e-5);
            expect(p.y_mm + p.wide_mm).toBeLessThanOrEqual(sheet.wide_mm + 1e-5);
            const from = parts[Number(p.name)]!;
            expect(p.turned && !from.turns).toBe(false);
            expect([p.long_mm, p.wide_mm]).toEqual(p.turned ? [from.wide_mm, from.long_mm] : [from.long_mm, from.wide_mm]);
          }
          placed.forEach((p, i) => {
            for (const q of placed.slice(i + 1)) {
              const apart = Math.max(
                p.x_mm - q.x_mm - q.long_mm,
                q.x_mm - p.x_mm - p.long_mm,
                p.y_mm - q.y_mm - q.wide_mm,
                q.y_mm - p.y_mm - p.wide_mm,
              );
              expect(apart).toBeGreaterThanOrEqual(3 - 1e-5);
            }
          });
          expect(sawable(placed)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe("lengths", () => {
  const stock = [8, 10, 12, 14, 16].map((l) => l * ft);

  test("bought so that least is left over: six of 5 ft are three of 10", () => {
    expect(cutLengths([{ long_mm: 5 * ft - 3, number: 6 }], stock).stock).toEqual([{ long_mm: 10 * ft, number: 3 }]);
  });

  test("the last one is bought shorter", () => {
    expect(cutLengths([{ long_mm: 7.9 * ft, number: 3 }], stock).stock).toEqual([{ long_mm: 8 * ft, number: 3 }]);
  });

  test("what no stock reaches is named, and stock of its length is not", () => {
    const cut = cutLengths(
      [
        { long_mm: 17 * ft, number: 2 },
        { long_mm: 16 * ft, number: 1 },
      ],
      stock,
    );
    expect(cut.tooLong).toEqual([{ long_mm: 17 * ft, number: 2 }]);
    expect(cut.stock).toEqual([{ long_mm: 16 * ft, number: 1 }]);
    expect(cutLengths([], stock)).toEqual({ stock: [], tooLong: [] });
  });

  test("never less than what is cut from it, never a length more than one a piece", () => {
    const piece = fc.record({ long_mm: fc.double({ min: 100, max: 16 * ft, noNaN: true }), number: fc.integer({ min: 1, max: 8 }) });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 8 }), (pieces) => {
        const { stock: bought } = cutLengths(pieces, stock);
        const sum = (list: readonly { long_mm: number; number: number }[]) => list.reduce((s, p) => s + p.long_mm * p.number, 0);
        const count = (list: readonly { number: number }[]) => list.reduce((s, p) => s + p.number, 0);
        expect(sum(bought)).toBeGreaterThanOrEqual(sum(pieces) - count(pieces));
        expect(count(bought)).toBeLessThanOrEqual(count(pieces));
      }),
    );
  });

  test("a run that goes on is cut at stock lengths", () => {
    expect(inRuns(40 * ft, 16 * ft, 2).map((p) => [Math.round(p.long_mm / ft), p.number])).toEqual([
      [16, 4],
      [8, 2],
    ]);
    expect(inRuns(16 * ft, 16 * ft, 3)).toEqual([{ long_mm: 16 * ft, number: 3 }]);
    expect(inRuns(3 * ft, 16 * ft, 1)).toEqual([{ long_mm: 3 * ft, number: 1 }]);
  });
});
