import type { DocumentEdit } from "../../core/base";
import type { Build } from "../../core/build";
import type { SiteTime } from "../../core/clock";
import { dateLabel, type Flag } from "../../draw";

/** Moving a delivery or a booking to another date: the change of the document, and how the list of changes says it. */
export interface FlagMove {
  readonly edits: readonly DocumentEdit[];
  readonly words: string;
  readonly date: string;
}

/** The date a flag stands at now, with the time of day it keeps. */
export function standsAt(time: SiteTime, flag: Flag): { readonly date: string; readonly clock: string | null } {
  const [date, clock] = time.momentOf(flag.at).split("T") as [string, string];
  return { date, clock: flag.list === "bookings" ? clock : null };
}

/** Null where the flag is not the builder's to move, or the text is no date. A delivery keeps no time of day unless it was promised with one. */
export function moveFlag(build: Build, time: SiteTime, flag: Flag, date: string): FlagMove | null {
  const start = time.minuteOf(date);
  if (!flag.movable || start === null) return null;
  const words = `move ${flag.name} to ${dateLabel(time, start)}`;
  if (flag.list === "deliveries") {
    const promised = build.deliveries[build.at.delivery.get(flag.id) ?? -1]?.promised ?? "";
    const clock = promised.includes("T") ? promised.slice(promised.indexOf("T")) : "";
    return { edits: [{ path: ["deliveries", `id=${flag.id}`, "promised"], value: `${date}${clock}` }], words, date };
  }
  const { clock } = standsAt(time, flag);
  return { edits: [{ path: ["bookings", `id=${flag.id}`, "date"], value: clock === null ? date : `${date}T${clock}` }], words, date };
}

/** A number of days later, or earlier. */
export const dayLater = (time: SiteTime, date: string, days: number): string => time.dateOf((time.dayOfDate(date) ?? 0) + days);
