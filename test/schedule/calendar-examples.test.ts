import { describe, expect, it } from "vitest";
import { clocksOf, elapsed } from "../../src/core/clock";
import { latest, netOf } from "../../src/core/schedule";
import oracles from "../published/oracles_calendar.json";
import { problemOf, repeating } from "./problem-of";

const example = (id: string) => oracles.examples.find((e) => e.id === id)!;

describe("day numbers and dates against handbooks", () => {
  it("Hancher, Civil Engineering Handbook (CRC Press 2003), section 2.4: a start on day X is the morning of work day X + 1", () => {
    const { expected, projectStart } = example("crc-cpm-day-to-date") as unknown as {
      projectStart: string;
      expected: { cpmDay: number; date?: string; asStart?: string; asFinishMorning?: string; asFinishEvening?: string }[];
    };
    const day = [{ from_min: 480, to_min: 960 }];
    const clocks = clocksOf({
      site: { zone: "UTC", latitude: 45, longitude: 0 },
      start: projectStart,
      usual: "week",
      calendars: [
        {
          id: "week",
          week: [[], day, day, day, day, day, []],
          off: [],
          extra: new Map(),
          holidays: null,
          daylightOnly: false,
          cutOff_min: null,
        },
      ],
      people: [],
    });
    const week = clocks.work("week");
    const dateOf = (t: number) => clocks.time.dateOf(clocks.time.dayOf(t));
    let checked = 0;
    for (const e of expected) {
      const end = week.advance(0 as never, e.cpmDay * 480);
      for (const start of [e.date, e.asStart, e.asFinishMorning]) {
        if (start === undefined) continue;
        expect(dateOf(week.begin(end))).toBe(start);
        checked++;
      }
      if (e.asFinishEvening !== undefined) {
        expect(dateOf(end)).toBe(e.asFinishEvening);
        checked++;
      }
    }
    expect(checked).toBe(4);
  });

  it("Kim & de la Garza (2005), start to finish with a lag on the predecessor's own calendar, read backwards", () => {
    const lag1 = (example("kim-delagarza-SF0") as unknown as { expected: { lag: number; latestStartA: string }[] }).expected.find(
      (e) => e.lag === 1,
    )!;
    // Days of 10 minutes; the predecessor's calendar: days 1 to 3 and from 8 on. The other two answers count an instant in a gap as the next working day.
    const two = repeating("two", 10_000, [
      [0, 30],
      [70, 10_000],
    ]);
    const p = problemOf({
      clocks: [elapsed, two],
      jobs: [{ amount: 10, clock: 1 }, { amount: 10 }],
      links: [{ from: 0, to: 1, ends: "SF", clock: 1, least: 10 }],
    });
    const endOfDay5 = 50;
    const late = latest({ ...p, due: Int32Array.of(1000, endOfDay5) }, netOf(p), 1000 as never);
    expect(`beginning of day ${late.start[0]! / 10 + 1}`).toBe(lag1.latestStartA);
  });
});
