import { getTimes, times as wanted } from "suncalc";
import type { ElapsedMinute } from "../base";
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
export function sunDay(site: SiteSpec, start: string, day: number): SunDay {
  const { rise, set, up } = solarDays(site, start)(day);
  return up === "part" ? { rise: rise as ElapsedMinute, set: set as ElapsedMinute, up } : { rise: null, set: null, up };
}

/** Working light begins and ends on the quarter hour, as nobody agrees to start at 7:32. */
const step_min = 15;

/** While the sun is up, cut inwards to quarter hours of the wall clock; what `sunDay` tells is to the minute. */
export function daylight(site: SiteSpec, start: string): RunSource {
  const time = siteTime(site.zone, start);
  const solarDay = solarDays(site, start);
  const mayReach = reachOf(site, start);
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

/** Runs while a source runs and the sun is up: only the days on which it runs are worked out. */
export function inDaylight(source: RunSource, site: SiteSpec, start: string): RunSource {
  const light = daylight(site, start);
  return (from, to) => {
    const runs = source(from, to);
    const out: number[] = [];
    for (let i = 0; i < runs.length; i += 2) out.push(...light(runs[i] as number, runs[i + 1] as number));
    return out;
  };
}

/** The sun's noon is at most so far from the mean sun's. */
const equationOfTime_min = 17;

/** Whether a solar day's light can reach into [from, to): told without its sunrise, by the longest day of the latitude. */
function reachOf(site: SiteSpec, start: string): (day: number, from: number, to: number) => boolean {
  const time = siteTime(site.zone, start);
  const [latitude, altitude, tilt] = [Math.min(89, Math.abs(site.latitude)), -0.833, 23.45].map((deg) => (deg * Math.PI) / 180) as [
    number,
    number,
    number,
  ];
  const longest = (Math.sin(altitude) - Math.sin(latitude) * Math.sin(tilt)) / (Math.cos(latitude) * Math.cos(tilt));
  const half = (longest <= -1 ? 721 : (Math.acos(longest) / (2 * Math.PI)) * 1440) + 2 * equationOfTime_min;
  const meanNoon = 720 - 4 * site.longitude - time.epoch_utc_min;
  return (day, from, to) => {
    const midnight = time.startOf(day);
    const noon = midnight + ((((meanNoon - midnight) % 1440) + 1440) % 1440);
    // So near to midnight the true noon may fall on another date than the mean one.
    const sure = noon - midnight > 3 * equationOfTime_min && noon - midnight < 1380 - 3 * equationOfTime_min;
    return !sure || (noon + half > from && noon - half < to);
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
