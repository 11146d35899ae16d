import type { DocumentEdit } from "../base";
import type { Build, DayWindow, Person } from "../build";
import { clocksOf, siteTime } from "../clock";
import type { Choice } from "./one-more-offers";

/** One more day off spent. */
export function dayOff(person: Person, date: string): DocumentEdit {
  return { path: ["people", `id=${person.id}`, "daysOff", "spent"], value: [...person.daysOffSpent, date].sort() };
}

/** A calendar open on one more of these dates, on which it is not. */
export function extraDays(build: Build, calendar: string, dates: readonly string[]): Choice[] {
  return extraHours(build, calendar, dates).map(({ date, hours }) => ({ date, edits: [extraDay(calendar, date, hours)] }));
}

export const extraDay = (calendar: string, date: string, hours: readonly DayWindow[]): DocumentEdit => ({
  path: ["calendars", `id=${calendar}`, "extra", date],
  value: hours.map(windowText),
});

/**
 * Those of these dates on which a calendar is not open, with the hours it would be: those of that weekday, else those of its last date of its own, else those
 * of its first open weekday.
 */
export function extraHours(
  build: Build,
  calendar: string,
  dates: readonly string[],
): { readonly date: string; readonly hours: readonly DayWindow[] }[] {
  const clocks = clocksOf(build);
  const { time } = clocks;
  const spec = build.calendars[build.at.calendar.get(calendar)!]!;
  const clock = clocks.calendar(calendar);
  const own = [...spec.extra.values()].findLast(isOpen);
  return dates.flatMap((date) => {
    const day = time.dayOfDate(date)!;
    if (spec.off.includes(date) || clock.reading(time.startOf(day + 1)) > clock.reading(time.startOf(day))) return [];
    return [{ date, hours: [spec.week[time.weekdayOf(day)]!, own ?? [], ...spec.week].find(isOpen) ?? usualOn(build, date) }];
  });
}

/** The build with a calendar open on these dates too. */
export function openOn(build: Build, calendar: string, days: ReturnType<typeof extraHours>): Build {
  const more = days.map(({ date, hours }) => [date, hours] as const);
  return {
    ...build,
    calendars: build.calendars.map((one) => (one.id === calendar ? { ...one, extra: new Map([...one.extra, ...more]) } : one)),
  };
}

const helper = "one-more-helper";

/** Somebody with a pair of hands and no special role, there on one date in the site's usual hours. */
export function freshHelper(build: Build, date: string): DocumentEdit[] {
  const extra = { [date]: usualOn(build, date).map(windowText) };
  return [
    { path: ["calendars", `+${build.calendars.length}`], value: { id: helper, name: "One more helper", week: {}, extra } },
    { path: ["people", `+${build.people.length}`], value: { id: helper, name: "One more helper", calendar: helper } },
  ];
}

/** Id of the calendar that `freshHelper` makes. */
freshHelper.calendar = helper;

/** What was booked for a date may come on whatever date suits. */
export const otherDay = (booking: string): DocumentEdit => ({ path: ["bookings", `id=${booking}`, "date"] });

export function moreOf(build: Build, kind: "stock" | "equipment", id: string, number: number): DocumentEdit {
  if (kind === "stock") return { path: [kind, `id=${id}`, "inHand"], value: build.stock[build.at.stock.get(id)!]!.inHand + number };
  return { path: [kind, `id=${id}`, "number"], value: build.equipment[build.at.equipment.get(id)!]!.number + number };
}

/** The hours of the usual calendar on a date on which it works. */
function usualOn(build: Build, date: string): readonly DayWindow[] {
  const time = siteTime(build.site.zone, build.start);
  const usual = build.calendars[build.at.calendar.get(build.usual)!]!;
  return [usual.extra.get(date) ?? [], usual.week[time.weekdayOf(time.dayOfDate(date)!)]!, ...usual.week].find(isOpen) ?? [];
}

const isOpen = (windows: readonly DayWindow[]): boolean => windows.length > 0;
const clock = (minute: number): string => `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
const windowText = ({ from_min, to_min }: DayWindow): string => `${clock(from_min)}-${clock(to_min)}`;
