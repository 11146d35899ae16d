import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ElapsedMinute, never } from "../base";
import { calendarRuns, type WorkSpec } from "./calendar";
import { OfficeClock } from "./office";
import { siteTime } from "./site";

const site = { zone: "America/New_York", latitude: 41.4, longitude: -73.9 };
const start = "2027-03-06";
const time = siteTime(site.zone, start);
const t = (moment: string) => time.minuteOf(moment) as ElapsedMinute;
const shown = (at: number) => time.momentOf(at);

function office(cutOff_min: number | null, more: Partial<WorkSpec> = {}): OfficeClock {
  const open = [
    { from_min: 480, to_min: 720 },
    { from_min: 780, to_min: 1020 },
  ];
  const spec: WorkSpec = {
    id: "county",
    week: [[], open, open, open, open, open, []],
    off: [],
    extra: new Map(),
    holidays: "us-federal",
    daylightOnly: false,
    ...more,
  };
  return new OfficeClock("county", calendarRuns(spec, site, start), time, cutOff_min);
}

describe("an office's days", () => {
  test("a request up to the cut-off counts as made that day, after it on their next day", () => {
    const clock = office(900);
    expect(shown(clock.advance(t("2027-06-08T15:00"), 1))).toBe("2027-06-09T08:00");
    expect(shown(clock.advance(t("2027-06-08T15:01"), 1))).toBe("2027-06-10T08:00");
    expect(shown(clock.advance(t("2027-06-08T06:00"), 1))).toBe("2027-06-09T08:00");
    // Saturday: made on Monday, so from Tuesday on.
    expect(shown(clock.advance(t("2027-06-12T10:00"), 1))).toBe("2027-06-15T08:00");
    // Friday before a Friday holiday (Juneteenth kept on 18 June 2027): Monday is the next day.
    expect(shown(clock.advance(t("2027-06-17T10:00"), 1))).toBe("2027-06-21T08:00");
    expect(clock.advance(t("2027-06-17T10:00"), 0)).toBe(t("2027-06-17T10:00"));
  });

  test("two full working days of notice are the amount 3", () => {
    // Utility marks as one-call pages of two states put it: two full working days, weekends not counted.
    expect(shown(office(null).advance(t("2027-04-14T09:00"), 3))).toBe("2027-04-19T08:00");
  });

  test("without a cut-off, their closing time is one", () => {
    const clock = office(null);
    expect(shown(clock.advance(t("2027-06-08T17:00"), 1))).toBe("2027-06-09T08:00");
    expect(shown(clock.advance(t("2027-06-08T17:01"), 1))).toBe("2027-06-10T08:00");
  });

  test("on a day on which they close before the cut-off, their closing time is one", () => {
    const long = [{ from_min: 480, to_min: 1020 }];
    const clock = office(900, { week: [[], long, long, long, long, [{ from_min: 480, to_min: 660 }], []] });
    expect(shown(clock.advance(t("2027-06-11T11:00"), 1))).toBe("2027-06-14T08:00");
    // Friday at two, when nobody is there any more, is a request of Monday.
    expect(shown(clock.advance(t("2027-06-11T14:00"), 1))).toBe("2027-06-15T08:00");
    expect(shown(clock.retreat(t("2027-06-14T08:00"), 1))).toBe("2027-06-11T11:00");
    expect(shown(clock.advance(t("2027-06-10T15:00"), 1))).toBe("2027-06-11T08:00");
  });

  test("backwards it gives the last minute for the request", () => {
    const clock = office(900);
    expect(shown(clock.retreat(t("2027-06-16T09:00"), 1))).toBe("2027-06-15T15:00");
    expect(shown(clock.retreat(t("2027-06-16T07:59"), 1))).toBe("2027-06-14T15:00");
    expect(shown(clock.retreat(t("2027-03-08T08:00"), 2))).toBe("2027-03-04T15:00");
  });

  test("as an upper wait it ends before the day after the last one comes", () => {
    const clock = office(900);
    expect(shown(clock.limit(t("2027-06-08T10:00"), 2))).toBe("2027-06-11T07:59");
    expect(shown(clock.unlimit(t("2027-06-11T07:59"), 2))).toBe("2027-06-07T15:01");
  });

  test("never rests, and says never when an office shuts for good", () => {
    const clock = office(null, { week: [[], [], [], [], [], [], []], extra: new Map([["2027-06-01", [{ from_min: 480, to_min: 1020 }]]]) });
    expect(clock.begin(t("2027-05-30"))).toBe(t("2027-05-30"));
    expect(clock.runEnd()).toBe(never);
    expect(clock.advance(t("2027-05-30"), 1)).toBe(never);
    expect(clock.limit(t("2027-06-01T09:00"), 3)).toBe(never);
  });

  test("its answers are the earliest and the latest there are, and its two directions agree", () => {
    const at = fc.integer({ min: -80_000, max: 900_000 });
    fc.assert(
      fc.property(fc.constantFrom(null, 900, 540), at, at, fc.integer({ min: 1, max: 30 }), (cutOff, a, b, n) => {
        const clock = office(cutOff);
        const [from, to] = [a as ElapsedMinute, b as ElapsedMinute];
        const end = clock.advance(from, n);
        expect(clock.reading(end)).toBe(clock.reading((end - 1) as ElapsedMinute) + 1);
        expect(end).toBeGreaterThan(from);
        expect(a <= clock.retreat(to, n)).toBe(end <= b);
        expect(b <= clock.limit(from, n)).toBe(clock.unlimit(to, n) <= a);
        expect(clock.limit(from, n)).toBe(clock.advance(from, n + 1) - 1);
        if (a <= b) {
          expect(clock.reading(from)).toBeLessThanOrEqual(clock.reading(to));
          expect(end).toBeLessThanOrEqual(clock.advance(to, n));
        }
        expect(office(cutOff).advance(from, n)).toBe(end);
      }),
      { numRuns: 80 },
    );
  });
});
