import type { SiteTime } from "../../core/clock";
import type { Axis } from "./axis";

interface Week {
  readonly x0: number;
  readonly x1: number;
  /** Some site day of it is a Saturday or a Sunday. */
  readonly weekend: boolean;
}

/** The site days of each week together, Wednesday to Tuesday, so that a Friday or a Monday stands with its weekend. */
function weeks({ columns }: Axis, time: SiteTime): Week[] {
  const out: { key: number; x0: number; x1: number; weekend: boolean }[] = [];
  for (const { kind, from, x0, x1 } of columns) {
    if (kind !== "site" && kind !== "day") continue;
    const day = time.dayOf(from);
    const weekday = time.weekdayOf(day);
    const saturdayOrSunday = weekday === 0 || weekday === 6;
    if (kind === "day" && !saturdayOrSunday) continue;
    const key = day - ((weekday + 4) % 7);
    const last = out[out.length - 1];
    if (last?.key === key) {
      last.x1 = x1;
      last.weekend ||= saturdayOrSunday;
    } else out.push({ key, x0, x1, weekend: saturdayOrSunday });
  }
  return out;
}

/** How many weekends are in sight together in `room` px, wherever one has scrolled to. `what`: weeks where the work is not at weekends. */
export function weekendsIn(axis: Axis, time: SiteTime, room: number): { readonly count: number; readonly what: "weekends" | "weeks" } {
  const worked = weeks(axis, time);
  const atWeekends = worked.filter(({ weekend }) => weekend).length * 2 >= worked.length;
  const all = atWeekends ? worked.filter(({ weekend }) => weekend) : worked;
  const end = all[all.length - 1]?.x1 ?? 0;
  let count = all.length;
  let last = 0;
  all.forEach(({ x0 }, first) => {
    while (last < all.length && all[last]!.x1 <= x0 + room) last += 1;
    if (x0 + room < end) count = Math.min(count, last - first);
  });
  return { count: Math.max(1, count), what: atWeekends ? "weekends" : "weeks" };
}
