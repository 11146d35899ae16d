import fc from "fast-check";
import { expect, test } from "vitest";
import type { Band } from "./layout";
import { clearAt, routes } from "./route";

const band = (y0: number, ...taken: [number, number][]): Band => ({
  lane: 0,
  y0,
  y1: y0 + 20,
  channel: y0 + 22,
  taken: taken.map(([from, to]) => ({ what: "words", from, to })),
});

test("a clear x stays, a taken one moves to the nearer side", () => {
  expect(clearAt(band(0, [50, 90]), 20)).toBe(20);
  expect(clearAt(band(0, [50, 90]), 60)).toBe(47);
  expect(clearAt(band(0, [50, 90]), 80)).toBe(93);
});

test("two things close together are passed as one, and too wide a thing is not passed", () => {
  expect(clearAt(band(0, [50, 90], [92, 120]), 88)).toBe(123);
  expect(clearAt(band(0, [0, 900]), 450)).toBeNull();
});

test("a line goes round what stands between two steps", () => {
  const bands = [band(0, [0, 50]), band(27, [40, 120]), band(54, [200, 240])];
  const [line = []] = routes(bands, 0, 50, 2, 200);
  expect(line[0]).toEqual([50, 22]);
  expect(line[line.length - 1]).toEqual([200, 76]);
  expect(line).toContainEqual([37, 22]);
  expect(line.some(([x, y]) => y > 22 && y < 49 && x > 40 && x < 120)).toBe(false);
});

test("where there is no way round, a broken line leaves out what it passes behind", () => {
  const bands = [band(0, [0, 50]), band(27, [0, 900]), band(54, [200, 240])];
  const lines = routes(bands, 0, 50, 2, 200, { far: 40, broken: true });
  expect(lines.length).toBe(2);
  expect(lines[0]!.every(([, y]) => y <= 22)).toBe(true);
  expect(lines[1]!.every(([, y]) => y >= 49)).toBe(true);
});

const spans = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 380 }), fc.integer({ min: 4, max: 60 })), { maxLength: 4 })
  .map((list) => list.map(([from, wide]): [number, number] => [from, from + wide]).sort((a, b) => a[0] - b[0]));

test("a line runs level or upright only, from end to end, and crosses a row only where it is clear", () => {
  fc.assert(
    fc.property(
      fc.array(spans, { minLength: 2, maxLength: 6 }),
      fc.nat(),
      fc.nat(),
      fc.integer({ min: 0, max: 400 }),
      fc.integer({ min: 0, max: 400 }),
      (rows, a, b, x0, x1) => {
        const bands = rows.map((row, index) => band(index * 27, ...row));
        const [from, to] = [a % bands.length, b % bands.length];
        const [line = []] = routes(bands, from, x0, to, x1);
        expect(line[0]).toEqual([x0, bands[from]!.channel]);
        expect(line[line.length - 1]).toEqual([x1, bands[to]!.channel]);
        line.forEach(([x, y], index) => {
          const before = line[index - 1];
          if (!before) return;
          expect(before[0] === x || before[1] === y).toBe(true);
          if (before[1] === y) return;
          const [top, foot] = [Math.min(before[1], y), Math.max(before[1], y)];
          for (const crossed of bands.filter((one) => one.y0 >= top - 1 && one.y1 <= foot)) {
            const blocked = crossed.taken.some((span) => x > span.from && x < span.to);
            if (blocked) expect(clearAt(crossed, x, { low: Math.min(x0, x1) - 4, high: Math.max(x0, x1) + 4 })).toBeNull();
          }
        });
      },
    ),
  );
});
