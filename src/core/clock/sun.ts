import { getTimes, times as wanted } from "suncalc";
import type { ElapsedMinute } from "../base";
import { yearShare } from "./dates";
import { joined, type RunSource, type Runs } from "./runs";
import { type SiteSpec, siteTime } from "./site";

/** Sunrise and sunset of one local date; null where the sun does not cross the horizon, and then `up` says whether it is up all day. */
export interface SunDay {
  readonly rise: ElapsedMinute | null;
  readonly set: ElapsedMinute | null;
  readonly up: "part" | "all-day" | "not-at-all";
}

/**
 * Upper limb on the horizon at 34' of refraction (altitude -0.833 degrees), level ground, rounded to whole minutes as almanacs print it: hills are
 * not known. Method: Meeus, Astronomical Algorithms, chapters 15 and 25, as in suncalc.
 */
export function sunDays(site: SiteSpec, start: string): (day: number) => SunDay {
  const solarDay = solarDays(site, start);
  return (day) => {
    const { rise, set, up } = solarDay(day);
    return up === "part" ? { rise: rise as ElapsedMinute, set: set as ElapsedMinute, up } : { rise: null, set: null, up };
  };
}

/** Working light begins and ends on the quarter hour, as nobody agrees to start at 7:32. */
const step_min = 15;

/** While the sun is up, cut inwards to quarter hours of the wall clock; what `sunDays` tells is to the minute. */
export function daylight(site: SiteSpec, start: string): RunSource {
  const time = siteTime(site.zone, start);
  const solarDay = solarDays(site, start);
  const { mayReach } = roughly(site, start);
  return (from, to) => {
    const out: number[] = [];
    for (let day = time.dayOf(from) - 1; day <= time.dayOf(to) + 1; day += 1) {
      if (!mayReach(day, from, to)) continue;
      const { rise, set, up } = solarDay(day);
      if (up === "part") {
        const light = [rise + ((step_min - (time.local(rise).minute % step_min)) % step_min), set - (time.local(set).minute % step_min)];
        out.push(Math.max(from, light[0] as number), Math.min(to, light[1] as number));
      } else if (up === "all-day") out.push(Math.max(from, rise), Math.min(to, set));
    }
    return joined(out) as Runs;
  };
}

/** Runs while a source runs and the sun is up. Worked out only for days on which it runs, and of these only where it is not light all through for sure. */
export function inDaylight(source: RunSource, site: SiteSpec, start: string): RunSource {
  const light = daylight(site, start);
  const { surely } = roughly(site, start);
  return (from, to) => {
    const runs = source(from, to);
    const out: number[] = [];
    for (let i = 0; i < runs.length; i += 2) {
      const a = runs[i] as number;
      const b = runs[i + 1] as number;
      if (surely(a, b)) out.push(a, b);
      else out.push(...light(a, b));
    }
    return out;
  };
}

/** The sun's noon is at most so far from the mean sun's. */
const equationOfTime_min = 17;

/** The formula for the declination is at most so far off. */
const off_deg = 2;

const radians = (deg: number): number => (deg * Math.PI) / 180;

interface Rough {
  /** Whether a solar day's light can reach into [from, to). */
  readonly mayReach: (day: number, from: number, to: number) => boolean;
  /** Whether it is light all through [from, to), also once cut to quarter hours. */
  readonly surely: (from: number, to: number) => boolean;
}

/**
 * What can be said of the light without working out a sunrise: by the longest day of the latitude, and by a declination that is `off_deg` further from the
 * pole on this side (Cooper, Solar Energy 12, 1969; from memory).
 */
function roughly(site: SiteSpec, start: string): Rough {
  const time = siteTime(site.zone, start);
  const latitude = radians(Math.max(-89, Math.min(89, site.latitude)));
  const half_min = (declination: number, altitude: number): number => {
    const cosine = (Math.sin(altitude) - Math.sin(latitude) * Math.sin(declination)) / (Math.cos(latitude) * Math.cos(declination));
    return cosine <= -1 ? 721 : cosine >= 1 ? 0 : (Math.acos(cosine) / (2 * Math.PI)) * 1440;
  };
  const longest_min = half_min(Math.sign(latitude) * radians(23.45), radians(-0.833)) + 2 * equationOfTime_min;
  const meanNoon = 720 - 4 * site.longitude - time.epoch_utc_min;
  /** Noon of the mean sun on a local date; null so near to midnight that the true one may fall on another. */
  const noonOf = (day: number): number | null => {
    const midnight = time.startOf(day);
    const after = (((meanNoon - midnight) % 1440) + 1440) % 1440;
    return after > 3 * equationOfTime_min && after < 1380 - 3 * equationOfTime_min ? midnight + after : null;
  };
  return {
    mayReach: (day, from, to) => {
      const noon = noonOf(day);
      return noon === null || (noon + longest_min > from && noon - longest_min < to);
    },
    surely: (from, to) => {
      const day = time.dayOf(from);
      const noon = noonOf(day);
      if (noon === null) return false;
      const declination = radians(23.45) * Math.sin(2 * Math.PI * (yearShare(time.first + day) + 284 / 365));
      const least_min = half_min(declination - Math.sign(latitude) * radians(off_deg), 0) - equationOfTime_min - step_min - 1;
      return from >= noon - least_min && to <= noon + least_min;
    },
  };
}

interface SolarDay {
  readonly rise: number;
  readonly set: number;
  readonly up: SunDay["up"];
}

const known = new Map<string, (day: number) => SolarDay>();
const mostSites = 16;

/** Each day is worked out once for a site. */
function solarDays(site: SiteSpec, start: string): (day: number) => SolarDay {
  const key = `${site.zone} ${site.latitude} ${site.longitude} ${start}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const days = new Map<number, SolarDay>();
  const solarDay = (day: number): SolarDay => {
    const found = days.get(day) ?? workOut(site, start, day);
    days.set(day, found);
    return found;
  };
  if (known.size >= mostSites) known.clear();
  known.set(key, solarDay);
  return solarDay;
}

/** The solar day whose noon falls on the local date; in the polar summer from solar midnight to solar midnight. */
function workOut(site: SiteSpec, start: string, day: number): SolarDay {
  // The library works out every pair in its table (dawn, golden hour and more); only its first, sunrise and sunset, is read here.
  if (wanted.length > 1) wanted.length = 1;
  const time = siteTime(site.zone, start);
  const epoch_ms = time.epoch_utc_min * 60_000;
  const noon = epoch_ms + time.at(day, 720) * 60_000;
  let times = getTimes(new Date(noon), site.latitude, site.longitude);
  const apart = time.dayOf(minutes(times.solarNoon, epoch_ms)) - day;
  if (apart !== 0) times = getTimes(new Date(noon - apart * 86_400_000), site.latitude, site.longitude);
  const { sunrise, sunset, solarNoon } = times;
  if (sunrise !== null && sunset !== null) return { rise: minutes(sunrise, epoch_ms), set: minutes(sunset, epoch_ms), up: "part" };
  const middle = minutes(solarNoon, epoch_ms);
  return { rise: middle - 721, set: middle + 721, up: times.alwaysUp === true ? "all-day" : "not-at-all" };
}

function minutes(at: Date, epoch_ms: number): number {
  return Math.round((at.getTime() - epoch_ms) / 60_000);
}
