import fc from "fast-check";
import { expect, test } from "vitest";
import { chalkRoute, type End } from "./chalk-route";
import type { Band, Taken } from "./layout";

const band = (y0: number, ...taken: [Taken["what"], number, number][]): Band => ({
  lane: 0,
  y0,
  y1: y0 + 20,
  channel: y0 + 22,
  taken: taken.map(([what, from, to]) => ({ what, from, to })),
});
/** The end of a block, and the start of one. */
const leaves = (at: number, x: number): End => ({ band: at, x, side: x + 2 });
const meets = (at: number, x: number): End => ({ band: at, x, side: x - 2 });

test("in one row it runs level below what stands there", () => {
  const bands = [band(0, ["block", 0, 50], ["words", 60, 140], ["block", 200, 240])];
  expect(chalkRoute(bands, leaves(0, 50), meets(0, 200))).toEqual([
    [
      [50, 22],
      [200, 22],
    ],
  ]);
});

test("it goes down along the edge of the block that it comes to, whatever stands beside it, and up along the one that it leaves", () => {
  const bands = [band(0, ["block", 0, 50]), band(27, ["words", 40, 195], ["block", 200, 240])];
  expect(chalkRoute(bands, leaves(0, 50), meets(1, 200))).toEqual([
    [
      [50, 22],
      [198, 22],
      [198, 49],
      [200, 49],
    ],
  ]);
  const up = [band(0, ["block", 200, 240]), band(27, ["block", 0, 50], ["words", 54, 260])];
  expect(chalkRoute(up, leaves(1, 50), meets(0, 200))[0]!.slice(0, 3)).toEqual([
    [50, 49],
    [52, 49],
    [52, 22],
  ]);
});

test("it goes round a block", () => {
  const bands = [band(0, ["block", 0, 50]), band(27, ["block", 40, 120]), band(54, ["block", 60, 90])];
  const [line, ...rest] = chalkRoute(bands, leaves(0, 50), meets(2, 60));
  expect(rest).toEqual([]);
  expect(line).toContainEqual([37, 22]);
  expect(line!.some(([x, y]) => y > 22 && y < 49 && x > 40 && x < 120)).toBe(false);
});

test("it goes behind words rather than round them, and is broken there", () => {
  const bands = [band(0, ["block", 0, 50]), band(27, ["words", 0, 300]), band(54, ["block", 60, 90])];
  const lines = chalkRoute(bands, leaves(0, 50), meets(2, 60));
  expect(lines.length).toBe(2);
  expect(lines.flat().some(([, y]) => y > 28 && y < 46)).toBe(false);
  expect(lines.flat().every(([x]) => x >= 48 && x <= 62)).toBe(true);
});

test("from a flag it comes down from the top of the sheet", () => {
  const bands = [band(0, ["words", 300, 400]), band(27, ["block", 100, 140])];
  const lines = chalkRoute(bands, { band: -1, x: 80, side: 80 }, meets(1, 100));
  expect(lines[0]![0]).toEqual([80, 0]);
  expect(lines.at(-1)!.at(-1)).toEqual([100, 49]);
});

const what = fc.constantFrom<Taken["what"]>("block", "wait", "words");
const row = fc
  .array(fc.tuple(what, fc.integer({ min: 0, max: 380 }), fc.integer({ min: 4, max: 60 })), { maxLength: 4 })
  .map((list) => list.map(([kind, from, wide]): [Taken["what"], number, number] => [kind, from, from + wide]).sort((a, b) => a[1] - b[1]));
const x = fc.integer({ min: 80, max: 320 });

test("it runs level or upright only, from end to end, is broken behind words only, and crosses a block only where there is no room beside it", () => {
  fc.assert(
    fc.property(fc.array(row, { minLength: 2, maxLength: 6 }), fc.nat(), fc.nat(), x, x, (rows, a, b, x0, x1) => {
      const bands = rows.map((list, index) => band(index * 27, ...list));
      const [from, to] = [leaves(a % bands.length, x0), meets(b % bands.length, x1)];
      const lines = chalkRoute(bands, from, to);
      if (from.band === to.band && x0 === x1) {
        expect(lines).toEqual([]);
        return;
      }
      expect(lines[0]![0]).toEqual([x0, bands[from.band]!.channel]);
      expect(lines.at(-1)!.at(-1)).toEqual([x1, bands[to.band]!.channel]);
      const inside = (one: Band, kind: Taken["what"], at: number) => one.taken.some((t) => t.what === kind && at > t.from && at < t.to);
      const isFree = (one: Band, at: number) => !one.taken.some((t) => t.what === "block" && at > t.from - 3 && at < t.to + 3);
      lines.forEach((line, part) => {
        const next = lines[part + 1];
        if (next) {
          const [end, start] = [line.at(-1)!, next[0]!];
          const behind = bands.find((one) => Math.min(end[1], start[1]) === one.y0 + 1);
          expect(end[0]).toBe(start[0]);
          expect(behind?.taken.some((t) => t.what === "words" && end[0] > t.from - 3 && end[0] < t.to + 3)).toBe(true);
        }
        line.forEach((point, index) => {
          const before = line[index - 1];
          if (!before) return;
          expect(before[0] === point[0] || before[1] === point[1]).toBe(true);
          const [top, foot] = [Math.min(before[1], point[1]), Math.max(before[1], point[1])];
          for (const one of bands.filter(({ y0, y1 }) => y0 >= top - 1 && y1 <= foot)) {
            const own = [from, to].some((end) => bands[end.band] === one && end.side === point[0]);
            if (own || !inside(one, "block", point[0])) continue;
            const [low, high] = [Math.max(0, Math.min(x0, x1) - 60), Math.max(x0, x1) + 60];
            const beside = one.taken.flatMap((t) => [t.from - 3, t.to + 3]).filter((at) => at > low && at < high);
            expect([x0, x1, ...beside].some((at) => isFree(one, at))).toBe(false);
          }
        });
      });
    }),
  );
});
