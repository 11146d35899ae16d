import { describe, expect, test } from "vitest";
import type { ElapsedMinute } from "../../src/core/base";
import { siteTime } from "../../src/core/clock";
import type { CureSheet } from "../../src/core/pour";
import { type CureAsked, cureDrawing, dark, svgText } from "../../src/draw";
import { troubles } from "./checks";
import { keepForLooking } from "./gallery";

const minute = (days: number) => (420 + days * 1440) as ElapsedMinute;
const removal = (sort: "sides" | "soffit", planned: number, grounds: CureSheet["removals"][number]["grounds"], hold: boolean) => ({
  removal: {
    sort,
    step: "strip" as never,
    soffit: "slab" as const,
    span_mm: 2700,
    liveExceedsDead: false,
    shoresStay: false,
    share: 700,
    days: null,
    saidBy: null,
  },
  step: 0,
  planned: minute(planned),
  grounds,
  governs: grounds.length - 1,
  hold,
  saidBy: null,
});
const days = Array.from({ length: 36 }, (_, n) => ({
  date: `day ${n}`,
  from: (n * 1440) as ElapsedMinute,
  low_C: 3 + 4 * Math.sin(n / 3),
  high_C: 14 + 5 * Math.sin(n / 3),
  source: n < 9 ? ("measured" as const) : n < 14 ? ("forecast" as const) : ("usual" as const),
}));
/** Invented: a slab that hardens in spring. */
const made: CureSheet = {
  pour: 0,
  placed: minute(0),
  until: minute(35),
  days,
  expected: Array.from({ length: 71 }, (_, n) => ({ at: minute(n / 2), share: Math.round((1000 * n) / 2 / (6 + 0.8 * (n / 2))) })),
  at20: Array.from({ length: 71 }, (_, n) => ({ at: minute(n / 2), share: Math.round((1000 * n) / 2 / (4 + 0.85 * (n / 2))) })),
  shown: [
    { at: minute(7), share: 520, strength_MPa: 14.5, by: "lab" },
    { at: minute(14), share: 760, strength_MPa: 21, by: "lab" },
  ],
  also: [],
  removals: [
    removal(
      "sides",
      2,
      [
        { by: "12 h", at: minute(0.9), detail: {} },
        { by: "curve", at: minute(1.4), detail: {} },
      ],
      false,
    ),
    removal(
      "soffit",
      33,
      [
        { by: "table", at: minute(11), detail: {} },
        { by: "curve", at: minute(14), detail: {} },
        { by: "28 days", at: minute(32.5), detail: {} },
      ],
      true,
    ),
  ],
  wet: { days: 7, until: minute(7), document: "ACI 308R", visits: 7, least: { days: 7, document: "ACI 308R" }, beside: null },
  cold: { called: false, lowest_C: 3, hold_C: 13, for_min: 4320, drop_K: 28, given: false },
  floating: null,
  findings: [],
};
const asked = (width: number, text: number): CureAsked => ({
  title: "Strength of the porch slab",
  sheet: made,
  time: siteTime("America/New_York", "2027-04-03"),
  units: "us",
  strength_MPa: 27.6,
  width,
  text,
  removals: [
    { name: "Strip the side forms", date: "Mon 5 Apr", state: "", grounds: ["12 h of warm air Sun 4 Apr, 500 psi expected Sun 4 Apr"] },
    {
      name: "Let the shores down and strip the deck",
      date: "Thu 6 May",
      state: "expected, not shown",
      grounds: ["28 days at 50 °F or warmer, Wed 5 May; before that the table's 4 days on Wed 14 Apr and 70 % expected on Sat 17 Apr"],
    },
  ],
});

describe("strength against time", () => {
  test.each([
    ["cure", 900, 14],
    ["cure-phone", 358, 16],
  ] as const)("%s: nothing on top of anything", async (name, width, text) => {
    const drawing = cureDrawing(asked(width, text));
    const svg = svgText(drawing);
    keepForLooking(name, svg);
    keepForLooking(`${name}-dark`, svgText(drawing, { palette: dark }));
    expect(troubles(drawing, Math.min(text, 16))).toEqual([]);
    await expect(svg).toMatchFileSnapshot(`./${name}.svg`);
  });

  test("what was shown stands at its own date and share on the scale of the curves", () => {
    const marks = cureDrawing(asked(900, 14)).parts[0]!.marks;
    const middle = (id: string) => {
      const mark = marks.find((one) => one.id === id)!;
      return [(mark.x0 + mark.x1) / 2, (mark.y0 + mark.y1) / 2] as const;
    };
    const [none, full] = [middle("share 0")[1], middle("share 1000")[1]];
    expect((none - middle("shown 0")[1]) / (none - full)).toBeCloseTo(0.52, 3);
    expect((none - middle("shown 1")[1]) / (none - full)).toBeCloseTo(0.76, 3);
    expect(middle("shown 0")[0]).toBeCloseTo(middle("day 7")[0], 3);
    expect(middle("shown 1")[0]).toBeCloseTo(middle("day 14")[0], 3);
  });
});
