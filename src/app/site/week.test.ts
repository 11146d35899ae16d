import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blockDrawn, daysWords, drawn, hoursShown, isWorked, type Stretch, stretchesOf, stretchText, typedHours, weekRead } from "./week";

const day = stretchesOf(["7:30-12:00", "12:30-17:00"]);
const texts = (stretches: readonly Stretch[]): readonly string[] => stretches.map(stretchText);

test.each([
  ["7:30-12:00, 12:30-17:00", ["7:30-12:00", "12:30-17:00"]],
  ["7-12; 12.30–17", ["7:00-12:00", "12:30-17:00"]],
  ["08:00 to 16:00", ["8:00-16:00"]],
  ["9am-12:30pm, 1 pm to 5 pm", ["9:00-12:30", "13:00-17:00"]],
  ["mornings", ["mornings"]],
  ["7:30-", ["7:30-"]],
  [" , ", []],
])("%j is written as %j", (typed, written) => {
  expect(typedHours(typed)).toEqual(written);
});

test("hours are read in order; what is none is left out", () => {
  expect(texts(stretchesOf(["12:30-17:00", "nonsense", "9:00-8:00", "7:30-12:00", "20:00-24:30"]))).toEqual(["7:30-12:00", "12:30-17:00"]);
});

describe("drawing", () => {
  test("fills a gap, begins anew, and grows what it touches", () => {
    expect(texts(drawn(day, { from_min: 720, to_min: 750 }, true))).toEqual(["7:30-17:00"]);
    expect(texts(drawn(day, { from_min: 1080, to_min: 1140 }, true))).toEqual(["7:30-12:00", "12:30-17:00", "18:00-19:00"]);
    expect(texts(drawn(day, { from_min: 1020, to_min: 1080 }, true))).toEqual(["7:30-12:00", "12:30-18:00"]);
  });

  test("rubbing out cuts, parts and takes away", () => {
    expect(texts(drawn(day, { from_min: 480, to_min: 540 }, false))).toEqual(["7:30-8:00", "9:00-12:00", "12:30-17:00"]);
    expect(texts(drawn(day, { from_min: 0, to_min: 720 }, false))).toEqual(["12:30-17:00"]);
    expect(texts(drawn(day, { from_min: 720, to_min: 750 }, false))).toEqual(["7:30-12:00", "12:30-17:00"]);
  });

  const stretch = fc
    .tuple(fc.integer({ min: 0, max: 47 }), fc.integer({ min: 1, max: 48 }))
    .map(([a, b]) => ({ from_min: Math.min(a, b - 1) * 30, to_min: Math.max(a + 1, b) * 30 }));
  const minutes = (stretches: readonly Stretch[]): Set<number> =>
    new Set(stretches.flatMap(({ from_min, to_min }) => Array.from({ length: (to_min - from_min) / 30 }, (_, i) => from_min + i * 30)));

  test("comes out as drawing on a row of half hours does, in order and without two that touch", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(stretch, fc.boolean()), { maxLength: 12 }), (strokes) => {
        let now: readonly Stretch[] = [];
        const cells = new Set<number>();
        for (const [one, work] of strokes) {
          now = drawn(now, one, work);
          for (const minute of minutes([one])) work ? cells.add(minute) : cells.delete(minute);
        }
        expect(minutes(now)).toEqual(cells);
        expect(now.every((one, i) => one.from_min < one.to_min && (i === 0 || (now[i - 1]?.to_min ?? 0) < one.from_min))).toBe(true);
      }),
    );
  });

  test("a block goes over the rows between its corners, whichever way it is drawn", () => {
    const empty = Array.from({ length: 7 }, (): readonly Stretch[] => []);
    const monday = [1, 2, 3, 4, 5, 6, 0];
    const block = blockDrawn(empty, monday, { row: 6, cell: 19 }, { row: 5, cell: 16 }, true);
    expect(block.map(texts)).toEqual([["8:00-10:00"], [], [], [], [], [], ["8:00-10:00"]]);
  });
});

test("a cell counts as worked from half of it on", () => {
  const odd = stretchesOf(["7:15-8:10"]);
  expect([14, 15, 16].map((cell) => isWorked(odd, cell))).toEqual([true, true, false]);
});

test("hours shown reach as far as what is written", () => {
  expect(hoursShown([day])).toEqual({ from: 5, to: 21 });
  expect(hoursShown([stretchesOf(["3:30-4:00", "22:00-22:30"])])).toEqual({ from: 3, to: 23 });
});

test("a week in words follows the order shown", () => {
  const week = weekRead({ week: { sat: ["8:00-12:00"], sun: ["8:00-12:00"], wed: ["18:00-20:30"] } });
  expect(daysWords(week, [0, 1, 2, 3, 4, 5, 6])).toBe("Sun, Wed, Sat");
  expect(daysWords(week, [1, 2, 3, 4, 5, 6, 0])).toBe("Wed, Sat, Sun");
  const office = weekRead({ week: { mon: ["8-16"], tue: ["8:00-16:00"], wed: ["8:00-16:00"], thu: ["8:00-16:00"], fri: ["8:00-16:00"] } });
  expect(daysWords(office, [1, 2, 3, 4, 5, 6, 0])).toBe("Tue to Fri");
  expect(daysWords(weekRead({}), [0, 1, 2, 3, 4, 5, 6])).toBe("");
});
