import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ElapsedMinute } from "../base";
import { type ClockSpecs, clocksOf } from "./clocks";
import { usualDay } from "./crew";
import { elapsed } from "./elapsed";
import { atLeast, levelsOf } from "./runs";
import { WorkingClock } from "./working";

const day = [
  { from_min: 450, to_min: 720 },
  { from_min: 750, to_min: 1020 },
];
const saturday = [{ from_min: 480, to_min: 720 }];

function specs(more: Partial<ClockSpecs> = {}): ClockSpecs {
  const calendar = (id: string, week: ClockSpecs["calendars"][number]["week"], cutOff_min: number | null = null) => ({
    id,
    week,
    off: [],
    extra: new Map(),
    holidays: null,
    daylightOnly: false,
    cutOff_min,
  });
  return {
    site: { zone: "America/New_York", latitude: 41.4, longitude: -73.9 },
    start: "2027-03-06",
    usual: "weekends",
    calendars: [
      calendar("weekends", [day, [], [], [], [], [], day]),
      calendar("helper", [[], [], [], [], [], [], saturday]),
      calendar("county", [[], day, day, day, day, day, []], 900),
    ],
    people: [
      { id: "owner", calendar: "weekends", daysOffSpent: ["2027-03-12"], away: [] },
      { id: "helper", calendar: "helper", daysOffSpent: [], away: [] },
    ],
    ...more,
  };
}

const hours = (clock: { reading(t: ElapsedMinute): number }, from: number, to: number) =>
  (clock.reading(to as ElapsedMinute) - clock.reading(from as ElapsedMinute)) / 60;

describe("the clocks of a build", () => {
  test("a day off spent puts its person on site for the site's usual day", () => {
    const clocks = clocksOf(specs());
    const [friday, end] = [clocks.time.startOf(6), clocks.time.startOf(7)];
    expect(clocks.time.dateOf(6)).toBe("2027-03-12");
    expect(hours(clocks.calendar("weekends"), friday, end)).toBe(0);
    expect(hours(clocks.person("owner"), friday, end)).toBe(9);
    expect(hours(clocks.person("helper"), friday, end)).toBe(0);
    expect(hours(clocks.work("weekends"), friday, end)).toBe(9);
    expect(hours(clocks.work("helper"), friday, end)).toBe(0);
    expect(usualDay({ ...specs().calendars[0]!, week: [saturday, [], [], [], [], [], day] })).toBe(day);
  });

  test("a day off on a day that is a site day anyway adds nothing", () => {
    const spent = specs({ people: [{ id: "owner", calendar: "weekends", daysOffSpent: ["2027-03-13"], away: [] }] });
    const clocks = clocksOf(spent);
    expect(hours(clocks.person("owner"), clocks.time.startOf(7), clocks.time.startOf(8))).toBe(9);
  });

  test("a crew is there while enough of its people are", () => {
    const clocks = clocksOf(specs());
    const two = clocks.crew(["owner", "helper"], 2);
    expect(hours(two, clocks.time.startOf(7), clocks.time.startOf(8))).toBe(4);
    expect(hours(clocks.crew(["owner", "helper"], 1), clocks.time.startOf(7), clocks.time.startOf(8))).toBe(9);
    expect(hours(clocks.crew(["owner"], 2), clocks.time.startOf(0), clocks.time.startOf(90))).toBe(0);
    expect(hours(clocks.crewOn("county", ["owner"], 1), clocks.time.startOf(6), clocks.time.startOf(7))).toBe(9);
    const { times, levels } = clocks.there(["owner", "helper"], clocks.time.startOf(7), clocks.time.startOf(8));
    expect([...times].map((at) => (at - clocks.time.startOf(7)) / 60)).toEqual([0, 7.5, 8, 12, 12.5, 17]);
    expect([...levels]).toEqual([0, 1, 2, 0, 1, 0]);
  });

  test("each kind of reference finds its clock", () => {
    const clocks = clocksOf(specs(), ({ kind, pour }) => ({ ...elapsed, id: `${kind} of ${pour}` }));
    const t = 0 as ElapsedMinute;
    expect(clocks.of({ kind: "elapsed" })).toBe(elapsed);
    expect(clocks.of({ kind: "working", calendar: "weekends" })).toBe(clocks.work("weekends"));
    expect(clocks.of({ kind: "days", calendar: "county" })).toBe(clocks.office("county"));
    expect(clocks.of({ kind: "strength", pour: "slab" }).id).toBe("strength of slab");
    expect(clocks.pour({ kind: "warm", pour: "slab" }).id).toBe("warm of slab");
    expect(clocks.office("county").advance(t, 1)).toBe(clocks.time.minuteOf("2027-03-09T07:30"));
    expect(() => clocks.calendar("nobody")).toThrow(RangeError);
    expect(() => clocksOf(specs()).of({ kind: "strength", pour: "slab" })).toThrow(RangeError);
    expect(clocks.sun(0).up).toBe("part");
  });

  test("what did not change is the same object in the next build, what did is not", () => {
    const before = clocksOf(specs());
    const after = clocksOf(specs());
    expect(after.work("weekends")).toBe(before.work("weekends"));
    expect(after.crew(["owner", "helper"], 2)).toBe(before.crew(["owner", "helper"], 2));
    const moved = clocksOf(specs({ people: [{ id: "owner", calendar: "weekends", daysOffSpent: ["2027-03-19"], away: [] }] }));
    expect(moved.calendar("weekends")).toBe(before.calendar("weekends"));
    expect(moved.work("weekends")).not.toBe(before.work("weekends"));
    expect(moved.person("owner")).not.toBe(before.person("owner"));
    expect(clocksOf(specs({ start: "2027-03-07" })).calendar("weekends")).not.toBe(before.calendar("weekends"));
  });

  test("a year of work is looked up without making forty", () => {
    const clocks = clocksOf(specs({ start: "2031-03-06" }));
    let furthest = 0;
    const weekends = clocks.calendar("weekends").runs;
    const clock = new WorkingClock("counted", (from, to) => {
      furthest = Math.max(furthest, to);
      return weekends(from, to);
    });
    let t = 0 as ElapsedMinute;
    for (let i = 0; i < 100; i += 1) t = clock.advance(t, 300);
    expect(clocks.time.dateOf(clocks.time.dayOf(t))).toBe("2031-09-14");
    expect(furthest).toBe(400 * 1440);
    clock.advance(t, 60_000);
    expect(furthest).toBe(600 * 1440);
  });
});

describe("levels and crews of interval sets", () => {
  const runs = fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { maxLength: 8 }).map((cuts) => {
    const sorted = [...cuts].sort((a, b) => a - b);
    return sorted.length % 2 === 0 ? sorted : sorted.slice(1);
  });

  test("agree with counting minute by minute", () => {
    fc.assert(
      fc.property(
        fc.array(runs, { minLength: 1, maxLength: 4 }),
        fc.nat(5),
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 31, max: 60 }),
        (sets, k, from, to) => {
          const sources = sets.map((set) => (a: number, b: number) => {
            const out: number[] = [];
            for (let i = 0; i < set.length; i += 2) {
              const [x, y] = [Math.max(a, set[i] as number), Math.min(b, set[i + 1] as number)];
              if (x < y) out.push(x, y);
            }
            return out;
          });
          const count = (t: number) => sets.filter((set) => set.some((a, i) => i % 2 === 0 && a <= t && t < (set[i + 1] as number))).length;
          const crew = atLeast(k, sources)(from, to);
          const { times, levels } = levelsOf(sources, from, to);
          expect(times[0]).toBe(from);
          for (let t = from; t < to; t += 1) {
            expect(crew.some((a, i) => i % 2 === 0 && a <= t && t < (crew[i + 1] as number))).toBe(count(t) >= k);
            expect(levels[times.findLastIndex((a) => a <= t)]).toBe(count(t));
          }
          for (let i = 1; i < crew.length; i += 1) expect(crew[i]).toBeGreaterThan(crew[i - 1] as number);
          for (let i = 1; i < levels.length; i += 1) expect(levels[i]).not.toBe(levels[i - 1]);
        },
      ),
    );
  });
});

test("who is away on a date is not there on it, whatever the calendar says of that date; others who go by it are", () => {
  const away = (dates: readonly string[], more: object = {}) =>
    specs({ people: ["a", "b"].map((id) => ({ id, calendar: "weekends", daysOffSpent: [], away: id === "a" ? dates : [] })), ...more });
  const day = 1440 as ElapsedMinute;
  const clocks = clocksOf(away(["2027-03-06"]));
  const sunday = clocks.person("b").reading((2 * day) as ElapsedMinute) - clocks.person("b").reading(day);
  expect(clocks.person("a").reading(day)).toBe(0);
  expect(clocks.person("b").reading(day)).toBeGreaterThan(0);
  expect(clocks.person("a").reading((2 * day) as ElapsedMinute)).toBe(sunday);
  expect(clocks.crew(["a", "b"], 2).reading(day)).toBe(0);
  expect(clocks.calendar("weekends").reading(day)).toBe(clocks.person("b").reading(day));
  // A date that the calendar has hours of its own for is no other.
  const own = specs({}).calendars.map((one) => (one.id === "weekends" ? { ...one, extra: new Map([["2027-03-06", one.week[6]!]]) } : one));
  expect(
    clocksOf(away(["2027-03-06"], { calendars: own }))
      .person("a")
      .reading(day),
  ).toBe(0);
});
