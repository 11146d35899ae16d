import type { ElapsedMinute } from "../base";
import type { Build, Pour } from "../build";
import type { Air, Clocks, Gathering } from "../clock";
import { buildClocks, siteAir, siteClock, strengthAtSite } from "./maturity";

/** Start and finish of every step of a plan, by its position. */
export interface StepTimes {
  readonly start: readonly ElapsedMinute[];
  readonly finish: readonly ElapsedMinute[];
}

/** What everything said of one pour after it is placed is worked out from. */
export interface CureContext {
  readonly build: Build;
  readonly pour: Pour;
  readonly clocks: Clocks;
  readonly air: Air;
  readonly strength: Gathering;
  readonly warm: Gathering;
  readonly dates: StepTimes;
  /** Start and finish of its step: age and strength count from the finish. */
  readonly starts: ElapsedMinute;
  readonly placed: ElapsedMinute;
}

export function cureContext(build: Build, p: number, dates: StepTimes): CureContext {
  const pour = build.pours[p] as Pour;
  const step = build.at.step.get(pour.step) ?? -1;
  const placed = dates.finish[step];
  const starts = dates.start[step];
  if (placed === undefined || starts === undefined) throw new RangeError(`no dates for ${pour.step}`);
  return {
    build,
    pour,
    clocks: buildClocks(build),
    air: siteAir(build),
    strength: strengthAtSite(build, pour, pour.mix.cement),
    warm: siteClock(build, pour, "warm"),
    dates,
    starts,
    placed,
  };
}

export const later = (t: ElapsedMinute, minutes: number): ElapsedMinute => (t + Math.round(minutes)) as ElapsedMinute;

/** Coldest and warmest hour of the air at the site that any minute of a stretch lies in; at least the hour of `from`. */
export function airBetween(air: Air, from: number, to: number): { readonly low_C: number; readonly high_C: number } {
  const first = Math.floor(from / 60);
  const hours = air.hours_cC(first, Math.max(first + 1, Math.ceil(to / 60)));
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const hundredths of hours) {
    if (hundredths < low) low = hundredths;
    if (hundredths > high) high = hundredths;
  }
  return { low_C: low / 100, high_C: high / 100 };
}
