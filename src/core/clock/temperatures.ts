import { readDate, yearShare } from "./dates";
import { type SiteSpec, siteTime } from "./site";

/** What a build says about the air at its site, degrees Celsius. */
export interface AirSpec extends SiteSpec {
  /** Usual low and high of each month, January first; null where not given. */
  readonly usualTemperatures_C: readonly { readonly low: number; readonly high: number }[] | null;
  /** Single local dates that replace the usual ones. */
  readonly days_C: readonly {
    readonly date: string;
    readonly low: number;
    readonly high: number;
    readonly source: "forecast" | "measured";
  }[];
}

interface AirDay {
  readonly low_C: number;
  readonly high_C: number;
  readonly source: "usual" | "forecast" | "measured";
}

/** Air at the site. Where a build gives no usual temperatures it is `unknown_C`, day and night. */
export interface Air {
  /** Whatever makes two of them the same. */
  readonly key: string;
  /** False: the usual ones are not given. */
  readonly known: boolean;
  day(day: number): AirDay;
  /** Hundredths of a degree in the middle of each of the hours from, from + 1 ... to - 1 since the epoch; not to be written in. */
  hours_cC(from: number, to: number): Int32Array;
  /** No hour of any year is colder, or warmer. */
  readonly lowest_C: number;
  readonly highest_C: number;
}

const unknown_C = 20;

/** The warmest of the day comes two hours after the sun's noon. */
const warmest_min = 14 * 60;

/**
 * Straight lines between the middles of the months; over a day two halves of a cosine, lowest at sunrise and highest two hours after noon, both by the sun
 * (level ground, no equation of time): common practice, no source. A day that is given replaces the usual one of its date; its nights lead to its neighbours.
 * All of it only ever rises with what is given: a warmer low or high makes no hour colder.
 */
export function airOf(spec: AirSpec, start: string): Air {
  const time = siteTime(spec.zone, start);
  const usual = spec.usualTemperatures_C?.length === 12 ? spec.usualTemperatures_C : null;
  const given = new Map<number, AirDay>();
  for (const { date, low, high, source } of spec.days_C) {
    const number = readDate(date);
    if (number !== null) given.set(number - time.first, { low_C: low, high_C: high, source });
  }
  const day = (n: number): AirDay => given.get(n) ?? usualDay(usual, time.first + n);
  const all = [...(usual ?? [{ low: unknown_C, high: unknown_C }]), ...spec.days_C].flatMap(({ low, high }) => [low, high]);
  // Minutes that the sun is ahead of the wall clock of the epoch, at most half a day either way.
  const sunAhead = ((((time.epoch_utc_min + 4 * spec.longitude + 720) % 1440) + 1440) % 1440) - 720;

  const workOut = (from: number, to: number): Int32Array => {
    const out = new Int32Array(Math.max(0, to - from));
    let today = Number.NaN;
    let before = day(0);
    let now = before;
    let next = before;
    let rise = 0;
    let nextRise = 0;
    for (let hour = from; hour < to; ) {
      const sun = hour * 60 + 30 + sunAhead;
      const n = Math.floor(sun / 1440);
      before = n === today + 1 ? now : day(n - 1);
      now = n === today + 1 ? next : day(n);
      next = day(n + 1);
      rise = n === today + 1 ? nextRise : sunrise_min(spec.latitude, time.first + n);
      nextRise = sunrise_min(spec.latitude, time.first + n + 1);
      today = n;
      let minute = sun - n * 1440;
      const count = Math.min(to - hour, Math.ceil((1440 - minute) / 60));
      const at = hour - from;
      const morning = Math.max(0, Math.min(count, Math.ceil((rise - minute) / 60)));
      const noon = Math.max(morning, Math.min(count, Math.floor((warmest_min - minute) / 60) + 1));
      wave(out, at, morning, before.high_C, now.low_C, minute + 1440 - warmest_min, rise + 1440 - warmest_min);
      minute += 60 * morning;
      wave(out, at + morning, noon - morning, now.low_C, now.high_C, minute - rise, warmest_min - rise);
      minute += 60 * (noon - morning);
      wave(out, at + noon, count - noon, now.high_C, next.low_C, minute - warmest_min, nextRise + 1440 - warmest_min);
      hour += count;
    }
    return out;
  };
  // Clocks for age and for warmth ask for the same hours one after the other.
  let last: { readonly from: number; readonly to: number; readonly hours: Int32Array } = { from: 0, to: 0, hours: new Int32Array(0) };
  const hours_cC = (from: number, to: number): Int32Array => {
    if (last.from !== from || last.to !== to) last = { from, to, hours: workOut(from, to) };
    return last.hours;
  };
  return {
    key: JSON.stringify([spec.zone, spec.latitude, spec.longitude, start, usual, spec.days_C]),
    known: usual !== null,
    day,
    hours_cC,
    lowest_C: Math.min(...all),
    highest_C: Math.max(...all),
  };
}

/**
 * So many hours on the way from one temperature to the other, along half a cosine that takes `lasts_min`, the first of them `gone_min` after its beginning; in
 * hundredths of a degree, rounded, so that no last digit of a cosine decides anything.
 */
function wave(out: Int32Array, at: number, hours: number, from_C: number, to_C: number, gone_min: number, lasts_min: number): void {
  const first = 100 * from_C;
  const half = 50 * (to_C - from_C);
  for (let i = 0; i < hours; i += 1) out[at + i] = Math.round(first + half * (1 - Math.cos(Math.PI * ((gone_min + 60 * i) / lasts_min))));
}

function usualDay(usual: AirSpec["usualTemperatures_C"], number: number): AirDay {
  if (usual === null) return { low_C: unknown_C, high_C: unknown_C, source: "usual" };
  const x = 12 * yearShare(number) + 11.5;
  const month = Math.floor(x);
  const [a, b] = [usual[month % 12], usual[(month + 1) % 12]] as [{ low: number; high: number }, { low: number; high: number }];
  const between = (from: number, to: number) => Math.round(100 * (from + (to - from) * (x - month))) / 100;
  return { low_C: between(a.low, b.low), high_C: between(a.high, b.high), source: "usual" };
}

/** Minutes after the sun's midnight, between two and ten o'clock; declination by Cooper (Solar Energy 12, 1969; from memory). */
function sunrise_min(latitude: number, number: number): number {
  const declination = ((23.45 * Math.PI) / 180) * Math.sin(2 * Math.PI * (yearShare(number) + 284 / 365));
  const half = -Math.tan((latitude * Math.PI) / 180) * Math.tan(declination);
  const light_min = (Math.acos(Math.max(-1, Math.min(1, half))) / Math.PI) * 1440;
  return Math.round(Math.max(120, Math.min(600, 720 - light_min / 2)));
}
